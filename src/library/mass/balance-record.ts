import { numberText } from "../number-text.ts";
import { number, record, type ValueOf } from "../spec.ts";

/** Axes of every mass: x aft, y to the right tip, z up, from one origin that the whole notebook shares. */
const inertia = (axis: string) => number("kg m^2", `moment of inertia about the ${axis} through the balance point`);
const product = (a: string, b: string) =>
  number("kg m^2", `product of inertia about the balance point, ∫ ${a}·${b} dm`);

/** Mass, balance point and inertia of a set of things. */
export const balanceRecord = record(
  "balance",
  "mass, balance point and inertia of all parts together",
  {
    mass: number("g", "mass of all parts"),
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
  (all) => `${numberText(all.mass, "g")}, balances at x ${numberText(all.x, "mm")}`,
);

/** The value of a balance in SI. */
export type Balance = ValueOf<typeof balanceRecord>;
