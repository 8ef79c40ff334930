import { define } from "../spec.ts";
import { glideRecord } from "./glide-record.ts";
import {
  leastDragLift,
  parabolicAssumptions,
  parabolicGlide,
  parabolicParameters,
  parabolicSources,
} from "./parabolic.ts";

/** `least_sink(mass, area, aspect_ratio, zero_lift_drag, …)`. */
export const leastSink = define({
  name: "least_sink",
  summary: "The glide that stays up longest, on a parabolic drag polar.",
  topic: "glide",
  parameters: parabolicParameters,
  result: glideRecord,
  formula: "CL = √(3·CD0·π·e·A), or max_lift where that is less; CD = CD0 + CL²/(π·e·A)",
  errors: [],
  assumptions: [
    ...parabolicAssumptions,
    "The lift coefficient of least sink is that of small path angles; without that it is a fraction of a per cent larger.",
  ],
  sources: parabolicSources,
  examples: [
    {
      summary: "17 g on 310 cm² of aspect ratio 7.5, CD0 0.045: far beyond what a thin section can lift",
      arguments: { mass: 0.017, area: 0.031, aspect_ratio: 7.5, zero_lift_drag: 0.045, efficiency: 0.9 },
      result: {
        lift_coefficient: Math.sqrt(3 * 0.045 * Math.PI * 0.9 * 7.5),
        drag_coefficient: 0.18,
        induced_drag: 0.135,
      },
    },
  ],
  compute: (given) => parabolicGlide(Math.sqrt(3) * leastDragLift(given), given),
});
