import { degrees } from "../numerics/degrees.ts";
import { from, type Vector } from "../numerics/vector3.ts";
import { number } from "../spec.ts";

/** Where a wing sits, as parameters of what weighs it. */
export const seatParameters = {
  z: number("mm", "height of the lower face at the root's leading edge", { default: 0 }),
  incidence: number("deg", "nose-up angle of the wing's seat", { above: -degrees(45), below: degrees(45), default: 0 }),
};

/** Where a surface sits: its root's leading edge on the lower face, and the nose-up angle there. */
export interface Seat {
  readonly x: number;
  readonly z: number;
  readonly incidence: number;
}

/** The directions of a panel: along the chord aft, along the span outward, and square to both, upward. */
export interface Directions {
  readonly aft: Vector;
  readonly out: Vector;
  readonly up: Vector;
}

/** Directions of a panel of this cant on its side, turned nose-down by its twist and nose-up by the seat's angle. */
export function directions(side: 1 | -1, cant: number, twist: number, { incidence }: Seat): Directions {
  const up: Vector = [0, -side * Math.sin(cant), Math.cos(cant)];
  const twisted = (aft: number, raised: number): Vector => from([aft, 0, 0], [raised, up]);
  return {
    aft: pitched(twisted(Math.cos(twist), Math.sin(twist)), incidence),
    out: pitched([0, side * Math.cos(cant), Math.sin(cant)], incidence),
    up: pitched(twisted(-Math.sin(twist), Math.cos(twist)), incidence),
  };
}

/** Where a place, told from the root's leading edge, comes to lie on the seat. */
export const seated = (place: Vector, { x, z, incidence }: Seat): Vector =>
  from([x, 0, z], [1, pitched(place, incidence)]);

/** A vector turned nose-up about the span: what points aft then points down a little. */
const pitched = ([x, y, z]: Vector, angle: number): Vector => [
  x * Math.cos(angle) + z * Math.sin(angle),
  y,
  z * Math.cos(angle) - x * Math.sin(angle),
];
