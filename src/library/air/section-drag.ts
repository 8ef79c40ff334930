import { numberText } from "../number-text.ts";
import { define, number, record } from "../spec.ts";
import { sampleSection } from "./sample-sections.ts";
import { sectionDrag as dragOf, dragSpread, highestReynolds, lowestReynolds } from "./section.ts";
import { sectionRecord } from "./section-record.ts";
import { sectionAssumptions, sectionSources } from "./section-sources.ts";

const sectionDragRecord = record(
  "section_drag",
  "profile drag with its spread",
  {
    drag_coefficient: number("1", "drag coefficient"),
    low: number("1", "as low as it may be"),
    high: number("1", "as high as it may be"),
  },
  (drag) =>
    `${numberText(drag.drag_coefficient, "1")}, from ${numberText(drag.low, "1")} to ${numberText(drag.high, "1")}`,
);

/** `section_drag(section, lift_coefficient, reynolds)`. */
export const sectionDrag = define({
  name: "section_drag",
  summary: "The profile drag of a thin section at a lift coefficient and a Reynolds number, with its spread.",
  topic: "air",
  parameters: {
    section: sectionRecord,
    lift_coefficient: number("1", "lift coefficient of the section", { min: -1.5, max: 2 }),
    reynolds: number("1", "Reynolds number of the chord", { min: lowestReynolds, max: highestReynolds }),
  },
  result: sectionDragRecord,
  formula:
    "1.15·2·0.455/(log₁₀ Re)^2.58 · (1 + 2·t/c)·(1 + 5·camber) + (1 − suction)·(cl − ideal_lift)²/(2π); past max_lift also cl − max_lift",
  errors: [],
  assumptions: sectionAssumptions,
  sources: sectionSources,
  examples: [
    {
      summary:
        "a flat-bottomed section of 4.2 % at a lift coefficient of 0.5 and a Reynolds number whose logarithm is 5",
      arguments: { section: sampleSection, lift_coefficient: 0.5, reynolds: 100_000 },
      result: {
        drag_coefficient:
          (2.3 * 0.455 * 1.084 * 1.105) / 5 ** 2.58 + (0.4 * (0.5 - 4 * Math.PI * 0.021) ** 2) / (2 * Math.PI),
      },
    },
  ],
  compute: ({ section, lift_coefficient, reynolds }) => {
    const spread = dragSpread(reynolds);
    const drag_coefficient = dragOf(section, lift_coefficient, reynolds);
    return {
      drag_coefficient,
      low: drag_coefficient * (1 - spread),
      high: drag_coefficient * (1 + spread),
    };
  },
});
