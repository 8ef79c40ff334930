import { describe, expect, test } from "vitest";
import type { StudyFields } from "./study-cases.ts";
import { outcome, refusal } from "./study-cases.ts";

const range = (input: string, from: number | string, to: number | string) => ({ input, range: [`${from}`, `${to}`] });
const best = (
  text: string,
  inputs: StudyFields["inputs"],
  goals: readonly ("least" | "most")[],
  results = ["y"],
  more = {},
) => outcome(text, { study: "best", inputs, results, goals, ...more });
const found = (outcome: ReturnType<typeof best>) => outcome.designs[0]?.inputs ?? [];

test("a best tells the present design, and how each search came to its own best, never worse as it went on", () => {
  const text = "given a = 4\ny = (a - 1.7)^2 + 3\ncheck small = a < 3";
  const { present, courses, candidates, designs } = best(text, [range("a", -5, 9)], ["least"]);
  expect(present).toEqual({
    inputs: [4],
    results: [expect.closeTo(2.3 ** 2 + 3, 12)],
    fails: ["small"],
    violation: expect.any(Number),
  });
  expect(courses).toHaveLength(3);
  for (const course of courses) {
    const values = course.filter((value) => value !== null);
    expect(values.length).toBeGreaterThan(10);
    expect(values.every((value, index) => index === 0 || value <= (values[index - 1] as number))).toBe(true);
    expect(values.at(-1)).toBeCloseTo(designs[0]?.results[0] as number, 9);
  }
  expect(candidates).toBe(16);
  const two = best("given a = 4\ny = a\nz = -a", [range("a", 0, 1)], ["least", "least"], ["y", "z"]);
  expect(two.courses).toEqual([]);
});

describe("minima of textbooks", () => {
  test("a parabola over one input, and a cubic between two ends", () => {
    const parabola = best("given a = 0\ny = (a - 1.7)^2 + 3", [range("a", -5, 9)], ["least"]);
    expect(found(parabola)).toEqual([expect.closeTo(1.7, 6)]);
    expect(parabola).toMatchObject({ isFound: true, atEnds: [], searches: { done: 3, agree: 3 } });
    const most = best("given a = 0\ny = a^3 - 3 * a", [range("a", -3, 1.5)], ["most"]);
    expect(found(most)).toEqual([expect.closeTo(-1, 5)]);
  });

  test("H. H. Rosenbrock's curved valley (The Computer Journal 3 (1960) 175): 0 at (1, 1)", () => {
    const valley = best(
      "given a = 0\ngiven b = 0\ny = 100 * (b - a^2)^2 + (1 - a)^2",
      [range("a", -2, 2), range("b", -1, 3)],
      ["least"],
    );
    expect(found(valley)).toEqual([expect.closeTo(1, 4), expect.closeTo(1, 4)]);
  });

  test("D. M. Himmelblau's function (Applied Nonlinear Programming, 1972): one of four places where it is 0", () => {
    const four = best(
      "given a = 0\ngiven b = 0\ny = (a^2 + b - 11)^2 + (a + b^2 - 7)^2",
      [range("a", -5, 5), range("b", -5, 5)],
      ["least"],
    );
    const places = [
      [3, 2],
      [-2.805118, 3.131312],
      [-3.77931, -3.283186],
      [3.584428, -1.848126],
    ];
    const [a = 0, b = 0] = found(four);
    expect(Math.min(...places.map(([x = 0, y = 0]) => Math.hypot(a - x, b - y)))).toBeLessThan(1e-4);
  });

  test("the sphere over four inputs, at its middle", () => {
    const text =
      "given a = 1\ngiven b = 1\ngiven c = 1\ngiven d = 1\ny = (a - 1)^2 + (b + 2)^2 + 3 * (c - 0.5)^2 + (d - 4)^2 / 2";
    const four = best(
      text,
      ["a", "b", "c", "d"].map((input) => range(input, -5, 7)),
      ["least"],
    );
    expect(found(four)).toEqual([1, -2, 0.5, 4].map((each) => expect.closeTo(each, 4)));
  }, 120_000);
});

