import { numberText } from "../number-text.ts";
import { number, record, type ValueOf } from "../spec.ts";

const inertia = (axis: string) => number("kg m^2", `moment of inertia about the ${axis} through the balance point`);
const product = (a: string, b: string) =>
  number("kg m^2", `product of inertia about the balance point, ∫ ${a}·${b} dm`);

/**
 * A part, or several taken as one: mass, balance point, and inertia about it. Axes of every mass: x aft, y to the right
 * tip, z up, from one origin that the whole notebook shares.
 */
export const partRecord = record(
  "part",
  "mass, balance point and inertia of a part, or of several taken as one",
  {
    mass: number("g", "mass"),
    x: number("mm", "balance point, aft of the origin"),
    y: number("mm", "balance point, to the right"),
    z: number("mm", "balance point, up"),
    ixx: inertia("fore-and-aft axis (roll)"),
    iyy: inertia("spanwise axis (pitch)"),
    izz: inertia("upright axis (yaw)"),
    ixy: product("x", "y"),
    ixz: product("x", "z"),
    iyz: product("y", "z"),
  },
  (part) => `${numberText(part.mass, "g")}, balances at x ${numberText(part.x, "mm")}`,
);

/** The value of a part in SI. */
export type Part = ValueOf<typeof partRecord>;
