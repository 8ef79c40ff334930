import { plainVWing } from "../shape/sample-wings.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { define, number } from "../spec.ts";
import { slopeOfFlat, slopeOfWing } from "./finite-wing.ts";
import { sectionSlope, sectionSlopeSource } from "./section-slope.ts";

/** `lift_slope(wing, section_slope)`. */
export const liftSlope = define({
  name: "lift_slope",
  summary: "The lift slope of a wing, tilt of its panels included, in closed form.",
  topic: "flow",
  parameters: { wing: wingRecord, section_slope: sectionSlope },
  result: number("1/rad", "lift slope on the area of the plan view"),
  formula: "finite_lift_slope of the panels laid flat · ∫ c·cos²Γ ds / area, with the cant Γ",
  errors: [],
  assumptions: [
    "About 7 % more than a lifting surface gives at aspect ratios of 4 to 8, so a first estimate; the flow solution is better.",
    "Each panel loses lift by its own cos² of the cant; sweep is the mean of the panels.",
    "Told on the area of the plan view, which tilt makes smaller too: of a plain V it falls by one cosine only.",
  ],
  sources: [
    {
      text: "E. C. Polhamus 1950, USAF DATCOM section 4.1.3.2; unswept H. B. Helmbold 1942",
      mark: "from memory",
    },
    { text: "P. E. Purser, J. P. Campbell, NACA TR 823 (1945): lift slope of a V falls by cos²Γ", mark: "from memory" },
    sectionSlopeSource,
  ],
  examples: [
    {
      summary: "a plain V at 12 deg, 800 mm wide: its panels laid flat, times cos 12 deg",
      arguments: { wing: plainVWing },
      result:
        // Laid flat: 818 mm span, half chords swept forward by 20 mm over each half of 409 mm.
        slopeOfFlat(0.8 / 0.09 / Math.cos(Math.PI / 15), (0.02 / 0.4) * Math.cos(Math.PI / 15), 5.7) *
        Math.cos(Math.PI / 15),
    },
  ],
  compute: ({ wing, section_slope }) => slopeOfWing(wing, section_slope),
});
