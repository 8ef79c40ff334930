import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fixedPoint, leastWithin, rootWithin } from "../../../src/library/numerics/roots.ts";
import { runs } from "../panel-arbitraries.ts";

describe("a root within an interval", () => {
  test("is found for straight, bent and steep functions, in few steps", () => {
    fc.assert(
      fc.property(fc.integer({ min: -900, max: 900 }), (thousandths) => {
        const at = thousandths / 1000;
        for (const of of [
          (x: number) => x - at,
          (x: number) => x ** 3 - at ** 3 + 0.1 * (x - at),
          (x: number) => Math.tan(1.5 * x) - Math.tan(1.5 * at),
          (x: number) => Math.exp(5 * x) - Math.exp(5 * at),
        ]) {
          let calls = 0;
          const counted = (x: number) => {
            calls++;
            return of(x);
          };
          expect(rootWithin(counted, -1, 1)).toBeCloseTo(at, 11);
          expect(calls).toBeLessThan(35);
        }
      }),
      runs,
    );
  });
  test("at an end is that end, and without a change of sign is a fault", () => {
    expect(rootWithin((x) => x, 0, 1)).toBe(0);
    expect(rootWithin((x) => x - 1, 0, 1)).toBe(1);
    expect(() => rootWithin((x) => x + 2, 0, 1)).toThrow(/expected opposite signs/);
  });
});

test("the least within an interval is the bottom of the valley", () => {
  expect(leastWithin((x) => (x - 0.3) ** 2, -1, 1)).toBeCloseTo(0.3, 7);
  expect(leastWithin((x) => Math.abs(x - 0.7), 0, 1)).toBeCloseTo(0.7, 7);
  expect(leastWithin((x) => x, 2, 3)).toBeCloseTo(2, 7);
});

describe("a fixed point", () => {
  test("is where the function leads to itself", () => {
    expect(fixedPoint(Math.cos, 1)).toBeCloseTo(0.739085133215, 11);
    expect(fixedPoint((x) => 3 * x ** 0.1, 5)).toBeCloseTo(3 ** (1 / 0.9), 12);
    expect(fixedPoint(() => 4, 1)).toBe(4);
  });
});
