import { degrees } from "../numerics/degrees.ts";
import { define, number } from "../spec.ts";
import { findTrim } from "./find-trim.ts";
import { glidingOf, glidingParameters } from "./gliding.ts";
import {
  glidingAssumptions,
  glidingErrors,
  glidingSources,
  noTrimError,
  refuseTurnOfNone,
  trimOr,
} from "./gliding-words.ts";
import { sampleGlider } from "./sample-gliders.ts";
import { trimOf, trimRecord } from "./trim-record.ts";

/** How far the tailplane is set more nose-up than it was built, as parameter. */
export const tailParameter = number(
  "deg",
  "how far the tailplane is turned more nose-up than it is built: less decalage",
  {
    min: -degrees(15),
    max: degrees(15),
    default: 0,
  },
);

/** `trim(glider, shape, …)`. */
export const trim = define({
  name: "trim",
  summary: "The glide that a glider settles in: angle, speed and sink at which forces and pitching moment balance.",
  topic: "glide",
  parameters: { ...glidingParameters, tail_turn: tailParameter },
  result: trimRecord,
  formula:
    "moment about the balance point = 0 at an angle of attack where it falls with the angle; speed = √(2·mass·g / (density · √(L² + D²))), tan path_angle = D/L, with L and D over the dynamic pressure",
  errors: [...glidingErrors, noTrimError],
  assumptions: [
    "Steady, straight flight in still air. sink_low and sink_high take all drag but the induced for as much less and more as that of the sections is uncertain.",
    ...glidingAssumptions,
  ],
  sources: glidingSources,
  examples: [
    {
      summary: "24 g on a wing of 580 cm² with raised tips",
      arguments: { glider: sampleGlider },
      result: { speed: 4.579, sink: 0.5455, lift_coefficient: 0.312, static_margin: 0.0779 },
      tolerance: 5e-3,
    },
  ],
  isSlow: true,
  compute: ({ tail_turn, ...given }, refuse) => {
    refuseTurnOfNone(given.glider, { tail_turn }, refuse);
    const glider = glidingOf(given, refuse);
    return trimOf(glider, trimOr(findTrim(glider, tail_turn), glider, refuse));
  },
});
