import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Notebook } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { readSignature } from "../../src/cells/names.ts";
import { runPlan } from "../../src/cells/plan.ts";
import type { Program } from "../../src/cells/step.ts";
import { functions } from "../../src/library/index.ts";
import { resultFault } from "./conformity.ts";
import { editedNotebook, told } from "./random-edits.ts";

const resultsOf = (program: Program): Record<string, unknown> => {
  const results = runPlan(program);
  return Object.fromEntries(program.steps.map(({ id }) => [id, told(results.get(id))]));
};

describe("a program compiled from the one before", () => {
  test("computes what the same cells compiled afresh compute, after any edits", () => {
    const property = fc.property(editedNotebook, ({ notebook, edits }) => {
      let now: Notebook = notebook;
      let program = compile(now.cells, functions);
      for (const edit of edits) {
        now = edit(now);
        program = compile(now.cells, functions, program);
        expect(resultsOf(program)).toEqual(resultsOf(compile(now.cells, functions)));
      }
    });
    fc.assert(property, { seed: 21, numRuns: 300 });
  });

  test("keeps every step where nothing changed", () => {
    const property = fc.property(editedNotebook, ({ notebook }) => {
      const program = compile(notebook.cells, functions);
      const again = compile([...notebook.cells], functions, program);
      for (const step of program.steps) expect(again.byId.get(step.id)).toBe(step);
    });
    fc.assert(property, { seed: 22, numRuns: 100 });
  });
});

describe("any notebook", () => {
  test("has for every cell a value of its shape, or an error of the closed set", () => {
    const property = fc.property(editedNotebook, ({ notebook }) => {
      const program = compile(notebook.cells, functions);
      const results = runPlan(program);
      for (const { id, cell } of program.steps) {
        expect(resultFault(results.get(id), JSON.stringify(cell)), JSON.stringify(cell)).toBe(null);
      }
    });
    fc.assert(property, { seed: 23, numRuns: 300 });
  });

  test("computes the same in whatever order its cells stand, where no name stands twice", () => {
    const shuffled = editedNotebook.chain(({ notebook }) => {
      const seen = new Set<string>();
      const cells = notebook.cells.filter((cell) => {
        const name = "name" in cell ? readSignature(cell.name).name : cell.id;
        return !seen.has(name) && seen.add(name);
      });
      const all = { minLength: cells.length, maxLength: cells.length };
      return fc.tuple(fc.constant(cells), fc.shuffledSubarray([...cells], all));
    });
    const property = fc.property(shuffled, ([cells, others]) => {
      const [one, other] = [resultsOf(compile(cells, functions)), resultsOf(compile(others, functions))];
      // Among names equally near to a misspelt one the first is proposed.
      const plain = (results: object) => JSON.parse(JSON.stringify(results).replaceAll(/ Did you mean \w+\?/g, ""));
      expect(plain(other)).toEqual(plain(one));
    });
    fc.assert(property, { seed: 24, numRuns: 200 });
  });
});
