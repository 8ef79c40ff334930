import { numberText } from "../number-text.ts";
import { number, record, type ValueOf } from "../spec.ts";

/** A steady glide in still air, at one lift coefficient. `low` and `high` take the spread of the profile drag. */
export const glideRecord = record(
  "glide",
  "a steady glide in still air",
  {
    speed: number("m/s", "speed along the path"),
    sink: number("m/s", "height lost each second"),
    sink_low: number("m/s", "sink where the profile drag is as low as it may be"),
    sink_high: number("m/s", "sink where the profile drag is as high as it may be"),
    glide_ratio: number("1", "way over ground for each metre of height"),
    angle: number("deg", "angle of the path below the horizon"),
    lift_coefficient: number("1", "lift coefficient on the area of the plan view"),
    drag_coefficient: number("1", "drag coefficient, all of it"),
    profile_drag: number("1", "drag coefficient of the wing's sections"),
    induced_drag: number("1", "drag coefficient that lift costs"),
    other_drag: number("1", "drag coefficient of tail, fin and body, on the wing's area"),
  },
  (glide) =>
    `${numberText(glide.sink, "m/s")} sink at ${numberText(glide.speed, "m/s")}, ${numberText(glide.glide_ratio, "1")} to 1`,
);

/** The value of a glide in SI. */
export type Glide = ValueOf<typeof glideRecord>;
