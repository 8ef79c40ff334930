import { describe, expect, test } from "vitest";
import type { StudyInput } from "../../../src/cells/cell.ts";
import type { Sample } from "../../../src/cells/studies/statistics.ts";
import { outcome, refusal } from "./study-cases.ts";

const builds = 40_000;
const tolerance = (text: string, inputs: readonly StudyInput[], results: readonly string[], more = {}) =>
  outcome(text, { study: "tolerance", inputs, results, builds, seed: 2, ...more });
const sampleIn = (found: ReturnType<typeof tolerance>, index = 0): Sample => {
  const sample = found.results[index]?.sample;
  if (!sample) throw new Error("got no sample, expected one");
  return sample;
};
/** So many standard errors are allowed; a seed is fixed, so it either holds for good or never. */
const errors = 4;
const meanNear = ({ mean, deviation, count }: Sample, expected: number): void => {
  expect(Math.abs(mean - expected)).toBeLessThan((errors * deviation) / Math.sqrt(count));
};
const deviationNear = ({ deviation, count }: Sample, expected: number, kurtosis = 3): void => {
  expect(Math.abs(deviation / expected - 1)).toBeLessThan(errors * Math.sqrt((kurtosis - 1) / (4 * count)));
};

describe("a sum of four inputs (JCGM 101:2008, 9.2; values of tables 2 and 3 as other programs' tests transcribe them)", () => {
  const sum = "given a = 0\ngiven b = 0\ngiven c = 0\ngiven d = 0\ntotal = a + b + c + d";
  const inputs = (law: StudyInput["law"], plus_minus: string, last = plus_minus): StudyInput[] =>
    ["a", "b", "c", "d"].map((input) => ({ input, law, plus_minus: input === "d" ? last : plus_minus }) as StudyInput);

  test("of normal laws: deviation 2.00, 95 % within ±3.92 (9.2.2)", () => {
    const sample = sampleIn(tolerance(sum, inputs("normal", "2"), ["total"]));
    meanNear(sample, 0);
    deviationNear(sample, 2);
    expect(sample.percentiles["2.5"]).toBeCloseTo(-3.92, 0.9);
    expect(Math.abs((sample.percentiles["97.5"] ?? 0) - 3.92)).toBeLessThan(0.08);
  });

  test("of uniform laws: deviation 2.00, 95 % within ±3.88, exactly 2√3·(2 − (3/5)^¼) (9.2.3)", () => {
    const exact = 2 * Math.sqrt(3) * (2 - (3 / 5) ** 0.25);
    expect(exact).toBeCloseTo(3.88, 2);
    const sample = sampleIn(tolerance(sum, inputs("uniform", "1.7320508075688772"), ["total"]));
    meanNear(sample, 0);
    deviationNear(sample, 2);
    for (const share of ["2.5", "97.5"])
      expect(Math.abs(Math.abs(sample.percentiles[share] ?? 0) - exact)).toBeLessThan(0.07);
  });

  test("of uniform laws, one ten times as wide: deviation 10.1, 95 % within ±17.0 and not ±19.8 (9.2.4, from memory)", () => {
    const halves = [1, 1, 1, 10].map((deviation) => deviation * Math.sqrt(3));
    // Where the distribution of the sum, which is known (see below), reaches 97.5 %.
    const exact = whereShareIs(0.975, halves);
    expect(exact).toBeCloseTo(17.0, 1);
    const sample = sampleIn(tolerance(sum, inputs("uniform", "1.7320508075688772", "17.320508075688775"), ["total"]));
    deviationNear(sample, Math.sqrt(103));
    expect(Math.abs((sample.percentiles["97.5"] ?? 0) - exact)).toBeLessThan(0.12);
    expect(Math.abs((sample.percentiles["2.5"] ?? 0) + exact)).toBeLessThan(0.12);
  });

  test("has the influence of each input on its spread", () => {
    const [{ influences = [] } = {}] = tolerance(sum, inputs("uniform", "1", "3"), ["total"]).results;
    expect(influences[0]?.target).toBe("d");
    // Variances 1 : 1 : 1 : 9.
    expect(influences[0]?.share).toBeCloseTo(9 / 12, 1.5);
    expect(influences.slice(1).map(({ share }) => share)).toEqual([1, 1, 1].map(() => expect.closeTo(1 / 12, 1.5)));
  });
});

