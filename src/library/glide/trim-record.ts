import { numberText } from "../number-text.ts";
import { number, record, type ValueOf } from "../spec.ts";
import { slowestFlight } from "./find-trim.ts";
import type { Gliding } from "./gliding.ts";
import { momentPerLift } from "./gliding-words.ts";
import type { SteadyFlight } from "./steady-flight.ts";

/** A trimmed glide. */
export const trimRecord = record(
  "trim",
  "the glide that a glider settles in by itself",
  {
    speed: number("m/s", "speed along the path"),
    sink: number("m/s", "height lost each second"),
    sink_low: number("m/s", "sink where friction is as low as it may be"),
    sink_high: number("m/s", "sink where friction is as high as it may be"),
    glide_ratio: number("1", "way over ground for each metre of height"),
    path_angle: number("deg", "angle of the path below the horizon"),
    angle_of_attack: number("deg", "angle of the fuselage to the path"),
    pitch: number("deg", "angle of the fuselage above the horizon"),
    lift_coefficient: number("1", "lift coefficient on the wing's area"),
    drag_coefficient: number("1", "drag coefficient on the wing's area, all of it"),
    induced_drag: number("1", "the part of it that lift costs"),
    friction_drag: number("1", "the rest of it: wing, tail, fin, stick and fittings"),
    static_margin: number("%", "how far the neutral point lies behind the balance point, in mean aerodynamic chords"),
    stall_speed: number("m/s", "speed of the slowest flight there is"),
    speed_margin: number("%", "by how much it flies faster than that"),
  },
  (trim) =>
    `${numberText(trim.sink, "m/s")} sink at ${numberText(trim.speed, "m/s")}, ${numberText(trim.glide_ratio, "1")} to 1`,
);

/** The value of a trim in SI. */
export type Trim = ValueOf<typeof trimRecord>;

/** The record of a trimmed flight. */
export function trimOf(glider: Gliding, flight: SteadyFlight): Trim {
  const { speed, sink, descent, angle, loads } = flight;
  const { area, mac } = glider.glider.wing;
  const stall_speed = slowestFlight(glider).speed;
  const friction = loads.drag - loads.induced;
  return {
    speed,
    sink,
    ...sinkBand(glider, flight),
    glide_ratio: 1 / Math.tan(descent),
    path_angle: descent,
    angle_of_attack: angle,
    pitch: angle - descent,
    lift_coefficient: loads.lift / area,
    drag_coefficient: loads.drag / area,
    induced_drag: loads.induced / area,
    friction_drag: friction / area,
    static_margin: -momentPerLift(glider, angle) / mac,
    stall_speed,
    speed_margin: speed / stall_speed - 1,
  };
}

/** Sink at the same angle of attack with friction as low and as high as it may be. */
export function sinkBand(glider: Gliding, { speed, bank, loads }: SteadyFlight) {
  const spread = glider.spread(speed);
  const lift = loads.lift * Math.cos(bank);
  const all = Math.hypot(lift, loads.drag);
  const sinkWith = (share: number) => {
    const drag = loads.induced + (loads.drag - loads.induced) * share;
    return speed * Math.sqrt(all / Math.hypot(lift, drag)) * Math.sin(Math.atan2(drag, lift));
  };
  return { sink_low: sinkWith(1 - spread), sink_high: sinkWith(1 + spread) };
}
