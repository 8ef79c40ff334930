import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Point, smoothCurve, smoothStep } from "../../../src/library/numerics/smooth-curve.ts";
import { runs } from "../panel-arbitraries.ts";

const points: fc.Arbitrary<readonly Point[]> = fc
  .array(fc.tuple(fc.double({ min: 0.1, max: 2, noNaN: true }), fc.double({ min: -3, max: 3, noNaN: true })), {
    minLength: 2,
    maxLength: 8,
  })
  .map((steps) => {
    let x = 0;
    return steps.map(([width, y]): Point => {
      x += width;
      return [x, y];
    });
  });

describe("a smooth curve", () => {
  test("goes through its points and stays between neighbours", () => {
    fc.assert(
      fc.property(points, fc.double({ min: 0, max: 1, noNaN: true }), (given, share) => {
        const curve = smoothCurve(given);
        given.forEach(([x, y], i) => {
          expect(curve(x)).toBeCloseTo(y, 12);
          const next = given[i + 1];
          if (!next) return;
          const between = curve(x + (next[0] - x) * share);
          expect(between).toBeGreaterThanOrEqual(Math.min(y, next[1]) - 1e-12);
          expect(between).toBeLessThanOrEqual(Math.max(y, next[1]) + 1e-12);
        });
      }),
      runs,
    );
  });
  test("has no jump in its slope at any point, its ends included", () => {
    fc.assert(
      fc.property(points, (given) => {
        const curve = smoothCurve(given, 0.3, -0.2);
        for (const [x] of given) {
          const slope = (side: number) => (curve(x + side) - curve(x)) / side;
          expect(slope(1e-7)).toBeCloseTo(slope(-1e-7), 3);
        }
      }),
      runs,
    );
  });
  test("is straight where its points are, and goes on straight", () => {
    const line = smoothCurve([
      [0, 1],
      [1, 3],
      [4, 9],
    ]);
    for (const x of [-2, 0.3, 2.7, 8]) expect(line(x)).toBeCloseTo(1 + 2 * x, 12);
  });
  test("of one point is level, and of none is a fault", () => {
    expect(smoothCurve([[2, 5]])(9)).toBe(5);
    expect(() => smoothCurve([])).toThrow(/expected at least one/);
  });
});

test("a smooth step is level at both ends and beyond, and half in the middle", () => {
  expect([-1, 0, 0.5, 1, 3].map(smoothStep)).toEqual([0, 0, 0.5, 1, 1]);
});