describe("products and curves", () => {
  test("of two independent normal inputs: mean µν, variance µ²τ² + ν²σ² + σ²τ² (L. A. Goodman, JASA 55 (1960) 708)", () => {
    const inputs: StudyInput[] = [
      { input: "a", law: "normal", plus_minus: "1" },
      { input: "b", law: "normal", plus_minus: "2" },
    ];
    const sample = sampleIn(tolerance("given a = 3\ngiven b = 4\nproduct = a * b", inputs, ["product"]));
    meanNear(sample, 12);
    deviationNear(sample, Math.sqrt(9 * 1 + 16 * 0.25 + 0.25 * 1), 4);
  });

  test("a logarithm of a uniform input from 0.1 to 1.1: mean −0.665, deviation 0.606 (M. G. Cox and P. M. Harris, NPL report DEM-ES-011, 9.2)", () => {
    const sample = sampleIn(tolerance("given x = 0.6\ny = log(x)", [{ input: "x", plus_minus: "0.5" }], ["y"]));
    meanNear(sample, -0.665);
    deviationNear(sample, 0.606, 5);
    // The quantile of a rising curve is the curve of the quantile.
    expect(sample.percentiles["2.5"]).toBeCloseTo(Math.log(0.1 + 0.025), 1);
    expect(sample.percentiles["97.5"]).toBeCloseTo(Math.log(1.1 - 0.025), 2);
  });

  test("the radiation constant of Stefan and Boltzmann: 5.67037e-8 with a deviation of 2.05e-13 (NIST Uncertainty Machine manual, example 10)", () => {
    const text = `given planck = 6.62606957e-34
given gas = 8.3144621
given rydberg = 10973731.568539
given electron = 5.4857990946e-4
given fine = 7.2973525698e-3
sigma = 32 * pi^5 * planck * gas^4 * rydberg^4 / (15 * electron^4 * 0.001^4 * 299792458^6 * fine^8)`;
    const inputs: StudyInput[] = [
      { input: "planck", law: "normal", plus_minus: "5.8e-41" },
      { input: "gas", law: "normal", plus_minus: "1.5e-5" },
      { input: "rydberg", law: "normal", plus_minus: "1.1e-4" },
      { input: "electron", law: "normal", plus_minus: "4.4e-13" },
      { input: "fine", law: "normal", plus_minus: "4.8e-12" },
    ];
    const sample = sampleIn(tolerance(text, inputs, ["sigma"]));
    expect(Math.abs(sample.mean - 5.67037e-8)).toBeLessThan(0.5e-13);
    expect(Math.abs(sample.deviation - 2.05e-13)).toBeLessThan(0.05e-13);
  });

  test("the halves of a wing, off together or apart: their sum and their difference spread as their correlation says", () => {
    const text =
      "given left [mm] = 90 mm\ngiven right [mm] = 90 mm\nspan [mm] = left + right\nuneven [mm] = left - right";
    for (const [law, deviation] of [
      ["uniform", 1 / Math.sqrt(3)],
      ["triangular", 1 / Math.sqrt(6)],
      ["normal", 0.5],
    ] as const) {
      for (const correlation of [-0.5, 0, 0.6, 1]) {
        const inputs: StudyInput[] = [{ input: "left", pair: "right", plus_minus: "1 mm", law, correlation }];
        const found = tolerance(text, inputs, ["span", "uneven"], { builds: 20_000 });
        deviationNear(sampleIn(found, 0), 1e-3 * deviation * Math.sqrt(2 + 2 * correlation), 3.5);
        if (correlation < 1) deviationNear(sampleIn(found, 1), 1e-3 * deviation * Math.sqrt(2 - 2 * correlation), 5);
        else expect(sampleIn(found, 1).deviation).toBeLessThan(1e-12);
      }
    }
  });
});

describe("builds that pass", () => {
  const text = `given a [mm] = 10 mm
given b [mm] = 20 mm
length [mm] = a + b
check short = length < 31 mm
check wide = a > 8 mm`;
  const inputs: StudyInput[] = [
    { input: "a", law: "normal", plus_minus: "1 mm" },
    { input: "b", law: "normal", plus_minus: "2 mm" },
  ];
  const found = tolerance(text, inputs, ["length"]);
  /** The share of a normal law below so many deviations: 0.8146 at 0.8944 (Abramowitz and Stegun, 1964, table 26.1). */
  const expected = 0.8144;

  test("are the share that the normal law says, within the interval that is told", () => {
    // Length is off with a deviation of √(0.5² + 1²) = 1.118 mm; its limit stands 1 mm off; wide fails only in 3 of 100 000.
    expect(found.passing?.between[0]).toBeLessThan(expected);
    expect(found.passing?.between[1]).toBeGreaterThan(expected);
    const [short] = found.checks;
    expect((short?.held ?? 0) + (short?.failed ?? 0) + (short?.unknown ?? 0)).toBe(builds);
  });

  test("would be more if the right input were built more exactly: as many as when it is", () => {
    expect(found.tighten[0]).toMatchObject({ target: "b", isSure: true });
    for (const { target, passing } of found.tighten) {
      const half = inputs.map((each) => ({
        ...each,
        ...(each.input === target && { plus_minus: target === "a" ? "0.5 mm" : "1 mm" }),
      }));
      const built = tolerance(text, half, ["length"]).passing?.share ?? 0;
      expect(Math.abs(passing - built)).toBeLessThan(0.012);
    }
  });

  test("are not told of where the notebook has no check", () => {
    const bare = tolerance("given a = 1", [{ input: "a", plus_minus: "1%" }], ["a"], { builds: 10 });
    expect([bare.passing, bare.tighten]).toEqual([null, []]);
  });

  test("that cannot be computed count as not passing, each reason once", () => {
    const failing = tolerance(
      "given a = 0\nroot = sqrt(a)\ncheck some = root < 2",
      [{ input: "a", plus_minus: "1" }],
      ["root"],
      { builds: 1000 },
    );
    const [gap] = failing.gaps;
    expect(failing.gaps).toHaveLength(2);
    expect(gap?.builds).toBeGreaterThan(400);
    expect(failing.results[0]?.sample?.count).toBe(1000 - (gap?.builds ?? 0));
    expect(failing.checks[0]?.unknown).toBe(gap?.builds);
    expect(failing.passing?.share).toBe(1 - (gap?.builds ?? 0) / 1000);
  });
});

