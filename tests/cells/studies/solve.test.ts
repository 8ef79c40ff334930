import { describe, expect, test } from "vitest";
import type { StudyFields } from "./study-cases.ts";
import { outcome, refusal } from "./study-cases.ts";

/** Every x from one place to another at which a formula of x is so much. */
const solve = (
  formula: string,
  from: number,
  to: number,
  target = "0",
  more: Partial<Omit<StudyFields, "study">> = {},
) =>
  outcome(`given x = ${(from + to) / 2.1}\ny = ${formula}`, {
    study: "solve",
    inputs: [{ input: "x", range: [`${from}`, `${to}`] }],
    results: ["y"],
    target,
    ...more,
  });
const places = (formula: string, from: number, to: number, target = "0") =>
  solve(formula, from, to, target).solutions.map(({ at }) => at);

describe("solutions of textbooks", () => {
  test.each<[string, number, number, readonly number[]]>([
    // I. Newton, De analysi, 1669: the cubic that he solved; root to these figures by J. Wallis, 1685.
    ["x^3 - 2*x - 5", 2, 3, [2.0945514815423265]],
    // The number that is its own cosine (Dottie number).
    ["cos(x * 1 rad) - x", 0, 1, [0.7390851332151607]],
    ["x^2 - 2", -3, 3, [-Math.SQRT2, Math.SQRT2]],
    ["exp(x) - 10", 0, 5, [Math.LN10]],
    ["log(x)", 0.1, 7, [1]],
    // J. H. Wilkinson's polynomial of degree 5, its roots the first whole numbers.
    ["(x - 1)*(x - 2)*(x - 3)*(x - 4)*(x - 5)", 0.3, 5.7, [1, 2, 3, 4, 5]],
    ["sin(x * 1 rad)", 1, 20, [1, 2, 3, 4, 5, 6].map((n) => n * Math.PI)],
    // Kepler's equation for an eccentricity of 0.5 and a mean anomaly of 1 (root from memory).
    ["x - 0.5 * sin(x * 1 rad) - 1", 0, 3, [1.498701133517]],
  ])("%s from %s to %s is 0 at the places known", (formula, from, to, roots) => {
    expect(places(formula, from, to)).toEqual(roots.map((root) => expect.closeTo(root, 11)));
  });

  test("an ill-behaved one is found too: x⁹, flat at its root", () => {
    expect(places("(x - 0.123)^9", -1, 1)).toEqual([expect.closeTo(0.123, 3)]);
  });
});

describe("a solve", () => {
  test("finds two solutions closer to each other than the steps it takes", () => {
    expect(places("(x - 5.003)*(x - 5.004)", 0, 10)).toEqual([5.003, 5.004].map((root) => expect.closeTo(root, 9)));
    expect(places("(x - 4.9999)*(x - 5.0001)", 0, 10)).toEqual([4.9999, 5.0001].map((root) => expect.closeTo(root, 9)));
  });

  test("tells where the result only touches the target, wherever that lies", () => {
    for (const place of [5, 5.0003, 5.037, 5.05, 9.98]) {
      const { solutions } = solve(`(x - ${place})^2`, 0, 10);
      expect(solutions).toEqual([{ at: expect.closeTo(place, 5), kind: "touches" }]);
    }
    expect(solve("(x - 3.3)^2 + 0.0001", 0, 10).solutions).toEqual([]);
  });

  test("meets the target exactly at a step, or at an end of the range, once", () => {
    expect(places("x - 5", 0, 10)).toEqual([5]);
    expect(places("x", 0, 10)).toEqual([0]);
    expect(places("x - 10", 0, 10)).toEqual([expect.closeTo(10, 12)]);
    expect(places("x * (x - 10)", 0, 10)).toEqual([0, 10]);
  });

  test("says so where there is none, with the place that comes nearest", () => {
    const found = solve("x^2 + 1", -1, 2);
    expect(found).toMatchObject({ solutions: [], jumps: [] });
    expect(found.nearest?.value).toBeCloseTo(1, 3);
    expect(Math.abs(found.nearest?.at ?? 9)).toBeLessThan(0.02);
  });

  test("takes no pole and no jump for a solution, and tells where it is", () => {
    expect(solve("1 / (x - 0.3333)", 0, 1)).toMatchObject({ solutions: [], jumps: [expect.closeTo(0.3333, 9)] });
    expect(solve("if x < 0.4 then -1 else 2", 0, 1)).toMatchObject({ solutions: [], jumps: [expect.closeTo(0.4, 9)] });
  });

  test("keeps what cannot be computed as a gap with its reason, and finds what lies beside it", () => {
    const found = solve("sqrt(x) - 0.5", -1, 1);
    expect(found.solutions).toEqual([{ at: expect.closeTo(0.25, 11), kind: "crosses" }]);
    expect(found.gaps).toHaveLength(50);
    expect(found.gaps[0]).toEqual({ at: -1, reason: expect.stringMatching(/^y: /) });
    expect(found.curve.y[0]).toBeNull();
  });

  test("reaches a target with a unit, of a result over a real wing", () => {
    const text = `given tip [deg] from 0 deg to 25 deg = 11 deg
table panels | length mm | root_chord mm | tip_chord mm | sweep mm | break deg | washout deg | thickness mm
| 110 | 70 | 66 | 0 | 5 | 0 | 3
| 90 | 66 | 44 | 8 | tip | 1 | 2.5
eda [deg] = equivalent_dihedral(wing(panels))`;
    const found = outcome(text, { study: "solve", inputs: [{ input: "tip" }], results: ["eda"], target: "10 deg" });
    expect(found.solutions).toHaveLength(1);
    const at = found.solutions[0]?.at ?? 0;
    const there = outcome(text, {
      study: "sweep",
      inputs: [{ input: "tip", range: [`${at} rad`, "25 deg"], points: 2 }],
      results: ["eda"],
    });
    expect(there.curves[0]?.results[0]?.[0]).toBeCloseTo((10 * Math.PI) / 180, 10);
  });

  test.each<[Partial<Omit<StudyFields, "target">> & { readonly target?: string | null }, string]>([
    [{ target: null }, "Say what the result is to reach, in its unit, such as 12 deg."],
    [{ target: "3 mm" }, "The target: The unit 1 is for a number, but this is a length."],
    [{ target: "b" }, "The target: A given stands on its own and cannot use b."],
    [{ results: ["x", "x"] }, "A solve tells of one result; here are 2."],
    [{ inputs: [] }, "A solve takes one input; here is none."],
  ])("with %j says what keeps it from being run", (patch, message) => {
    const inputs = [{ input: "x", range: ["0", "1"] }];
    const { target, ...rest } = { target: "1", ...patch };
    const fields: StudyFields = { study: "solve", inputs, results: ["x"], ...rest, ...(target && { target }) };
    expect(refusal("given x = 1", fields)).toContain(message);
  });
});
