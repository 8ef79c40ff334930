import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compile } from "../../src/cells/compile.ts";
import { runPlan } from "../../src/cells/plan.ts";
import type { Result } from "../../src/cells/value.ts";
import { functions } from "../../src/library/index.ts";
import { unitOf } from "../../src/library/units.ts";

/** Evaluates a formula that stands on its own. */
function resultOf(formula: string): Result {
  const cell = { id: "x", kind: "derived", name: "x", formula } as const;
  return runPlan(compile([cell], functions)).get("x") as Result;
}

const units = ["mm", "in", "deg", "rad", "kg", "s", "N", "m/s", "kg/m^3", "1", "%", "K", "m rad", "Pa"] as const;
const unit = fc.constantFrom(...units);
const size = fc.integer({ min: 1, max: 99_999 }).map((each) => each / 100);
const write = (value: number, of: string): string => (of === "1" ? `${value}` : `${value} ${of}`);
const quantity = fc.tuple(size, unit).map(([value, of]) => write(value, of));
const alike = fc
  .tuple(unit, size, size, size)
  .map(([of, a, b, c]) => [write(a, of), write(b, of), write(c, of)] as const);

type Words = readonly [a: string, b: string, c: string];

/** Holds a comparison, written with the words of the tuple put in, to be true. */
function holds(words: fc.Arbitrary<Words>, comparison: (...words: Words) => string): void {
  const property = fc.property(words, (each) => {
    const formula = comparison(...each);
    expect(resultOf(formula), formula).toMatchObject({ ok: true, value: true });
  });
  fc.assert(property, { seed: 11, numRuns: 100 });
}

describe("quantities of any unit", () => {
  const any = fc.tuple(quantity, quantity, quantity);

  test("multiply in any order and any grouping", () => {
    holds(any, (a, b) => `${a} * (${b}) = ${b} * (${a})`);
    holds(any, (a, b, c) => `(${a} * (${b})) * (${c}) = ${a} * (${b} * (${c}))`);
  });

  test("divide as they multiply", () => {
    holds(any, (a, b) => `${a} * (${b}) / (${b}) = ${a}`);
    holds(any, (a, b, c) => `(${a}) / (${b}) / (${c}) = (${a}) / (${b} * (${c}))`);
    holds(any, (a, b) => `(${a}) / (${b}) = 1 / ((${b}) / (${a}))`);
  });

  test("are raised as they are multiplied, and their roots come back", () => {
    holds(any, (a) => `(${a})^2 = ${a} * (${a})`);
    holds(any, (a) => `(${a})^-1 = 1 / (${a})`);
    holds(any, (a) => `sqrt((${a})^2) = ${a}`);
    holds(any, (a) => `(sqrt(${a}))^2 = ${a}`);
    holds(any, (a, b) => `sqrt(${a} * (${b}))^2 = ${a} * (${b})`);
  });

  test("add where they are alike, in any order and any grouping", () => {
    holds(alike, (a, b) => `${a} + ${b} = ${b} + ${a}`);
    holds(alike, (a, b, c) => `(${a} + ${b}) + ${c} = ${a} + (${b} + ${c})`);
    holds(alike, (a, b, c) => `(${a} + ${b}) * (${c}) = ${a} * (${c}) + ${b} * (${c})`);
    holds(alike, (a, b) => `${a} - ${b} = -(${b} - ${a})`);
  });

  test("compare as their SI values do", () => {
    holds(alike, (a, b) => `(${a} < ${b}) = (${b} > ${a})`);
    holds(alike, (a, b) => `(${a} <= ${b}) = not ${a} > ${b}`);
    holds(alike, (a, b) => `max(${a}, ${b}) >= min(${a}, ${b})`);
  });

  test("in a list are what they are alone", () => {
    holds(alike, (a, b, c) => `([${a}, ${b}] * (${c}))[2] = ${b} * (${c})`);
    holds(alike, (a, b, c) => `sum([${a}, ${b}, ${c}]) = ${a} + ${b} + ${c}`);
    holds(any, (a, b) => `((${b}) / [${a}, ${a}])[1] = (${b}) / (${a})`);
  });
});

test("a literal is its number times the factor of its unit", () => {
  const property = fc.property(size, unit, (value, of) => {
    const { factor } = unitOf(of);
    expect(resultOf(write(value, of))).toMatchObject({ ok: true, value: value * factor });
  });
  fc.assert(property, { seed: 12, numRuns: 100 });
});

describe("agreement", () => {
  const dimension = fc.constantFrom(...["1", "rad", "m", "kg", "s", "K", "m/s", "1/s", "rad/s", "m rad", "N", "1/rad"]);

  test("holds for a dimension and itself, and both ways round", () => {
    const property = fc.property(dimension, dimension, (a, b) => {
      const [left, right] = [
        resultOf(`1 * ${literal(a)} + ${literal(b)}`),
        resultOf(`${literal(b)} + 1 * ${literal(a)}`),
      ];
      expect(left.ok).toBe(right.ok);
      if (a === b) expect(left.ok).toBe(true);
      if (left.ok && right.ok && left.shape.kind === "number" && right.shape.kind === "number") {
        expect(left.shape.dimension).toEqual(right.shape.dimension);
      }
    });
    fc.assert(property, { seed: 13, numRuns: 200 });
  });

  test("does not look at the angle where mass, length or temperature is there, and does elsewhere", () => {
    for (const base of ["m", "kg", "K", "N", "m/s", "kg/s"]) {
      expect(resultOf(`1 ${base} + 1 ${base} * 1 rad`), base).toMatchObject({ ok: true, value: 2 });
    }
    for (const base of ["1 s", "1 s^-1", "1"]) {
      expect(resultOf(`${base} + ${base} * 1 rad`), base).toMatchObject({
        ok: false,
        error: { code: "wrong_dimension" },
      });
    }
  });
});

const literal = (unit: string): string =>
  unit.startsWith("1") ? `1 / (1${unit.slice(1).replace("/", " ") || ""})` : `1 ${unit}`;

describe("comparison", () => {
  test("of two numbers exactly one of less, equal and more holds, also where they differ by rounding alone", () => {
    const nudged = fc.tuple(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), fc.integer({ min: -4, max: 4 }));
    const property = fc.property(nudged, ([a, ulps]) => {
      const b = a * (1 + ulps * Number.EPSILON);
      const words = ["<", "=", ">"].map((sign) => resultOf(`${a} ${sign} ${b}`)).map((each) => each.ok && each.value);
      expect(words, `${a} ${b}`).toEqual([false, true, false]);
    });
    fc.assert(property, { seed: 11, numRuns: 100 });
    for (const formula of ["0.1 + 0.2 <= 0.3", "0.3 >= 0.1 + 0.2", "not (0.1 + 0.2 > 0.3)", "1 < 1.0000000001"]) {
      expect(resultOf(formula), formula).toMatchObject({ ok: true, value: true });
    }
  });
});
