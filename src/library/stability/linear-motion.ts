import { solveMatrix } from "../numerics/small-matrix.ts";
import { freeFall } from "../units.ts";

/**
 * Small motions about a steady, straight path. Axes fixed in the glider at its balance point, x forward, y to the right,
 * z down; forces X, Y, Z and moments L, M, N against speeds u, v, w and rates p, q, r, in this order. Any such axes will
 * do as long as all of it is told in them: in stability axes w is 0 and the pitch is the angle of the path.
 */
export interface LinearMotion {
  readonly mass: number;
  /** Forces and moments for each acceleration, 6 × 6 row by row: mass, inertia, apparent mass, less any due to ẇ. */
  readonly inertia: readonly number[];
  /** Change of the air's forces and moments with each speed and rate, 6 × 6 row by row. */
  readonly derivatives: readonly number[];
  /** Speeds along x and z, and pitch, of the path; a gliding path in stability axes has a pitch below 0. */
  readonly u: number;
  readonly w: number;
  readonly pitch: number;
}

/** The matrix of u, w, q and pitch, row by row (B. Etkin, L. D. Reid, Dynamics of Flight, 1996, equation 4.9,18). */
export function longitudinalMatrix({ mass, inertia, derivatives, u, w, pitch }: LinearMotion): readonly number[] {
  const [weightX, weightZ] = [-mass * freeFall * Math.cos(pitch), -mass * freeFall * Math.sin(pitch)];
  const [x, z, m] = block(derivatives, plane);
  return [
    ...solveMatrix(block(inertia, plane).flat(), [
      ...[x[0], x[1], x[2] - mass * w, weightX],
      ...[z[0], z[1], z[2] + mass * u, weightZ],
      ...[...m, 0],
    ]),
    ...[0, 0, 1, 0],
  ];
}

/** The matrix of v, p, r and bank, row by row (Etkin and Reid 1996, equation 4.9,19). */
export function lateralMatrix({ mass, inertia, derivatives, u, w, pitch }: LinearMotion): readonly number[] {
  const [y, l, n] = block(derivatives, acrossPlane);
  return [
    ...solveMatrix(block(inertia, acrossPlane).flat(), [
      ...[y[0], y[1] + mass * w, y[2] - mass * u, mass * freeFall * Math.cos(pitch)],
      ...[...l, 0],
      ...[...n, 0],
    ]),
    ...[0, 1, Math.tan(pitch), 0],
  ];
}

type Three = readonly [number, number, number];
const plane: Three = [0, 2, 4];
const acrossPlane: Three = [1, 3, 5];

/** Three rows and columns of a 6 × 6 matrix. */
function block(of: readonly number[], at: Three): readonly [Three, Three, Three] {
  const entry = (row: number, column: number) => of[6 * row + column] ?? Number.NaN;
  const row = (index: number): Three => [entry(index, at[0]), entry(index, at[1]), entry(index, at[2])];
  return [row(at[0]), row(at[1]), row(at[2])];
}

/** A 6 × 6 matrix, row by row, of zeros but for the given entries. */
export function sixBySix(entries: readonly (readonly [row: number, column: number, value: number])[]): number[] {
  const all = new Array<number>(36).fill(0);
  for (const [row, column, value] of entries) all[6 * row + column] = value;
  return all;
}
