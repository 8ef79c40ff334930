import fc from "fast-check";
import { expect, test } from "vitest";
import { isNamed, type Notebook } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { isName, readSignature, reservedAs } from "../../src/cells/names.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { rename } from "../../src/cells/rename.ts";
import { functions } from "../../src/library/index.ts";
import { editedNotebook } from "./random-edits.ts";

const codes = (notebook: Notebook): (readonly [string, string])[] => {
  const results = runPlan(compile(notebook.cells, functions));
  return notebook.cells.map(({ id }) => {
    const result = results.get(id);
    return [id, !result ? "none" : result.ok ? JSON.stringify(result.value) : result.error.code];
  });
};

test("any notebook, faulty ones too, gives the same results with a cell renamed, and is itself again when renamed back", () => {
  let renamed = 0;
  fc.assert(
    fc.property(editedNotebook, fc.nat(99), ({ notebook }, at) => {
      const all = notebook.cells.filter(isNamed);
      const names = all.map((cell) => readSignature(cell.name).name);
      const cell = all[at % Math.max(1, all.length)];
      const name = cell ? readSignature(cell.name).name : "";
      const isOwn = isName(name) && !reservedAs(name, functions) && names.filter((each) => each === name).length === 1;
      const isParameter = all.some((each) => readSignature(each.name).parameters?.includes(name));
      if (!cell || !isOwn || isParameter) return;
      const there = rename(notebook, cell.id, "quite_another", functions);
      expect(codes(there)).toEqual(codes(notebook));
      expect(rename(there, cell.id, name, functions)).toEqual(notebook);
      renamed++;
    }),
    { seed: 41, numRuns: 400 },
  );
  expect(renamed).toBeGreaterThan(150);
});
