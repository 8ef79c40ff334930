/** A place or direction in space: x aft, y to the right tip, z up. */
export type Vector = readonly [x: number, y: number, z: number];

/** The place reached from one by going so far along each direction. */
export function from(start: Vector, ...ways: readonly (readonly [far: number, along: Vector])[]): Vector {
  const at = (axis: 0 | 1 | 2) => ways.reduce((sum, [far, along]) => sum + far * along[axis], start[axis]);
  return [at(0), at(1), at(2)];
}

/** The place that lies between two, at a share of the way. */
export const between = (start: Vector, end: Vector, share: number): Vector =>
  from([0, 0, 0], [1 - share, start], [share, end]);

/** The dot product. */
export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** The cross product. */
export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
