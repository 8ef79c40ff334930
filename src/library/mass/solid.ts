import { threePoints } from "../numerics/gauss-legendre.ts";
import type { Vector } from "../numerics/vector3.ts";
import type { Part } from "./part-record.ts";

/** How far mass lies from its centre, per mass: the mean of (way along a)·(way along b). */
export interface Scatter {
  readonly mean: number;
  readonly a: Vector;
  readonly b: Vector;
}

/** A cut through a solid: its mass per metre, the centre of the cut, and how its mass scatters within the cut. */
export interface Slice {
  readonly mass: number;
  readonly centre: Vector;
  readonly scatter: readonly Scatter[];
}

/**
 * The bodies that have the moments of a solid of so many metres, cut square to its length at shares of it. Exact
 * where mass times centre times centre is a polynomial up to the fifth degree: every straight taper is.
 */
export const solid = (length: number, cut: (share: number) => Slice): readonly Part[] =>
  threePoints.map(([share, weight]) => {
    const { mass, centre, scatter } = cut(share);
    return bodyOf(mass * length * weight, centre, scatter);
  });

/** A body from the scatter of its mass: ∫ x² dm and its like make up the moments and products of inertia. */
export function bodyOf(mass: number, centre: Vector, scatter: readonly Scatter[]): Part {
  const second = (i: 0 | 1 | 2, j: 0 | 1 | 2) =>
    mass * scatter.reduce((sum, { mean, a, b }) => sum + (mean * (a[i] * b[j] + a[j] * b[i])) / 2, 0);
  const [xx, yy, zz] = [second(0, 0), second(1, 1), second(2, 2)];
  return {
    mass,
    x: centre[0],
    y: centre[1],
    z: centre[2],
    ixx: yy + zz,
    iyy: xx + zz,
    izz: xx + yy,
    ixy: second(0, 1),
    ixz: second(0, 2),
    iyz: second(1, 2),
  };
}
