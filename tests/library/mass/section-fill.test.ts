import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fullSection, sandedSection } from "../../../src/library/mass/section-fill.ts";
import { expectClose } from "../compare.ts";
import { runs } from "../panel-arbitraries.ts";

/** Moments of the section summed over thin columns of wood. */
function summed(share: number, high: number) {
  const power = share / (1 - share);
  const columns = 20_000;
  let [mass, x, z, xx, zz, xz] = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < columns; i++) {
    const at = (i + 0.5) / columns;
    const u = at < high ? (high - at) / high : (at - high) / (1 - high);
    const height = 1 - u ** power;
    mass += height / columns;
    x += (at * height) / columns;
    z += height ** 2 / 2 / columns;
    xx += (at ** 2 * height) / columns;
    zz += height ** 3 / 3 / columns;
    xz += (at * height ** 2) / 2 / columns;
  }
  [x, z] = [x / mass, z / mass];
  return { share: mass, x, z, xx: xx / mass - x ** 2, zz: zz / mass - z ** 2, xz: xz / mass - x * z };
}

describe("a sanded section", () => {
  test("has the moments of its thin columns", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.4, max: 0.95, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (share, high) => {
          const found = sandedSection(share, high);
          for (const [field, value] of Object.entries(summed(share, high))) {
            expect(Math.abs(found[field as keyof typeof found] - value), field).toBeLessThan(1e-4);
          }
        },
      ),
      { ...runs, numRuns: 30 },
    );
  });
  test("is the plain strip where nothing is sanded off, wherever its high point is", () => {
    for (const high of [0.2, 0.5, 0.8]) expectClose(sandedSection(1, high), fullSection, 1e-12);
  });
  test("of two thirds about the middle is the parabola: it balances at two fifths of its height", () => {
    const parabola = sandedSection(2 / 3, 0.5);
    expectClose([parabola.x, parabola.z, parabola.xx], [0.5, 0.4, 1 / 20], 1e-12);
  });
  test("balances ahead of the middle where its high point is", () => {
    expect(sandedSection(0.78, 0.3).x).toBeCloseTo(0.464, 3);
    expect(sandedSection(0.78, 0.7).x).toBeCloseTo(1 - 0.464, 3);
  });
});