describe("a tolerance", () => {
  const text = "given a [mm] = 10 mm\ngiven b = 2\ntable t | x mm\n| 3\nc [mm] = (a + sum(t.x)) * b";

  test("comes out the same with the same seed, and else not", () => {
    const run = (seed: number) => tolerance(text, [{ input: "a", plus_minus: "1 mm" }], ["c"], { builds: 50, seed });
    expect(run(9)).toEqual(run(9));
    expect(run(9).results).not.toEqual(run(10).results);
  });

  test("takes the ± of the givens where none is named, and builds 2000", () => {
    const fields = { study: "tolerance", inputs: [], results: ["a"] } as const;
    expect(refusal(text, fields)).toContain("No input says how far it may be off.");
    expect(tolerance(text, [{ input: "a", plus_minus: "1 mm" }], ["c"], { builds: undefined }).builds).toBe(2000);
  });

  test("takes a ± as a share of the value, and a bare number in the unit of an entry", () => {
    const inputs = [
      { input: "a", plus_minus: "5%" },
      { input: "t[1].x", plus_minus: "0.1" },
    ];
    const found = tolerance(text, inputs, ["c"], { builds: 10 });
    expect(found.inputs.map(({ plusMinus }) => plusMinus)).toEqual([
      expect.closeTo(0.0005, 12),
      expect.closeTo(0.0001, 12),
    ]);
  });

  test.each<[readonly StudyInput[], string]>([
    [[{ input: "a" }], "a does not say how far it may be off. Give it its ±."],
    [[{ input: "a", plus_minus: "1" }], "Input a: The ±: The unit mm is for a length, but this is a number."],
    [[{ input: "a", plus_minus: "0 mm" }], "Input a: The ±: It must be more than zero."],
    [
      [{ input: "a", plus_minus: "1 mm", correlation: 0.5 }],
      "a says how much the halves go together, but not which is the other half.",
    ],
    [
      [
        { input: "a", plus_minus: "1 mm" },
        { input: "a", plus_minus: "2 mm" },
      ],
      "a stands twice.",
    ],
    [[{ input: "a", plus_minus: "1 mm", pair: "a" }], "a stands twice."],
    [[{ input: "a", plus_minus: "1 mm", pair: "c" }], "Input c: c is computed."],
  ])("of %j says what keeps it from being run", (inputs, message) => {
    expect(refusal(text, { study: "tolerance", inputs, results: ["c"] })).toContain(message);
  });
});

/**
 * The share of a sum of uniform inputs, each within ± its half width, that lies below a value:
 * Σ over all signs of (product of signs)·(x + Σ sign·half)₊ⁿ / (n!·Π 2·half) (convolution of boxes, derived).
 */
function shareBelow(x: number, halves: readonly number[]): number {
  let sum = 0;
  for (let signs = 0; signs < 2 ** halves.length; signs++) {
    const sign = (index: number): number => (signs & (1 << index) ? -1 : 1);
    const shift = halves.reduce((total, half, index) => total + sign(index) * half, x);
    const product = halves.reduce((total, _, index) => total * sign(index), 1);
    if (shift > 0) sum += product * shift ** halves.length;
  }
  return sum / halves.reduce((total, half, index) => total * 2 * half * (index + 1), 1);
}

function whereShareIs(share: number, halves: readonly number[]): number {
  let [from, to] = [0, halves.reduce((sum, half) => sum + half, 0)];
  for (let count = 0; count < 60; count++) {
    const middle = (from + to) / 2;
    if (shareBelow(middle, halves) < share) from = middle;
    else to = middle;
  }
  return from;
}
