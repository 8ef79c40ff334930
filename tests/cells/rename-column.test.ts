import fc from "fast-check";
import { expect, test } from "vitest";
import type { Cell, Notebook } from "../../src/cells/cell.ts";
import { renameColumn } from "../../src/cells/rename-column.ts";

const panels: Cell = {
  id: "a1",
  kind: "table",
  name: "panels",
  columns: [
    { name: "length", unit: "mm" },
    { name: "break", unit: "deg" },
  ],
  rows: [["110", "5"]],
};
const other: Cell = {
  id: "a2",
  kind: "table",
  name: "other",
  columns: [{ name: "break" }],
  rows: [["panels.break[1]"]],
};
const notebookOf = (...cells: Cell[]): Notebook => ({ title: "", cells: [panels, other, ...cells], trials: [] });
const derived = (name: string, formula: string): Cell => ({ id: name, kind: "derived", name, formula });

test("plain uses of the column follow, wherever formulas stand; others of that name do not", () => {
  const before: Notebook = {
    ...notebookOf(
      derived("a", "sum(panels.break) + panels . break[1] + other.break[1] + x.panels.break"),
      derived("lift(panels)", "panels.break"),
      { id: "n", kind: "note", text: "{panels.break} \\{panels.break} break" },
      { id: "q", kind: "question", about: "panels.break[1]", prompt: "", answer: null, because: "" },
    ),
    trials: [{ name: "t", set: { "panels[1].break": "7 deg", "other[1].break": "panels.break[1]" } }],
  };
  const after = renameColumn(before, "a1", 1, "bend");
  expect(after.cells[0]).toMatchObject({
    columns: [
      { name: "length", unit: "mm" },
      { name: "bend", unit: "deg" },
    ],
  });
  expect(after.cells[1]).toMatchObject({ columns: [{ name: "break" }], rows: [["panels.bend[1]"]] });
  expect(after.cells[2]).toMatchObject({
    formula: "sum(panels.bend) + panels . bend[1] + other.break[1] + x.panels.break",
  });
  expect(after.cells[3]).toBe(before.cells[3]);
  expect(after.cells[4]).toMatchObject({ text: "{panels.bend} \\{panels.break} break" });
  expect(after.cells[5]).toMatchObject({ about: "panels.bend[1]" });
  expect(after.trials).toEqual([{ name: "t", set: { "panels[1].bend": "7 deg", "other[1].break": "panels.bend[1]" } }]);
});

test("a name that is none, or is another column's, is refused with the reason", () => {
  expect(() => renameColumn(notebookOf(), "a1", 1, "tip break")).toThrow(/cannot be a name/);
  expect(() => renameColumn(notebookOf(), "a1", 1, "length")).toThrow(/Another column is named length/);
  expect(() => renameColumn(notebookOf(), "a1", 4, "x")).toThrow(/got column 4/);
});

test("renamed and back, a notebook is as it was", () => {
  const part = fc.constantFrom(
    "panels.break",
    "other.break",
    "panels",
    "break",
    "2 mm",
    "max(panels.break)",
    "panels.length[1]",
  );
  const formulas = fc.array(fc.array(part, { minLength: 1, maxLength: 4 }).map((parts) => parts.join(" + ")));
  fc.assert(
    fc.property(formulas, (all) => {
      const before = notebookOf(...all.map((formula, index) => derived(`d${index}`, formula)));
      const there = renameColumn(before, "a1", 1, "bend");
      expect(JSON.stringify(there)).not.toContain("panels.break");
      expect(renameColumn(there, "a1", 1, "break")).toEqual(before);
    }),
    { seed: 11 },
  );
});
