import { describe, expect, test } from "vitest";
import { correlationOf, percentile, sampleOf, shareOf } from "../../../src/cells/studies/statistics.ts";

describe("a sample", () => {
  test("has mean, deviation, ends and percentiles", () => {
    const sample = sampleOf([4, 1, 3, 2, 10]);
    expect(sample).toMatchObject({ count: 5, mean: 4, deviation: Math.sqrt(50 / 4), least: 1, most: 10 });
    expect(sample?.percentiles).toMatchObject({ "25": 2, "50": 3, "75": 4, "90": expect.closeTo(7.6, 12) });
  });

  test("has a histogram with every value in one of its bars", () => {
    const values = Array.from({ length: 1000 }, (_, index) => Math.sin(index) ** 3);
    const { histogram, least = 0, most = 0 } = sampleOf(values) ?? {};
    expect(histogram?.counts.reduce((sum, count) => sum + count, 0)).toBe(1000);
    expect(histogram?.from).toBe(least);
    expect((histogram?.from ?? 0) + (histogram?.width ?? 0) * (histogram?.counts.length ?? 0)).toBeCloseTo(most, 12);
  });

  test("of one value, of the same value many times, and of none", () => {
    expect(sampleOf([2])).toMatchObject({ mean: 2, deviation: 0, percentiles: { "97.5": 2 } });
    expect(sampleOf([2, 2, 2])?.histogram).toEqual({ from: 2, width: 0, counts: [3] });
    expect(sampleOf([])).toBeNull();
  });
});

test("a percentile lies straight between two values", () => {
  expect([0, 50, 100, 10].map((share) => percentile([10, 20, 30, 40, 50], share))).toEqual([10, 30, 50, 14]);
});

test("a share of successes comes with the interval of Wilson", () => {
  // 8 of 10: 0.4902 to 0.9433 (R. G. Newcombe, Statistics in Medicine 17 (1998) 857, method 3; value from memory).
  expect(shareOf(8, 10)).toEqual({ share: 0.8, between: [expect.closeTo(0.4902, 4), expect.closeTo(0.9433, 4)] });
  expect(shareOf(0, 20).between[0]).toBe(0);
  expect(shareOf(20, 20).between[1]).toBe(1);
});

test("correlation is that of Anscombe's first four", () => {
  // F. J. Anscombe, The American Statistician 27 (1973) 17: the first set, 0.816.
  const x = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
  const y = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];
  expect(correlationOf(x, y)).toBeCloseTo(0.816, 3);
  expect(
    correlationOf(
      x,
      x.map(() => 1),
    ),
  ).toBe(0);
});
