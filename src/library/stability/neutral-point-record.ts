import { numberText } from "../number-text.ts";
import { number, record, type ValueOf } from "../spec.ts";

/** Where a glider's lift grows when its angle of attack does, and what makes it so. */
export const neutralPointRecord = record(
  "neutral_point",
  "the neutral point of wing and tailplane",
  {
    x: number("mm", "neutral point, aft of the wing root's leading edge"),
    share: number("%", "the same as a share of the mean aerodynamic chord, from its leading edge"),
    lift_slope: number("1/rad", "lift slope of wing and tailplane together, on the wing's area"),
    wing_slope: number("1/rad", "lift slope of the wing, on its area"),
    tail_slope: number("1/rad", "lift slope of the tailplane, on its own area"),
    tail_volume: number("1", "tail volume about a quarter of the wing's mean aerodynamic chord"),
    downwash: number("%", "downwash angle at the tailplane for each degree of angle of attack"),
  },
  (point) => `${numberText(point.x, "mm")} aft, at ${numberText(point.share, "%")} of the mean chord`,
);

/** The value of a neutral point in SI. */
export type NeutralPoint = ValueOf<typeof neutralPointRecord>;
