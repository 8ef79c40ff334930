import { expect, test } from "vitest";
import type { Facet } from "../../../src/library/flow/facets.ts";
import { apparentMass } from "../../../src/library/motion/apparent-mass.ts";

const flat = { incidence: 0, seat: 0, camber: 0, panel: 1 };
const facet = (from: readonly [number, number], to: readonly [number, number], chord: number, x = 0): Facet => ({
  ...flat,
  start: { x, y: from[0], z: from[1], chord },
  end: { x, y: to[0], z: to[1], chord },
});
const at = (matrix: Float64Array, i: number, j: number): number => matrix[i * 6 + j] as number;

test("a flat rectangle about its middle carries πc²/4 a metre in heave, its span cubed in roll, πc⁴/128 in pitch", () => {
  const [chord, span] = [0.08, 0.5];
  const matrix = apparentMass([facet([-span / 2, 0], [span / 2, 0], chord)], [chord / 2, 0, 0]);
  expect(at(matrix, 2, 2)).toBeCloseTo((Math.PI * chord ** 2 * span) / 4, 12);
  expect(at(matrix, 3, 3)).toBeCloseTo((Math.PI * chord ** 2 * span ** 3) / 48, 12);
  expect(at(matrix, 4, 4)).toBeCloseTo((Math.PI * chord ** 4 * span) / 128, 12);
  for (const [i, j] of [
    [0, 0],
    [1, 1],
    [5, 5],
    [2, 4],
    [2, 3],
  ] as const)
    expect(at(matrix, i, j)).toBeCloseTo(0, 12);
});

test("behind the point it couples heave and pitch; a fin couples sideslip and yaw", () => {
  const behind = apparentMass([facet([-0.1, 0], [0.1, 0], 0.04, 0.2)], [0, 0, 0]);
  // Nose up, what lies 0.22 m behind goes down with q · 0.22.
  expect(at(behind, 2, 4) / at(behind, 2, 2)).toBeCloseTo(0.22, 12);
  const fin = apparentMass([facet([0, 0], [0, 0.05], 0.04, 0.2)], [0, 0, 0]);
  expect(at(fin, 1, 1)).toBeCloseTo((Math.PI * 0.04 ** 2 * 0.05) / 4, 12);
  expect(at(fin, 2, 2)).toBeCloseTo(0, 12);
  expect(at(fin, 1, 5) / at(fin, 1, 1)).toBeCloseTo(-0.22, 12);
  // Above the point it also rolls: moved right at the top is a roll to the right.
  expect(at(fin, 1, 3) / at(fin, 1, 1)).toBeCloseTo(0.025, 12);
});

test("it is symmetric, and the mirrored half adds as much again in heave and nothing between left and right", () => {
  const right = facet([0, 0], [0.2, 0.05], 0.07, 0.01);
  const left = facet([-0.2, 0.05], [0, 0], 0.07, 0.01);
  const [half, whole] = [apparentMass([right], [0.03, 0, 0.01]), apparentMass([right, left], [0.03, 0, 0.01])];
  for (let i = 0; i < 6; i++) for (let j = 0; j < 6; j++) expect(at(whole, i, j)).toBeCloseTo(at(whole, j, i), 15);
  expect(at(whole, 2, 2)).toBeCloseTo(2 * at(half, 2, 2), 12);
  for (const [i, j] of [
    [0, 1],
    [2, 1],
    [2, 3],
    [2, 5],
    [4, 1],
    [4, 3],
    [4, 5],
  ] as const) {
    expect(at(whole, i, j)).toBeCloseTo(0, 15);
  }
});
