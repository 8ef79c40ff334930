import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compile } from "../../src/cells/compile.ts";
import { printFormula } from "../../src/cells/formula-print.ts";
import { runPlan } from "../../src/cells/plan.ts";
import type { Result } from "../../src/cells/value.ts";
import { functions } from "../../src/library/index.ts";
import { resultFault } from "./conformity.ts";
import { cellsOf } from "./notebook-text.ts";
import { garbage, randomTree } from "./random-formula.ts";
import { type Kind, setting, typedFormula } from "./random-typed-formula.ts";

const cells = cellsOf(setting);
const program = compile(cells, functions);

/** The result of a formula in the notebook of `setting`. */
function resultOf(formula: string, unit?: string): Result | undefined {
  const cell = { id: "x", kind: "derived", name: "x", formula, ...(unit && { unit }) } as const;
  return runPlan(compile([...cells, cell], functions, program)).get("x");
}

const dimension = { length: "m", angle: "rad", number: "1", lengths: "m" } as const;

describe("any formula gives a value of the shape that was found for it, or an error of the closed set", () => {
  test.each(Object.keys({ length: 0, angle: 0, number: 0, condition: 0, lengths: 0, text: 0 }) as Kind[])(
    "where its parts fit: %s",
    (kind) => {
      let good = 0;
      const property = fc.property(typedFormula[kind], (formula) => {
        const result = resultOf(formula);
        expect(resultFault(result, formula), formula).toBe(null);
        if (result?.ok) good++;
      });
      fc.assert(property, { seed: 2, numRuns: 400 });
      expect(good).toBeGreaterThan(100);
    },
  );

  test("where they were put together at random", () => {
    const property = fc.property(randomTree.map(printFormula), (formula) => {
      expect(resultFault(resultOf(formula), formula), formula).toBe(null);
    });
    fc.assert(property, { seed: 3, numRuns: 600 });
  });

  test("also garbage", () => {
    const property = fc.property(garbage, (formula) => {
      expect(resultFault(resultOf(formula), formula), formula).toBe(null);
    });
    fc.assert(property, { seed: 4, numRuns: 1500 });
  });
});

test("what fits agrees with the unit of its kind", () => {
  const kinds = Object.entries(dimension) as [keyof typeof dimension, string][];
  for (const [kind, unit] of kinds) {
    const property = fc.property(typedFormula[kind], (formula) => {
      const bare = resultOf(formula);
      const declared = resultOf(formula, unit);
      if (!bare?.ok || !declared?.ok) return;
      expect(declared.value).toEqual(bare.value);
    });
    fc.assert(property, { seed: 5, numRuns: 100 });
  }
});
