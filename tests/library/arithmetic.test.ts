import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { functions } from "../../src/library/index.ts";
import { call, Refusal } from "./call.ts";
import { runs } from "./panel-arbitraries.ts";

const run = (name: string, given: Record<string, unknown>) => call(functions.get(name), given);
const plain = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const steps = fc.constantFrom(1, 0.001, 0.0005, 0.01, 5, 0.0254 / 64, Math.PI / 360);

describe("functions of a list", () => {
  test.each(["sum", "min", "max", "mean"])("%s refuses an empty list", (name) => {
    expect(() => run(name, { values: [] })).toThrow(/empty/);
  });
  test("agree with each other: min ≤ mean ≤ max, and mean times count is the sum", () => {
    fc.assert(
      fc.property(fc.array(plain, { minLength: 1, maxLength: 30 }), (values) => {
        const of = (name: string) => run(name, { values }) as number;
        expect(of("mean")).toBeGreaterThanOrEqual(of("min") - 1e-9);
        expect(of("mean")).toBeLessThanOrEqual(of("max") + 1e-9);
        expect(of("mean") * of("count")).toBeCloseTo(of("sum"), 5);
        expect(values).toContain(of("min"));
        expect(values).toContain(of("max"));
      }),
      runs,
    );
  });
  test("count counts nothing in an empty list", () => {
    expect(run("count", { values: [] })).toBe(0);
  });
});

describe("round, floor and ceil", () => {
  test("give whole multiples of the step, on the side that they promise", () => {
    fc.assert(
      fc.property(fc.double({ min: -100, max: 100, noNaN: true }), steps, (value, step) => {
        const [down, near, up] = ["floor", "round", "ceil"].map((name) => run(name, { value, step }) as number) as [
          number,
          number,
          number,
        ];
        const slack = 1e-9 * Math.max(1, Math.abs(value));
        for (const each of [down, near, up]) expect(Math.abs(each / step - Math.round(each / step))).toBeLessThan(1e-6);
        expect(down).toBeLessThanOrEqual(value + slack);
        expect(up).toBeGreaterThanOrEqual(value - slack);
        expect(Math.abs(near - value)).toBeLessThanOrEqual(step / 2 + slack);
        expect(up - down).toBeLessThanOrEqual(step + slack);
      }),
      runs,
    );
  });
  test("leave what is already a multiple where it is, though decimal fractions are no exact floats", () => {
    fc.assert(
      fc.property(fc.integer({ min: -5000, max: 5000 }), steps, (count, step) => {
        const value = count * step;
        for (const name of ["round", "floor", "ceil"]) {
          expect(run(name, { value, step })).toBeCloseTo(value, 9);
          // As a person's unit makes it: 29 cm is 29 / 100.
          expect(run(name, { value: count / 100, step: 0.01 })).toBeCloseTo(count / 100, 12);
        }
      }),
      runs,
    );
  });
  test("round turns its sign with its value, so a half goes away from zero on both sides", () => {
    expect([0.5, 1.5, 2.5, -0.5, -2.5].map((value) => run("round", { value }))).toEqual([1, 2, 3, -1, -3]);
    expect(run("round", { value: 0.4999999 })).toBe(0);
    fc.assert(
      fc.property(plain, (value) => {
        expect(run("round", { value: -value })).toBe(0 - (run("round", { value }) as number));
      }),
      runs,
    );
  });
  test("never give a minus zero", () => {
    expect(Object.is(run("round", { value: -0.2 }), 0)).toBe(true);
    expect(Object.is(run("ceil", { value: -0.2 }), 0)).toBe(true);
    expect(Object.is(run("floor", { value: -0 }), 0)).toBe(true);
  });
  test("refuse a step of nothing or less", () => {
    for (const name of ["round", "floor", "ceil"]) {
      expect(() => run(name, { value: 1, step: 0 })).toThrow(Refusal);
      expect(() => run(name, { value: 1, step: -1 })).toThrow(Refusal);
    }
  });
});

describe("angles", () => {
  test("asin, acos, atan and atan2 undo sin, cos and tan", () => {
    fc.assert(
      fc.property(fc.double({ min: -1.5, max: 1.5, noNaN: true }), (angle) => {
        const of = (name: string) => run(name, { angle });
        expect(run("asin", { value: of("sin") })).toBeCloseTo(angle, 8);
        expect(run("acos", { value: of("cos") })).toBeCloseTo(Math.abs(angle), 7);
        expect(run("atan", { value: of("tan") })).toBeCloseTo(angle, 12);
        expect(run("atan2", { rise: of("sin"), run: of("cos") })).toBeCloseTo(angle, 12);
      }),
      runs,
    );
  });
  test("have no tangent at 90 deg and no sine beyond one", () => {
    for (const angle of [Math.PI / 2, -Math.PI / 2, (3 * Math.PI) / 2]) {
      expect(() => run("tan", { angle })).toThrow(/90 deg/);
    }
    expect(run("tan", { angle: Math.PI / 2 - 1e-9 })).toBeGreaterThan(1e8);
    expect(() => run("asin", { value: 1.01 })).toThrow(Refusal);
    expect(() => run("acos", { value: -1.01 })).toThrow(Refusal);
    expect(() => run("atan2", { rise: 0, run: 0 })).toThrow(/no angle/);
  });
});

describe("powers", () => {
  test("sqrt undoes squaring, and log undoes exp", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 300, noNaN: true }), (value) => {
        expect(run("sqrt", { value: value * value })).toBeCloseTo(value, 9);
        expect(run("log", { value: run("exp", { value }) })).toBeCloseTo(value, 9);
      }),
      runs,
    );
  });
  test("refuse the root of a negative number and the logarithm of nothing", () => {
    expect(() => run("sqrt", { value: -1 })).toThrow(Refusal);
    expect(() => run("log", { value: 0 })).toThrow(Refusal);
  });
});