describe("with checks to hold", () => {
  test("the largest rectangle of a given border is a square, and the check stands at its limit", () => {
    const text = "given a [mm] = 10 mm\ngiven b [mm] = 10 mm\ny [mm^2] = a * b\ncheck border = 2 * (a + b) <= 200 mm";
    const square = best(text, [range("a", "1 mm", "99 mm"), range("b", "1 mm", "99 mm")], ["most"]);
    expect(found(square)).toEqual([0.05, 0.05].map((each) => expect.closeTo(each, 5)));
    expect(square.designs[0]).toMatchObject({ fails: [], violation: 0 });
  });

  test("W. Hock and K. Schittkowski's problem 71 in the plane of its equality (Lecture Notes in Economics 187, 1981): 17.014", () => {
    // Four inputs from 1 to 5, x1·x2·x3·x4 ≥ 25 and a sum of squares of 40, which gives x2 from the others.
    const text = `given a = 1
given c = 4
given d = 1
b = sqrt(40 - a^2 - c^2 - d^2)
y = a * d * (a + b + c) + c
check product = a * b * c * d >= 25
check low = b >= 1
check high = b <= 5`;
    const plane = best(text, [range("a", 1, 5), range("c", 1, 5), range("d", 1, 5)], ["least"]);
    expect(plane.designs[0]?.results[0]).toBeCloseTo(17.0140173, 4);
    expect(found(plane)).toEqual([1, 3.8211499, 1.3794083].map((each) => expect.closeTo(each, 2)));
  }, 120_000);

  test("says so where no design holds them, with the one that comes nearest and what it fails", () => {
    const none = best(
      "given a = 1\ny = a^2\ncheck far = a > 12\ncheck small = a < 100",
      [range("a", 0, 10)],
      ["least"],
    );
    expect(none).toMatchObject({ isFound: false, atEnds: [] });
    expect(none.designs).toHaveLength(1);
    expect(none.designs[0]?.fails).toEqual(["far"]);
    expect(found(none)).toEqual([expect.closeTo(10, 6)]);
  });

  test("counts only the checks that are named", () => {
    const text = "given a = 1\ny = a^2\ncheck far = a > 4\ncheck near = a < 2";
    expect(best(text, [range("a", 0, 10)], ["least"], ["y"], { checks: ["far"] }).designs[0]?.inputs).toEqual([
      expect.closeTo(4, 5),
    ]);
  });

  test("says which input stands at an end of its range", () => {
    expect(best("given a = 1\ny = -a", [range("a", 0, 10)], ["least"]).atEnds).toEqual([{ target: "a", end: "to" }]);
  });

  test("goes around what cannot be computed", () => {
    expect(found(best("given a = 3\ny = sqrt(a - 2) - a / 4", [range("a", 0, 10)], ["most"]))).toEqual([
      expect.closeTo(6, 4),
    ]);
  });
});

describe("the trade-off front of two results", () => {
  test("J. D. Schaffer's two parabolas (1985): x² and (x − 2)² trade from 0 to 2", () => {
    const { designs, isFound } = best(
      "given a = 5\nu = a^2\nv = (a - 2)^2",
      [range("a", -10, 10)],
      ["least", "least"],
      ["u", "v"],
    );
    expect(isFound).toBe(true);
    expect(designs.length).toBeGreaterThan(40);
    for (const { inputs, results } of designs) {
      const [u = 0, v = 0] = results.map(Number);
      expect(Math.sqrt(u) + Math.sqrt(v)).toBeCloseTo(2, 2);
      expect(inputs[0]).toBeGreaterThan(-0.01);
      expect(inputs[0]).toBeLessThan(2.01);
    }
    const [first, last] = [designs[0]?.inputs[0] ?? 9, designs.at(-1)?.inputs[0] ?? 9];
    expect(Math.abs(first)).toBeLessThan(0.1);
    expect(Math.abs(last - 2)).toBeLessThan(0.1);
  });

  test("holds no design that another one beats, and stands in order", () => {
    const text = "given a = 1\ngiven b = 1\ncost = a^2 + b\ngain = a * b\ncheck fair = a + b < 8";
    const { designs } = best(text, [range("a", 0, 6), range("b", 0, 6)], ["least", "most"], ["cost", "gain"]);
    designs.forEach(({ results: [cost = 0, gain = 0], fails }, index) => {
      expect(fails).toEqual([]);
      const [before] = designs.slice(0, index).reverse();
      if (before) expect(Number(cost)).toBeGreaterThan(Number(before.results[0]));
      if (before) expect(Number(gain)).toBeGreaterThan(Number(before.results[1]));
    });
  });
});

describe("a best", () => {
  const text = "given a = 1\ngiven b = 1\ny = a + b";

  test("comes out the same with the same seed", () => {
    const run = (seed: number) =>
      best("given a = 1\ny = sin(a * 1 rad) * a", [range("a", 0, 9)], ["most"], ["y"], { seed });
    expect(run(4)).toEqual(run(4));
    expect(run(4).designs[0]?.results[0]).toBeCloseTo(Number(run(5).designs[0]?.results[0]), 6);
  });

  test.each<[Partial<StudyFields>, string]>([
    [{ inputs: [] }, "A best takes one to four inputs; here is none."],
    [{ inputs: [1, 2, 3, 4, 5].map(() => range("a", 0, 1)) }, "A best takes one to four inputs; here are 5."],
    [{ inputs: [range("a", 0, 1), range("a", 0, 1)] }, "a stands twice."],
    [{ goals: [] }, "Say of each result whether it is to be least or most: there is one, and for 0 it is said."],
    [
      { results: ["y", "a", "b"], goals: ["least", "least", "most"] },
      "A best tells of one or two results; here are 3.",
    ],
  ])("with %j says what keeps it from being run", (patch, message) => {
    const fields: StudyFields = { study: "best", inputs: [range("a", 0, 1)], results: ["y"], goals: ["least"] };
    expect(refusal(text, { ...fields, ...patch })).toContain(message);
  });
});
