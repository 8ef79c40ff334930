import { Matrix, solve } from "ml-matrix";
import { describe, expect, test } from "vitest";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { coefficients, derivatives, plainWing } from "./sample-flows.ts";

type Vector = readonly [number, number, number];
const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const plus = (a: Vector, b: Vector, times = 1): Vector => [
  a[0] + times * b[0],
  a[1] + times * b[1],
  a[2] + times * b[2],
];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/**
 * Rolling moment coefficient of a rectangular wing 1 m wide in sideslip, right wing down, and its lift: a lattice written
 * apart from ours, without mirror halves, whose wake truly leaves along the wind, and whose vortices, bound ones and legs,
 * take the force of the whole air's speed. Axes x aft, y right, z up. Legs end 1000 spans behind.
 */
function inSideslip(aspectRatio: number, cant: number, alpha: number, beta: number, strips = 20, rows = 4) {
  const chord = 1 / aspectRatio;
  const wind: Vector = [Math.cos(alpha) * Math.cos(beta), -Math.sin(beta), Math.sin(alpha) * Math.cos(beta)];
  const far: Vector = [wind[0], wind[1], 0];
  // Closed by a quarter of a strip before the tips, as the wake's edge of equal strips stands (J. DeYoung; from memory).
  const width = 0.5 / (strips + 0.25);
  const at = (side: number, share: number): Vector => [0, side * share, share * Math.tan(cant)];
  const panels = [-1, 1].flatMap((side) =>
    Array.from({ length: strips * rows }, (_, i) => {
      const [strip, row] = [Math.floor(i / rows), i % rows];
      const [inner, outer] = [strip * width, (strip + 1) * width];
      const [a, b] = side < 0 ? [at(-1, outer), at(-1, inner)] : [at(1, inner), at(1, outer)];
      const x = (chord * (row + 0.25)) / rows;
      const middle = at(side, (inner + outer) / 2);
      return {
        a: plus(a, [x, 0, 0]),
        b: plus(b, [x, 0, 0]),
        endA: plus(a, [chord, 0, 0]),
        endB: plus(b, [chord, 0, 0]),
        control: plus(middle, [(chord * (row + 0.75)) / rows, 0, 0]),
        normal: [0, -side * Math.sin(cant), Math.cos(cant)] as Vector,
      };
    }),
  );
  const segment = (p: Vector, from: Vector, to: Vector): Vector => {
    const [r, s] = [minus(p, from), minus(p, to)];
    const way = cross(r, s);
    const square = dot(way, way);
    if (square < 1e-16) return [0, 0, 0];
    const along = dot(
      minus(to, from),
      minus(plus([0, 0, 0], r, 1 / Math.hypot(...r)), plus([0, 0, 0], s, 1 / Math.hypot(...s))),
    );
    return plus([0, 0, 0], way, along / (4 * Math.PI * square));
  };
  const induced = (p: Vector, { a, b, endA, endB }: (typeof panels)[number]): Vector =>
    [
      [plus(endA, far, 1000), endA],
      [endA, a],
      [a, b],
      [b, endB],
      [endB, plus(endB, far, 1000)],
    ].reduce<Vector>((sum, [from, to]) => plus(sum, segment(p, from as Vector, to as Vector)), [0, 0, 0]);
  const matrix = new Matrix(
    panels.map(({ control, normal }) => panels.map((other) => dot(normal, induced(control, other)))),
  );
  const strengths = solve(matrix, Matrix.columnVector(panels.map(({ normal }) => -dot(normal, wind)))).to1DArray();
  let [lift, roll] = [0, 0];
  panels.forEach(({ a, b, endA, endB }, i) => {
    for (const [from, to] of [
      [endA, a],
      [a, b],
      [b, endB],
    ] as const) {
      const force = plus([0, 0, 0], cross(wind, minus(to, from)), strengths[i]);
      lift += force[2];
      roll += dot(cross(plus([0, 0, 0], plus(from, to), 0.5), force), [-1, 0, 0]);
    }
  });
  return { lift: (2 * lift) / chord, roll: (2 * roll) / chord };
}

// Both change with the rows, as legs upon the surface carry the force: −.091, −.086 and −.082 for 2, 4 and 8 of them.
describe("the roll in sideslip, against a lattice of its own whose wake leaves along the wind", () => {
  test.each([
    ["flat, of aspect ratio 6", 6, 0],
    ["flat, of aspect ratio 8", 8, 0],
    ["a V of 5 deg, of aspect ratio 6", 6, 5],
  ])("of a wing %s", (_, aspectRatio, cant) => {
    const alpha = 0.05;
    const small = 0.01;
    const [right, left] = [small, -small].map((beta) => inSideslip(aspectRatio, degrees(cant), alpha, beta));
    const { lift } = inSideslip(aspectRatio, degrees(cant), alpha, 0);
    const expected = ((right?.roll ?? 0) - (left?.roll ?? 0)) / (2 * small) / lift;
    const wing = plainWing(aspectRatio, { cant: degrees(cant) });
    const found = derivatives(wing, alpha, { strips: 24 }).roll_beta / coefficients(wing, alpha, { strips: 24 }).lift;
    expect(Math.abs(found / expected - 1)).toBeLessThan(0.01);
  });
});
