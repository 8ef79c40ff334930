import { define } from "../spec.ts";
import { glideRecord } from "./glide-record.ts";
import {
  leastDragLift,
  parabolicAssumptions,
  parabolicGlide,
  parabolicParameters,
  parabolicSources,
} from "./parabolic.ts";

/** `best_glide(mass, area, aspect_ratio, zero_lift_drag, …)`. */
export const bestGlide = define({
  name: "best_glide",
  summary: "The glide that goes farthest for its height, on a parabolic drag polar.",
  topic: "glide",
  parameters: parabolicParameters,
  result: glideRecord,
  formula: "CL = √(CD0·π·e·A), or max_lift where that is less; CD = CD0 + CL²/(π·e·A)",
  errors: [],
  assumptions: parabolicAssumptions,
  sources: parabolicSources,
  examples: [
    {
      summary: "17 g on 310 cm² of aspect ratio 7.5, CD0 0.045",
      arguments: { mass: 0.017, area: 0.031, aspect_ratio: 7.5, zero_lift_drag: 0.045, efficiency: 0.9 },
      result: {
        lift_coefficient: Math.sqrt(0.045 * Math.PI * 0.9 * 7.5),
        drag_coefficient: 0.09,
        glide_ratio: Math.sqrt(0.045 * Math.PI * 0.9 * 7.5) / 0.09,
      },
    },
    {
      summary: "the same, stalling at 0.8: slower would be better still",
      arguments: { mass: 0.017, area: 0.031, aspect_ratio: 7.5, zero_lift_drag: 0.045, efficiency: 0.9, max_lift: 0.8 },
      result: { lift_coefficient: 0.8, induced_drag: 0.64 / (Math.PI * 0.9 * 7.5) },
    },
  ],
  compute: (given) => parabolicGlide(leastDragLift(given), given),
});
