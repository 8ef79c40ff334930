import { describe, expect, test } from "vitest";
import { drawsOf } from "../../../src/cells/studies/draws.ts";
import {
  deviate,
  deviatePair,
  deviationOf,
  drawsFor,
  type Law,
  likelihoodOfHalf,
  normalShare,
} from "../../../src/cells/studies/laws.ts";
import { correlationOf, meanOf } from "../../../src/cells/studies/statistics.ts";

const laws: readonly Law[] = ["uniform", "triangular", "normal"];
const many = 60_000;
const sample = <T>(seed: number, draw: (draws: ReturnType<typeof drawsOf>) => T): T[] => {
  const draws = drawsOf(seed);
  return Array.from({ length: many }, () => draw(draws));
};
const spread = (values: readonly number[]): number =>
  Math.sqrt(meanOf(values.map((value) => value ** 2)) - meanOf(values) ** 2);
/** Four standard errors of a mean of numbers with that deviation. */
const chance = (deviation: number): number => (4 * deviation) / Math.sqrt(many);

describe("a stream of random numbers", () => {
  test("is repeated by its seed, and is another for another seed or another stream", () => {
    const first = (seed: number, stream = 0) => {
      const draws = drawsOf(seed, stream);
      return [draws.next(), draws.next(), draws.next()];
    };
    expect(first(7)).toEqual(first(7));
    const all = [first(7), first(8), first(0), first(4_294_967_295), first(7, 1), first(7, 2)].flat();
    expect(new Set(all).size).toBe(all.length);
  });

  test("goes on where it was passed over, as if each had been drawn", () => {
    const [drawn, passed] = [drawsOf(3), drawsOf(3)];
    for (let count = 0; count < 1000; count++) drawn.next();
    passed.skip(1000);
    expect(passed.next()).toBe(drawn.next());
  });

  test("is even from 0 to 1, and its neighbours go apart", () => {
    const values = sample(11, (draws) => draws.next());
    expect(Math.abs(meanOf(values) - 0.5)).toBeLessThan(chance(Math.sqrt(1 / 12)));
    expect(Math.abs(spread(values) - Math.sqrt(1 / 12))).toBeLessThan(0.002);
    expect(Math.abs(correlationOf(values.slice(1), values.slice(0, -1)))).toBeLessThan(chance(1));
    // First numbers of seeds side by side are as good as any.
    const firsts = Array.from({ length: many }, (_, seed) => drawsOf(seed).next());
    expect(Math.abs(meanOf(firsts) - 0.5)).toBeLessThan(chance(Math.sqrt(1 / 12)));
    expect(Math.abs(correlationOf(firsts.slice(1), firsts.slice(0, -1)))).toBeLessThan(0.05);
  });
});

describe.each(laws)("deviations of the law %s", (law) => {
  test("have the mean 0 and its standard deviation, and end at ±1 unless normal", () => {
    const values = sample(21, (draws) => deviate(law, draws));
    expect(Math.abs(meanOf(values))).toBeLessThan(chance(deviationOf[law]));
    expect(Math.abs(spread(values) / deviationOf[law] - 1)).toBeLessThan(chance(1));
    if (law !== "normal") expect(values.every((value) => Math.abs(value) <= 1)).toBe(true);
    const within = values.filter((value) => Math.abs(value) <= 1).length / many;
    // A normal one lies within two standard deviations in 95.45 % (erf √2).
    expect(Math.abs(within - (law === "normal" ? 0.9545 : 1))).toBeLessThan(0.004);
  });

  test.each([-1, -0.4, 0, 0.3, 0.8, 1])(
    "of a pair go together as a correlation of %s says, each by the same law",
    (r) => {
      const pairs = sample(31, (draws) => deviatePair(law, r, draws));
      const [a, b] = [pairs.map((pair) => pair[0]), pairs.map((pair) => pair[1])];
      expect(Math.abs(correlationOf(a, b) - r)).toBeLessThan(chance(1.2));
      for (const half of [a, b]) {
        expect(Math.abs(meanOf(half))).toBeLessThan(chance(deviationOf[law]));
        expect(Math.abs(spread(half) / deviationOf[law] - 1)).toBeLessThan(chance(1.2));
        if (law !== "normal") expect(half.every((value) => Math.abs(value) <= 1)).toBe(true);
      }
    },
  );

  test("take as many random numbers as they say", () => {
    for (const isPair of [false, true]) {
      const [used, passed] = [drawsOf(5), drawsOf(5)];
      if (isPair) deviatePair(law, 0.5, used);
      else deviate(law, used);
      passed.skip(drawsFor(law, isPair));
      expect(used.next()).toBe(passed.next());
    }
  });

  test("weighed for half the ± have half the standard deviation, and their weights the mean 1", () => {
    const values = sample(41, (draws) => deviate(law, draws));
    const weights = values.map((value) => likelihoodOfHalf(law, value));
    expect(Math.abs(meanOf(weights) - 1)).toBeLessThan(chance(1));
    const square = meanOf(values.map((value, index) => value * value * (weights[index] as number)));
    expect(Math.abs(Math.sqrt(square) / (deviationOf[law] / 2) - 1)).toBeLessThan(0.02);
  });
});

test("the share of a normal law below a value is that of the tables", () => {
  // Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, table 26.1.
  expect(normalShare(0)).toBe(0.5);
  expect(normalShare(1)).toBeCloseTo(0.841344746068543, 14);
  expect(normalShare(2)).toBeCloseTo(0.977249868051821, 14);
  expect(normalShare(-2)).toBeCloseTo(1 - 0.977249868051821, 14);
  expect(normalShare(1.96)).toBeCloseTo(0.97500210485, 10);
  expect([normalShare(-9), normalShare(9)]).toEqual([0, 1]);
});
