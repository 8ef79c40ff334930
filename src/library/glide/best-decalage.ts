import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { define, number, record } from "../spec.ts";
import { fasterTrim, findTrim } from "./find-trim.ts";
import { glidingOf, glidingParameters } from "./gliding.ts";
import {
  glidingAssumptions,
  glidingErrors,
  glidingSources,
  momentPerLift,
  noTrimError,
  trimOr,
  withinReach,
} from "./gliding-words.ts";
import { sampleGlider } from "./sample-gliders.ts";
import { trimOf, trimRecord } from "./trim-record.ts";

const bestDecalageRecord = record(
  "best_decalage",
  "the decalage that trims a glider for its least sink",
  {
    decalage: number("deg", "what the wing's seat stands steeper than the tailplane"),
    change: number("deg", "how much more that is than it has"),
    trim: { ...trimRecord, summary: "the glide with it" },
    saved: number("m/s", "by how much it sinks less than as it is", {
      optional: true,
      absent: "where it does not trim as it is",
    }),
  },
  (best) => `${numberText(best.decalage, "deg")}, sinking ${numberText(best.trim.sink, "m/s")}`,
);

/** `best_decalage(glider, shape, …)`. */
export const bestDecalage = define({
  name: "best_decalage",
  summary: "The decalage with which a glider settles in the glide that stays up longest.",
  topic: "glide",
  parameters: {
    ...glidingParameters,
    in_hand: number("%", "how much faster than at its least sink it is to fly", { min: 0, max: 0.5, default: 0 }),
  },
  result: bestDecalageRecord,
  formula: "least sink over all angles of attack, the tailplane turned at each so that the moment is 0",
  errors: [...glidingErrors, noTrimError, "The glider has no tailplane to turn."],
  assumptions: [
    "The wing's seat stays and the tailplane turns about its root.",
    "Least sink is flown close to the stall, in turbulent air a little faster: keep some speed in hand; a tenth is common practice.",
    ...glidingAssumptions,
  ],
  sources: glidingSources,
  examples: [
    {
      summary: "24 g on a wing of 580 cm² with raised tips",
      arguments: { glider: sampleGlider },
      result: { decalage: degrees(3.737), change: degrees(2.237), saved: 0.26 },
      tolerance: 0.02,
    },
    {
      summary: "the same with a tenth of speed in hand",
      arguments: { glider: sampleGlider, in_hand: 0.1 },
      result: { decalage: degrees(3), saved: 0.24 },
      tolerance: 0.02,
    },
  ],
  isSlow: true,
  compute: ({ in_hand, ...given }, refuse) => {
    const glider = glidingOf(given, refuse);
    const { tailplane, seat_angle } = glider.glider;
    if (!tailplane) return refuse("glider", "It has no tailplane. Give glider(…) one, or move the balance point.");
    const best = withinReach(fasterTrim(glider, in_hand), glider, refuse);
    // It must hold itself just below its angle, where no tip has begun to stall.
    const holds = momentPerLift(glider, best.angle - 0.05) < 0;
    if (!holds) trimOr({ found: "tumbles", wanted: best }, glider, refuse);
    const now = findTrim(glider);
    return {
      decalage: seat_angle - tailplane.incidence - best.tail,
      change: -best.tail + 0,
      trim: trimOf(glider, best),
      ...(now.found === "trim" && { saved: now.flight.sink - best.sink }),
    };
  },
});
