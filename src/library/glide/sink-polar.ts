import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { rootWithin } from "../numerics/roots.ts";
import { define, list, number, record, type ValueOf } from "../spec.ts";
import {
  bestGlideFlight,
  bestGlideTrim,
  leastSinkFlight,
  leastSinkTrim,
  slowestFlight,
  slowestTrim,
  tailFor,
} from "./find-trim.ts";
import { glidingOf, glidingParameters } from "./gliding.ts";
import { glidingAssumptions, glidingErrors, glidingSources, withinReach } from "./gliding-words.ts";
import { sampleGlider } from "./sample-gliders.ts";
import { type SteadyFlight, steadyFlight } from "./steady-flight.ts";
import { sinkBand } from "./trim-record.ts";

const sinkPolarRecord = record(
  "sink_polar",
  "sink over speed of a glider",
  {
    speed: list(number("m/s", "speed"), "speeds along the path, slowest first"),
    sink: list(number("m/s", "sink"), "height lost each second at each speed"),
    sink_low: list(number("m/s", "sink"), "sink where friction is as low as it may be"),
    sink_high: list(number("m/s", "sink"), "sink where friction is as high as it may be"),
    glide_ratio: list(number("1", "glide ratio"), "way for each metre of height"),
    lift_coefficient: list(number("1", "lift coefficient"), "lift coefficient at each speed"),
    decalage: list(number("deg", "decalage"), "decalage that trims for each speed; empty without a tailplane"),
    best_glide_ratio: number("1", "best glide ratio"),
    best_glide_speed: number("m/s", "speed of the best glide"),
    least_sink: number("m/s", "least sink"),
    least_sink_speed: number("m/s", "speed of the least sink"),
    stall_speed: number("m/s", "slowest speed there is"),
  },
  (polar) =>
    `${numberText(polar.least_sink, "m/s")} least sink at ${numberText(polar.least_sink_speed, "m/s")}, ${numberText(polar.best_glide_ratio, "1")} to 1 at ${numberText(polar.best_glide_speed, "m/s")}`,
);

/** The value of a sink polar in SI. */
export type SinkPolar = ValueOf<typeof sinkPolarRecord>;

/** `sink_polar(glider, shape, …, count)`. */
export const sinkPolar = define({
  name: "sink_polar",
  summary: "Sink over speed of a glider, trimmed for each speed by its tailplane; best glide, least sink, stall.",
  topic: "glide",
  parameters: {
    ...glidingParameters,
    count: number("1", "how many speeds", { min: 3, max: 200, default: 24 }),
  },
  result: sinkPolarRecord,
  formula:
    "steady flight at angles of attack from the stall to twice its speed, the tailplane turned so that the moment is 0",
  errors: [...glidingErrors, "count is no whole number."],
  assumptions: [
    "Without a tailplane the moment is left out: the glider is taken to be balanced for each speed.",
    ...glidingAssumptions,
  ],
  sources: glidingSources,
  examples: [
    {
      summary: "24 g on a wing of 580 cm² with raised tips",
      arguments: { glider: sampleGlider, count: 5 },
      result: { stall_speed: 2.782, least_sink: 0.2851, least_sink_speed: 2.965, best_glide_ratio: 10.65 },
      tolerance: 5e-3,
    },
  ],
  isSlow: true,
  compute: ({ count, ...given }, refuse) => {
    if (!Number.isInteger(count)) refuse("count", "count must be a whole number.");
    const glider = glidingOf(given, refuse);
    const { wing, tailplane, seat_angle } = glider.glider;
    const [slowest, least, best] = tailplane
      ? [slowestTrim(glider), leastSinkTrim(glider), bestGlideTrim(glider)]
      : [slowestFlight(glider), leastSinkFlight(glider), bestGlideFlight(glider)];
    for (const flight of [slowest, least, best]) withinReach(flight, glider, refuse);
    const tooFast = (angle: number) => steadyFlight(glider, angle).speed - 2 * slowest.speed;
    let flatter = slowest.angle;
    while (tooFast(flatter) < 0 && flatter > slowest.angle - degrees(30)) flatter -= degrees(1);
    // A glider of much drag never comes to twice that speed: then the flattest angle looked at is the last.
    const fastest = tooFast(flatter) < 0 ? flatter : rootWithin(tooFast, flatter, flatter + degrees(1));
    const flights = Array.from({ length: count }, (_, i): SteadyFlight => {
      const angle = slowest.angle + ((fastest - slowest.angle) * i) / (count - 1);
      return steadyFlight(glider, angle, 0, tailplane ? tailFor(glider, angle) : 0);
    });
    const bands = flights.map((flight) => sinkBand(glider, flight));
    return {
      speed: flights.map((flight) => flight.speed),
      sink: flights.map((flight) => flight.sink),
      sink_low: bands.map((band) => band.sink_low),
      sink_high: bands.map((band) => band.sink_high),
      glide_ratio: flights.map((flight) => 1 / Math.tan(flight.descent)),
      lift_coefficient: flights.map((flight) => flight.loads.lift / wing.area),
      decalage: tailplane ? flights.map((flight) => seat_angle - tailplane.incidence - flight.tail) : [],
      best_glide_ratio: 1 / Math.tan(best.descent),
      best_glide_speed: best.speed,
      least_sink: least.sink,
      least_sink_speed: least.speed,
      stall_speed: slowest.speed,
    };
  },
});
