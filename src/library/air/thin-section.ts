import { chosen } from "../chosen.ts";
import { choice, define, number } from "../spec.ts";
import { camberOf, idealLift, maxLift, moment, type Section, sectionShapes, zeroLiftAngle } from "./section.ts";
import { sectionRecord } from "./section-record.ts";
import { sectionAssumptions, sectionSources } from "./section-sources.ts";

/** `thin_section(shape, thickness, camber)`. */
export const thinSection = define({
  name: "thin_section",
  summary: "A thin balsa section: angle without lift, ideal and largest lift, moment.",
  topic: "air",
  parameters: {
    shape: choice("kind of section", Object.keys(sectionShapes)),
    thickness: number("%", "thickness over chord", { min: 0, max: 0.15 }),
    camber: number(
      "%",
      "height of the mean line over chord; left out, 0 for a flat plate and half the thickness for a flat-bottomed section",
      { min: 0, max: 0.12, optional: true },
    ),
  },
  result: sectionRecord,
  formula:
    "zero_lift_angle = −2·camber, ideal_lift = 4π·camber, moment = −0.8·π·camber; max_lift by camber: 0.70 at 0, 0.88 at 2.1 %, 1.09 at 4 %, 1.15 at 5 %, 1.20 from 6 % on, a smooth curve between",
  errors: ["The shape is none of the list.", "An arc is given no camber."],
  assumptions: sectionAssumptions,
  sources: sectionSources,
  examples: [
    {
      summary: "a flat-bottomed section of 4.2 %: 2.1 % camber",
      arguments: { shape: "flat-bottomed", thickness: 0.042 },
      result: {
        camber: 0.021,
        suction: 0.6,
        zero_lift_angle: -0.042,
        ideal_lift: 0.263893782902,
        moment: -0.0527787565803,
        max_lift: 0.88,
      },
    },
    {
      summary: "an arc of 5 % camber bent from 2.5 % sheet",
      arguments: { shape: "arc", thickness: 0.025, camber: 0.05 },
      result: { suction: 0.25, zero_lift_angle: -0.1, max_lift: 1.15 },
    },
  ],
  compute: ({ shape: name, thickness, camber }, refuse) => {
    const shape = chosen(name, sectionShapes, "shape", refuse);
    const section: Section = {
      thickness,
      camber: camberOf(shape, thickness, camber, refuse),
      suction: shape.suction,
    };
    return {
      ...section,
      zero_lift_angle: zeroLiftAngle(section) + 0,
      ideal_lift: idealLift(section),
      max_lift: maxLift(section),
      moment: moment(section) + 0,
    };
  },
});
