import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lateralModes } from "../../../src/library/stability/lateral-modes.ts";
import { lateralMatrix, longitudinalMatrix, sixBySix } from "../../../src/library/stability/linear-motion.ts";
import { lateralModesOf, longitudinalModesOf } from "../../../src/library/stability/mode-records.ts";
import { call, refuse } from "../call.ts";
import { runs } from "../panel-arbitraries.ts";

/** Turns forces and moments, and what they hang on, by an angle about the y axis: body axes out of stability axes. */
function turned(matrix: readonly number[], angle: number): number[] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  // A body axis nose-up by the angle: u = c·us − s·ws, w = s·us + c·ws, and likewise p and r.
  const turn = sixBySix([
    [0, 0, c],
    [0, 2, -s],
    [2, 0, s],
    [2, 2, c],
    [1, 1, 1],
    [4, 4, 1],
    [3, 3, c],
    [3, 5, -s],
    [5, 3, s],
    [5, 5, c],
  ]);
  const at = (m: readonly number[], row: number, column: number) => m[6 * row + column] ?? 0;
  return Array.from({ length: 36 }, (_, i) => {
    const [row, column] = [Math.floor(i / 6), i % 6];
    let sum = 0;
    for (let a = 0; a < 6; a++) {
      for (let b = 0; b < 6; b++) sum += at(turn, row, a) * at(matrix, a, b) * at(turn, column, b);
    }
    return sum;
  });
}

const mass = 0.02;
const inertia = sixBySix([
  [0, 0, mass],
  [1, 1, mass * 1.02],
  [2, 2, mass * 1.1],
  [3, 3, 6e-5],
  [4, 4, 4e-5],
  [5, 5, 9e-5],
  [3, 5, 2e-6],
  [5, 3, 2e-6],
]);
const derivatives = sixBySix([
  [0, 0, -0.006],
  [0, 2, 0.03],
  [2, 0, -0.1],
  [2, 2, -0.35],
  [2, 4, -0.004],
  [4, 2, -0.003],
  [4, 4, -0.0008],
  [1, 1, -0.03],
  [1, 3, 0.0004],
  [1, 5, 0.001],
  [3, 1, -0.002],
  [3, 3, -0.0016],
  [3, 5, 0.0008],
  [5, 1, 0.0006],
  [5, 3, -0.0003],
  [5, 5, -0.0003],
]);

describe("small motions", () => {
  test("have the same modes in stability axes and in axes fixed in the fuselage", () => {
    const gliding = -0.12;
    const inStability = { mass, inertia, derivatives, u: 4, w: 0, pitch: gliding };
    fc.assert(
      fc.property(fc.double({ min: -0.3, max: 0.3, noNaN: true }), (angle) => {
        const inBody = {
          mass,
          inertia: turned(inertia, angle),
          derivatives: turned(derivatives, angle),
          u: 4 * Math.cos(angle),
          w: 4 * Math.sin(angle),
          pitch: gliding + angle,
        };
        const [flat, steep] = [inStability, inBody].map((motion) =>
          longitudinalModesOf(longitudinalMatrix(motion), refuse),
        );
        const [left, right] = [inStability, inBody].map((motion) => lateralModesOf(lateralMatrix(motion), refuse));
        for (const mode of ["short_period", "phugoid"] as const) {
          expect(steep?.[mode].rate).toBeCloseTo(flat?.[mode].rate ?? 0, 9);
          expect(steep?.[mode].frequency).toBeCloseTo(flat?.[mode].frequency ?? 0, 9);
        }
        for (const mode of ["roll", "spiral", "dutch_roll"] as const) {
          expect(right?.[mode].rate).toBeCloseTo(left?.[mode].rate ?? 0, 9);
        }
      }),
      runs,
    );
  });
  test("look as if they righted themselves where derivatives of body axes are taken for those of stability axes", () => {
    const angle = 0.15;
    const spiral = (of: readonly number[]) =>
      lateralModesOf(lateralMatrix({ mass, inertia, derivatives: of, u: 4, w: 0, pitch: 0 }), refuse).spiral.rate;
    const grows = derivatives.map((each, i) => (i === 6 * 3 + 1 ? -0.0012 : each));
    expect(spiral(grows)).toBeGreaterThan(0);
    // Clr of body axes is less by the angle times the roll damping, which is large.
    expect(spiral(turned(grows, angle))).toBeLessThan(0);
  });
});

test("a product of inertia that no body has is refused", () => {
  const coefficients = {
    side_by_slip: -0.1,
    roll_by_slip: -0.1,
    yaw_by_slip: 0.05,
    roll_by_roll: -0.5,
    yaw_by_roll: -0.03,
    roll_by_yaw: 0.1,
    yaw_by_yaw: -0.05,
  };
  const body = { mass, roll_inertia: 6e-5, yaw_inertia: 9e-5, product: 1e-4, area: 0.03, span: 0.5, speed: 4 };
  expect(() => call(lateralModes, { ...body, ...coefficients })).toThrow(/No body has such a product/);
});
