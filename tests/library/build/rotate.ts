import type { Vector } from "../../../src/library/numerics/vector3.ts";

/** A vector turned about a unit axis (Rodrigues' formula): the tests' own way to fold panels. */
export function rotate([x, y, z]: Vector, [a, b, c]: Vector, angle: number): Vector {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const along = (a * x + b * y + c * z) * (1 - cos);
  return [
    x * cos + (b * z - c * y) * sin + a * along,
    y * cos + (c * x - a * z) * sin + b * along,
    z * cos + (a * y - b * x) * sin + c * along,
  ];
}

/** a + Σ far · along. */
export const plus = (a: Vector, ...ways: readonly (readonly [number, Vector])[]): Vector =>
  ways.reduce<Vector>(([x, y, z], [far, [u, v, w]]) => [x + far * u, y + far * v, z + far * w], a);

export const apart = (a: Vector, b: Vector): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
