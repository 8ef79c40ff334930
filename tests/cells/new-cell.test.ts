import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { Notebook } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { duplicateCell, newCell, unusedName } from "../../src/cells/new-cell.ts";
import { insertCell } from "../../src/cells/notebook.ts";
import { readNotebook, writeNotebook } from "../../src/cells/notebook-file.ts";
import { kinds } from "../../src/cells/notebook-schema.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { functions } from "../../src/library/index.ts";
import { quickPart } from "./quick-part.ts";

const plover = quickPart(readNotebook(readFileSync(new URL("../../notebooks/plover.json", import.meta.url), "utf8")));
const programOf = (notebook: Notebook) => compile(notebook.cells, functions);
const empty: Notebook = { title: "", cells: [], trials: [] };

test("a new cell of any kind, at the head, amid and at the end of a design, has no error and can be saved", () => {
  const program = programOf(plover);
  for (const kind of kinds) {
    for (const index of [0, 3, plover.cells.length >> 1, plover.cells.length]) {
      const cell = newCell(plover, kind, index, program);
      const notebook = insertCell(plover, index, cell);
      const result = runPlan(programOf(notebook)).get(cell.id);
      expect(result?.ok ?? true, `${kind} at ${index}: ${JSON.stringify(cell)}`).toBe(true);
      expect(readNotebook(writeNotebook(notebook))).toEqual(notebook);
    }
  }
});

test("a chart right below a result that has a chart of its own is that one, elsewhere a trade-off", () => {
  const cells = [
    { id: "a1", kind: "given", name: "bend", formula: "9 deg", range: ["0 deg", "20 deg"] },
    { id: "a2", kind: "derived", name: "bird", formula: "glider(curved_wing(480 mm, 70 mm, 50 mm, bend, 2, 3 mm))" },
    { id: "a3", kind: "derived", name: "motion", formula: "modes(bird)" },
    { id: "a4", kind: "derived", name: "let_go", formula: "recovery(bird)" },
  ] as const;
  const notebook: Notebook = { ...empty, cells };
  const below = (index: number) => newCell(notebook, "chart", index, programOf(notebook));
  expect(below(3)).toMatchObject({ kind: "chart", view: "modes", of: "motion" });
  expect(below(4)).toMatchObject({ view: "flight_history", of: "let_go" });
  expect(below(2)).toMatchObject({ view: "trade_off", sweep: "bend" });
});

test("in an empty notebook a new cell of every kind can be saved", () => {
  for (const kind of kinds) {
    const notebook = insertCell(empty, 0, newCell(empty, kind, 0, programOf(empty)));
    expect(readNotebook(writeNotebook(notebook))).toEqual(notebook);
  }
});

test("an unused name counts on, and passes by names of functions, units, parameters and other cells", () => {
  const notebook: Notebook = {
    ...empty,
    cells: [
      { id: "a1", kind: "given", name: "half", formula: "1" },
      { id: "a2", kind: "derived", name: "lift(speed_2)", formula: "speed_2" },
    ],
  };
  expect(unusedName(notebook, "span", functions)).toBe("span");
  expect(unusedName(notebook, "half", functions)).toBe("half_2");
  expect(unusedName(notebook, "speed_2", functions)).toBe("speed_3");
  expect(unusedName(notebook, "mm", functions)).toBe("mm_2");
  expect(unusedName(notebook, "wing", functions)).toBe("wing_2");
});

test("a duplicate stands below, under a name and an id of its own, its parameters kept", () => {
  const notebook: Notebook = {
    ...empty,
    cells: [
      { id: "a1", kind: "derived", name: "lift(v)", formula: "v" },
      { id: "a2", kind: "note", text: "x" },
    ],
  };
  const after = duplicateCell(duplicateCell(notebook, "a1", functions), "a2", functions);
  expect(after.cells).toEqual([
    { id: "a1", kind: "derived", name: "lift(v)", formula: "v" },
    { id: "a3", kind: "derived", name: "lift_2(v)", formula: "v" },
    { id: "a2", kind: "note", text: "x" },
    { id: "a4", kind: "note", text: "x" },
  ]);
});

test("a duplicate of a sheet has not been printed", () => {
  const printed = { on: "2026-11-26", parts: { a: "1" } };
  const notebook: Notebook = { ...empty, cells: [{ id: "a1", kind: "sheet", of: "blanks", paper: "A3", printed }] };
  expect(duplicateCell(notebook, "a1", functions).cells).toEqual([
    { id: "a1", kind: "sheet", of: "blanks", paper: "A3", printed },
    { id: "a2", kind: "sheet", of: "blanks", paper: "A3" },
  ]);
});
