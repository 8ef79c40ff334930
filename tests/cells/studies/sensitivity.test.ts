import { derivative } from "mathjs";
import { describe, expect, test } from "vitest";
import { bandOf } from "../../../src/cells/studies/no-difference.ts";
import { outcome, refusal } from "./study-cases.ts";

const sensitivity = (
  text: string,
  results: readonly string[],
  inputs: readonly { input: string; plus_minus?: string }[] = [],
) => outcome(text, { study: "sensitivity", inputs, results });
const effect = (found: ReturnType<typeof sensitivity>, target: string, result = 0) => {
  const one = found.results[result]?.ranked.find((each) => each.target === target);
  if (!one) throw new Error(`got no effect of ${target}, expected one`);
  return one;
};

describe("derivatives", () => {
  test.each([
    ["0.5 * a * b^2 * c * d", { a: 1.2, b: 4.1, c: 0.0308, d: 0.6 }],
    ["a * sqrt(b) / (c + d)", { a: -3, b: 7, c: 0.2, d: 11 }],
    ["exp(-a) * b^3 - log(c) / d", { a: 0.4, b: 1.7, c: 0.03, d: -2 }],
    ["a^2.5 + b^-1 + abs(c) * d", { a: 5, b: 0.25, c: -8, d: 1e-4 }],
    ["(a - b) * (c - d) + a / (b * c)", { a: 100, b: 0.7, c: 33, d: 2 }],
  ])("of %s are those of a general-purpose program that derives the formula", (formula, values) => {
    const givens = Object.entries(values).map(([name, value]) => `given ${name} = ${value}`);
    const found = sensitivity([...givens, `y = ${formula}`].join("\n"), ["y"]);
    for (const [name, value] of Object.entries(values)) {
      const theirs = derivative(formula, name).evaluate(values);
      const ours = effect(found, name);
      // What is left over is of fourth order in a step of 1 %.
      expect(Math.abs((ours.derivative ?? 0) - theirs)).toBeLessThanOrEqual(1e-6 * Math.abs(theirs) + 1e-9);
      expect(ours.elasticity).toBeCloseTo((theirs * value) / (found.results[0]?.nominal ?? 0), 5);
    }
  });

  test("are those of the closed form of angles, in SI", () => {
    const found = sensitivity(
      "given tip [deg] = 11 deg\ngiven r [mm] = 80 mm\nheight [mm] = r * sin(tip)",
      ["height"],
      [{ input: "tip", plus_minus: "2 deg" }, { input: "r" }],
    );
    const angle = (11 * Math.PI) / 180;
    expect(effect(found, "tip").derivative).toBeCloseTo(0.08 * Math.cos(angle), 8);
    expect(effect(found, "r").derivative).toBeCloseTo(Math.sin(angle), 10);
    expect(found.inputs).toMatchObject([
      { dimension: "rad", unit: "deg", amount: expect.closeTo((2 * Math.PI) / 180, 12), isAssumed: false },
      { dimension: "m", unit: "mm", amount: expect.closeTo(0.0008, 12), isAssumed: true },
    ]);
  });

  test("of the equivalent dihedral by the panels' own angles are the weights of strip theory", () => {
    const text = `given inner [deg] = 5 deg
given outer [deg] = 14 deg
table panels | length mm | root_chord mm | tip_chord mm | sweep mm | break deg | washout deg | thickness mm
| 100 | 60 | 60 | 0 | inner | 0 | 3
| 100 | 60 | 60 | 0 | outer - inner | 0 | 3
eda [deg] = equivalent_dihedral(wing(panels))`;
    const found = sensitivity(text, ["eda"], [{ input: "inner" }, { input: "outer" }]);
    // Γ weighs by ∫c·y dy over y = length·cos Γ: with a constant chord, A = ½·L²·cos²Γ₁ for the inner panel and
    // B = L²·(cos Γ₁ + ½·cos Γ₂)·cos Γ₂ for the outer one; eda = (A·Γ₁ + B·Γ₂) / (A + B).
    const [g1, g2] = [(5 * Math.PI) / 180, (14 * Math.PI) / 180];
    const eda = (x: number, y: number): number => {
      const [a, b] = [0.5 * Math.cos(x) ** 2, (Math.cos(x) + 0.5 * Math.cos(y)) * Math.cos(y)];
      return (a * x + b * y) / (a + b);
    };
    expect(found.results[0]?.nominal).toBeCloseTo(eda(g1, g2), 10);
    const a = 0.5 * Math.cos(g1) ** 2;
    const b = (Math.cos(g1) + 0.5 * Math.cos(g2)) * Math.cos(g2);
    const [a1, b1] = [-Math.cos(g1) * Math.sin(g1), -Math.sin(g1) * Math.cos(g2)];
    const b2 = -Math.sin(g2) * (Math.cos(g1) + Math.cos(g2));
    const by1 = (a1 * g1 + a + b1 * g2 - eda(g1, g2) * (a1 + b1)) / (a + b);
    const by2 = (b2 * g2 + b - eda(g1, g2) * b2) / (a + b);
    expect(effect(found, "inner").derivative).toBeCloseTo(by1, 8);
    expect(effect(found, "outer").derivative).toBeCloseTo(by2, 8);
  });
});

