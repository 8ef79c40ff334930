import { degrees } from "../numerics/degrees.ts";
import { define, number } from "../spec.ts";
import { sampleSection } from "./sample-sections.ts";
import { highestReynolds, sectionLift as liftOf, lowestReynolds } from "./section.ts";
import { sectionRecord } from "./section-record.ts";
import { sectionAssumptions, sectionSources } from "./section-sources.ts";

/** `section_lift(section, angle, reynolds)`. */
export const sectionLift = define({
  name: "section_lift",
  summary: "The lift coefficient of a thin section at an angle of attack, through its stall.",
  topic: "air",
  parameters: {
    section: sectionRecord,
    angle: number("deg", "angle of attack of the chord line", { min: -degrees(20), max: degrees(20) }),
    reynolds: number("1", "Reynolds number of the chord", {
      min: lowestReynolds,
      max: highestReynolds,
      default: 40_000,
    }),
  },
  result: number("1", "lift coefficient"),
  formula:
    "slope · (angle − zero_lift_angle) up to max_lift, its corner rounded by ±0.1, then 15 % less over the next 5 deg; slope 5.2 per radian up to Re 15 000, 5.7 from 40 000 on, smooth between",
  errors: [],
  assumptions: [
    ...sectionAssumptions,
    "Upside down every section stalls like a flat plate. The stall is the same up and down.",
  ],
  sources: sectionSources,
  examples: [
    {
      summary: "a flat-bottomed section of 4.2 % at 3 deg",
      arguments: { section: sampleSection, angle: degrees(3) },
      result: 5.7 * (degrees(3) + 0.042),
    },
    {
      summary: "the same well past its stall",
      arguments: { section: sampleSection, angle: degrees(18) },
      result: 0.85 * 0.88,
    },
  ],
  compute: ({ section, angle, reynolds }) => liftOf(section, angle, reynolds),
});
