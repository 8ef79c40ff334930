import { numberText } from "../number-text.ts";
import { number, record, table, type ValueOf } from "../spec.ts";
import { derivativesRecord } from "./derivatives-record.ts";

const loading = table("the lift along the wing, from the left tip to the right", {
  y: number("mm", "towards the right tip, in the plan view"),
  chord: number("mm", "chord there"),
  section_lift: number("1", "lift coefficient of the section there, square to its panel"),
  load: number("1", "section lift times chord over mean chord: how the lift is spread"),
  ellipse: number("1", "load of the elliptic loading of the same lift, which costs a flat wing least induced drag"),
});

/**
 * The flow about a glider at one angle of attack, by vortex lattice. Coefficients are on the wing's area, span and mean
 * aerodynamic chord, all of the plan view; moments and derivatives about the balance point.
 */
export const flowRecord = record(
  "flow",
  "the flow about a glider",
  {
    angle_of_attack: number("deg", "angle of the wind to the line that incidences are counted from"),
    lift_coefficient: number("1", "C_L: lift of wing and tail, square to the wind"),
    pitch_coefficient: number("1", "C_m: pitching moment about the balance point, nose-up"),
    induced_drag: number("1", "C_Di: induced drag, by the far field"),
    near_drag: number(
      "1",
      "the same by the near field, from the forces on the vortices; agrees where the lattice is fine",
    ),
    span_efficiency: number("1", "C_L²/(π·A·C_Di): 1 for an elliptic loading of a flat wing alone"),
    lift_slope: number("1/rad", "C_Lα: lift per angle of attack, wing and tail"),
    zero_lift_angle: number("deg", "angle of attack without lift"),
    neutral_x: number("mm", "neutral point, aft of the wing root's leading edge"),
    neutral_share: number("%", "the same in mean aerodynamic chords, from its leading edge"),
    static_margin: number("%", "neutral point behind the balance point, in mean aerodynamic chords"),
    downwash: number("deg", "downwash angle at the tailplane", { optional: true }),
    downwash_slope: number("%", "downwash gained at the tailplane for each degree of angle of attack", {
      optional: true,
    }),
    derivatives: derivativesRecord,
    loading,
    span: number("mm", "span of the wing, in the plan view"),
    balance_x: number("mm", "the point that moments are about, aft of the wing root's leading edge"),
    balance_z: number("mm", "the same, up"),
    unknowns: number("1", "vortices of the lattice"),
  },
  ({ lift_coefficient, span_efficiency, static_margin }) =>
    `lift coefficient ${numberText(lift_coefficient, "1")}, span efficiency ${numberText(span_efficiency, "1")}, static margin ${numberText(static_margin, "%")}`,
);

/** The value of a flow in SI. */
export type Flow = ValueOf<typeof flowRecord>;