describe("a sensitivity", () => {
  const text = `given a [mm] from 0 mm to 9 mm = 2 mm
given b = 3
given idle = 1
given zero = 0
given many = [1, 2]
table t | x mm | word text
| 4 | soft
area [mm^2] = a * b * t.x[1]
extra = sqrt(zero) + b + max(many)
check small = area < 24.1 mm^2`;

  test("takes every given that is a number and that a result depends on, where none is named", () => {
    expect(sensitivity(text, ["area"]).inputs.map(({ target }) => target)).toEqual(["a", "b"]);
    expect(sensitivity(text, ["area", "extra"]).inputs.map(({ target }) => target)).toEqual(["a", "b", "zero"]);
  });

  test("ranks by how far a result moves, gaps last", () => {
    const found = sensitivity(
      text,
      ["area", "extra"],
      [{ input: "zero" }, { input: "a" }, { input: "b", plus_minus: "2" }, { input: "t[1].x", plus_minus: "1" }],
    );
    expect(found.results[0]?.ranked.map(({ target }) => target)).toEqual(["b", "t[1].x", "a", "zero"]);
    expect(effect(found, "b")).toMatchObject({
      less: expect.closeTo(8e-6, 12),
      more: expect.closeTo(40e-6, 12),
      move: expect.closeTo(16e-6, 12),
    });
    expect(effect(found, "zero").move).toBeNull();
    expect(found.inputs[0]?.amount).toBeNull();
    expect(found.gaps).toEqual([{ target: "zero", reason: "1% of zero is nothing, since it is 0. Give it its ±." }]);
  });

  test("takes what moves a result only by rounding for no effect", () => {
    const found = sensitivity("given a = 0.3\ngiven b = 0.1\nc = a * b / b / 3", ["c"]);
    expect(effect(found, "b")).toMatchObject({ move: 0, derivative: 0, elasticity: 0 });
  });

  test("keeps a side that cannot be computed as a gap with its reason", () => {
    const found = sensitivity(text, ["extra"], [{ input: "zero", plus_minus: "0.1" }]);
    expect(effect(found, "zero")).toMatchObject({ less: null, derivative: null, move: null });
    expect(found.gaps[0]).toMatchObject({ target: "zero", reason: expect.stringMatching(/^extra: /) });
  });

  test("tells which checks fall, and which way", () => {
    const { fallen } = sensitivity(text, ["area"], [{ input: "a" }, { input: "b", plus_minus: "0.0001" }]);
    expect(fallen).toEqual([{ check: "small", target: "a", way: "more" }]);
  });

  test("with its ± gives the band of the result: the uncertainty of a sum and of a product (JCGM 100:2008, 5.1.2)", () => {
    const found = sensitivity(
      "given a [mm] = 20 mm\ngiven b [mm] = 5 mm\ntotal = a + b\nproduct = a * b",
      ["total", "product"],
      [
        { input: "a", plus_minus: "0.3 mm" },
        { input: "b", plus_minus: "0.4 mm" },
      ],
    );
    const band = (result: number) =>
      bandOf(
        ["a", "b"].map((target, index) => ({
          derivative: effect(found, target, result).derivative,
          plusMinus: found.inputs[index]?.amount ?? null,
          law: "normal" as const,
        })),
      );
    expect(band(0)).toBeCloseTo(0.5e-3, 10);
    // A product's relative uncertainties add in squares (5.1.6, equation 12).
    expect((band(1) ?? 0) / 100e-6).toBeCloseTo(Math.hypot(0.3 / 20, 0.4 / 5), 8);
  });

  test("without any input, or of a given that is no number, is refused", () => {
    expect(refusal("a = 3", { study: "sensitivity", inputs: [], results: ["a"] })).toContain(
      "A sensitivity takes at least one input; here is none.",
    );
    expect(refusal(text, { study: "sensitivity", inputs: [{ input: "many" }], results: ["area"] })).toContain(
      "many is a list",
    );
    expect(
      refusal("given a = 1 +\nb = 2", { study: "sensitivity", inputs: [{ input: "a" }], results: ["b"] }),
    ).toContain("a has an error, or waits for a. Mend that first.");
  });
});
