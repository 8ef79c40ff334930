import { airAt, airParameter } from "../air/atmosphere.ts";
import { efficiency, efficiencySource } from "../flow/induced-drag.ts";
import { type FieldValues, number, type Source } from "../spec.ts";
import type { Glide } from "./glide-record.ts";
import { steadyGlide } from "./steady-glide.ts";

/** What a glide with a parabolic polar is told by. */
export const parabolicParameters = {
  mass: number("g", "mass of the glider", { above: 0 }),
  area: number("m^2", "area of the wing in the plan view", { above: 0 }),
  aspect_ratio: number("1", "span squared over area", { above: 0 }),
  zero_lift_drag: number("1", "drag coefficient of all but the induced drag, taken for constant", { above: 0 }),
  efficiency,
  max_lift: number("1", "largest lift coefficient before the stall; left out, no limit", { above: 0, optional: true }),
  spread: number("%", "share by which zero_lift_drag may differ", { min: 0, below: 1, default: 0.2 }),
  air: airParameter,
};

/** What holds of every parabolic polar. */
export const parabolicAssumptions: readonly string[] = [
  "Drag is a constant and a part that grows with the square of lift. Small gliders stall before their least sink on such a polar: give max_lift.",
  "The same constant drag at all speeds; at small Reynolds numbers it grows as the glider flies slower.",
  "Still air, wings level, steady.",
];

export const parabolicSources: readonly Source[] = [
  { text: "Parabolic drag polar CD = CD0 + CL²/(π·e·A), least drag and least power", mark: "derived" },
  efficiencySource,
];

/** The glide at a lift coefficient, or at the largest one where that is less. */
export function parabolicGlide(wanted: number, given: FieldValues<typeof parabolicParameters>): Glide {
  const { mass, area, aspect_ratio, zero_lift_drag, max_lift = wanted, spread, air = airAt(0) } = given;
  const lift = Math.min(wanted, max_lift);
  const induced = lift ** 2 / (Math.PI * given.efficiency * aspect_ratio);
  return steadyGlide({
    mass,
    area,
    density: air.density,
    lift,
    profile: zero_lift_drag,
    induced,
    other: 0,
    spread,
  });
}

/** Lift coefficient of the least drag for the lift: CD0 = CL²/(π·e·A) (derived). */
export const leastDragLift = (given: FieldValues<typeof parabolicParameters>): number =>
  Math.sqrt(given.zero_lift_drag * Math.PI * given.efficiency * given.aspect_ratio);
