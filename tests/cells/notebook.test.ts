import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Cell, Notebook, TableCell } from "../../src/cells/cell.ts";
import {
  cellById,
  editCell,
  editColumn,
  freshId,
  insertCell,
  insertColumn,
  insertRow,
  moveCell,
  moveColumn,
  moveRow,
  removeCell,
  removeColumn,
  removeRow,
  setEntry,
  setTitle,
  turnInto,
} from "../../src/cells/notebook.ts";
import { readNotebook, writeNotebook } from "../../src/cells/notebook-file.ts";
import { randomNotebook } from "./random-notebook.ts";

const span: Cell = { id: "a1", kind: "given", name: "span", formula: "450 mm", unit: "mm", reason: "fits the box" };
const panels: TableCell = {
  id: "a2",
  kind: "table",
  name: "panels",
  columns: [{ name: "length", unit: "mm" }, { name: "break" }],
  rows: [
    ["105", "3"],
    ["80", "7"],
    ["60", "11"],
  ],
};
const note: Cell = { id: "a7", kind: "note", text: "Span {span}." };
const notebook: Notebook = {
  title: "Plover",
  cells: [span, panels, note],
  trials: [{ name: "t", set: { span: "1 m" } }],
};
const tableOf = (edited: Notebook): TableCell => cellById(edited, "a2") as TableCell;
const idsOf = (edited: Notebook): readonly string[] => edited.cells.map(({ id }) => id);

describe("edits of cells", () => {
  test("an edited cell has its new content, and every other part is shared", () => {
    const edited = editCell(notebook, "a1", { formula: "500 mm" });
    expect(edited.cells[0]).toEqual({ ...span, formula: "500 mm" });
    expect(edited.cells[1]).toBe(panels);
    expect(edited.cells[2]).toBe(note);
    expect(edited.trials).toBe(notebook.trials);
    expect(notebook.cells[0]).toBe(span);
  });

  test("undefined takes an optional key away, and not one that is needed", () => {
    expect(Object.keys(editCell(notebook, "a1", { unit: undefined }).cells[0] ?? {})).toEqual([
      ..."id kind name formula reason".split(" "),
    ]);
    expect(() => editCell(notebook, "a1", { formula: undefined })).toThrow(/expected one that can: The key “formula”/);
  });

  test("a given becomes derived and a given again, without its range, and stays where it was under its name", () => {
    const derived = turnInto(notebook, "a1", "derived");
    expect(derived.cells[0]).toMatchObject({ id: "a1", kind: "derived", name: "span", formula: "450 mm", unit: "mm" });
    expect(derived.cells[0]).not.toHaveProperty("range");
    expect(turnInto(derived, "a1", "given").cells[0]).toMatchObject({ id: "a1", kind: "given", name: "span" });
    expect(turnInto(notebook, "a1", "given")).toBe(notebook);
    expect(() => turnInto(notebook, "a2", "given")).toThrow(/expected a given or a derived cell/);
  });

  test("an edit that changes nothing gives the same notebook", () => {
    expect(editCell(notebook, "a1", { formula: "450 mm" })).toBe(notebook);
    expect(editCell(notebook, "a1", { range: undefined })).toBe(notebook);
    expect(setTitle(notebook, "Plover")).toBe(notebook);
    expect(moveCell(notebook, "a2", 1)).toBe(notebook);
    expect(setEntry(notebook, "a2", 1, 0, "80")).toBe(notebook);
    expect(moveRow(notebook, "a2", 2, 2)).toBe(notebook);
    expect(moveColumn(notebook, "a2", 0, 0)).toBe(notebook);
    expect(editColumn(notebook, "a2", 0, { unit: "mm" })).toBe(notebook);
  });

  test("what no file could hold throws, with what was expected", () => {
    expect(() => editCell(notebook, "a3", { name: "x" })).toThrow('got the id "a3", expected that of a cell');
    expect(() => editCell(notebook, "a1", { text: "x" })).toThrow(/“text” is not known here/);
    expect(() => editCell(notebook, "a1", { formula: 7 } as never)).toThrow(/formula: This is a number/);
    expect(() => editCell(notebook, "a1", { id: "a9" } as never)).toThrow(/expected content only/);
    expect(() => editCell(notebook, "a2", { rows: [["1"]] })).toThrow(/rows\[0\]: This row has 1 entry/);
  });

  test("a cell is put in where it was asked for, also at the end", () => {
    const cell: Cell = { id: "a8", kind: "note", text: "" };
    expect(idsOf(insertCell(notebook, 1, cell))).toEqual(["a1", "a8", "a2", "a7"]);
    expect(idsOf(insertCell(notebook, 3, cell))).toEqual(["a1", "a2", "a7", "a8"]);
    expect(insertCell(notebook, 0, cell).cells[0]).toBe(cell);
    expect(() => insertCell(notebook, 4, cell)).toThrow("got the position 4, expected 0 to 3");
    expect(() => insertCell(notebook, 0, { ...cell, id: "a2" })).toThrow('got the id "a2" twice, expected a new one');
    expect(() => insertCell(notebook, 0, { ...cell, id: "" })).toThrow(/cannot be saved/);
  });

  test("a cell is taken out, and the others are shared", () => {
    const edited = removeCell(notebook, "a2");
    expect(edited.cells).toEqual([span, note]);
    expect(edited.cells[1]).toBe(note);
    expect(() => removeCell(edited, "a2")).toThrow(/got the id "a2"/);
  });

  test("a moved cell stands at the position that was asked for", () => {
    expect(idsOf(moveCell(notebook, "a1", 1))).toEqual(["a2", "a1", "a7"]);
    expect(idsOf(moveCell(notebook, "a1", 2))).toEqual(["a2", "a7", "a1"]);
    expect(idsOf(moveCell(notebook, "a7", 0))).toEqual(["a7", "a1", "a2"]);
    expect(moveCell(notebook, "a7", 0).cells[0]).toBe(note);
    expect(() => moveCell(notebook, "a7", 3)).toThrow("got position 3, expected one of 0 to 2");
    expect(() => moveCell(notebook, "a7", -1)).toThrow(/expected one of 0 to 2/);
  });

  test("a fresh id is above every numbered one", () => {
    expect(freshId(notebook)).toBe("a8");
    expect(freshId({ ...notebook, cells: [] })).toBe("a1");
    expect(
      freshId({
        ...notebook,
        cells: [
          { ...note, id: "panel" },
          { ...note, id: "a07" },
        ],
      }),
    ).toBe("a8");
  });

  test("a fresh id is new in any notebook", () => {
    const id = fc.oneof(
      fc.nat(30).map((number) => `a${number}`),
      fc.stringMatching(/^[ab]0?\d{0,20}$/),
    );
    fc.assert(
      fc.property(fc.uniqueArray(id), (ids) => {
        expect(ids).not.toContain(freshId({ ...notebook, cells: ids.map((each) => ({ ...note, id: each })) }));
      }),
      { seed: 60, numRuns: 300 },
    );
  });
});

describe("edits of tables", () => {
  test("one entry changes, and the other rows are shared", () => {
    const edited = tableOf(setEntry(notebook, "a2", 1, 1, "tip_break"));
    expect(edited.rows[1]).toEqual(["80", "tip_break"]);
    expect(edited.rows[0]).toBe(panels.rows[0]);
    expect(edited.columns).toBe(panels.columns);
    expect(() => setEntry(notebook, "a2", 3, 0, "1")).toThrow("got row 3, expected one of 0 to 2");
    expect(() => setEntry(notebook, "a2", 0, 2, "1")).toThrow("got column 2, expected one of 0 to 1");
    expect(() => setEntry(notebook, "a2", 0, 0, 5 as never)).toThrow("got number, expected text");
    expect(() => setEntry(notebook, "a1", 0, 0, "1")).toThrow('got "a1", which is a given, expected a table');
  });

  test("rows are put in, taken out and moved", () => {
    expect(tableOf(insertRow(notebook, "a2", 3)).rows.at(-1)).toEqual(["", ""]);
    expect(tableOf(insertRow(notebook, "a2", 0, ["1", "2"])).rows[0]).toEqual(["1", "2"]);
    expect(tableOf(removeRow(notebook, "a2", 0)).rows).toEqual([panels.rows[1], panels.rows[2]]);
    expect(tableOf(moveRow(notebook, "a2", 0, 2)).rows.map(([length]) => length)).toEqual(["80", "60", "105"]);
    expect(() => insertRow(notebook, "a2", 0, ["1"])).toThrow(/This row has 1 entry, but the table has 2 columns/);
    expect(() => removeRow(notebook, "a2", 3)).toThrow("got row 3, expected one of 0 to 2");
  });

  test("columns are put in, taken out and moved with their entries", () => {
    const chords = insertColumn(notebook, "a2", 1, { name: "chord", unit: "mm" }, ["74", "70", "60"]);
    expect(tableOf(chords).columns.map(({ name }) => name)).toEqual(["length", "chord", "break"]);
    expect(tableOf(chords).rows[2]).toEqual(["60", "60", "11"]);
    expect(tableOf(insertColumn(notebook, "a2", 0, { name: "part", text: true })).rows[0]).toEqual(["", "105", "3"]);
    expect(tableOf(moveColumn(chords, "a2", 0, 2)).rows[1]).toEqual(["70", "7", "80"]);
    expect(tableOf(moveColumn(chords, "a2", 0, 2)).columns.map(({ name }) => name)).toEqual([
      "chord",
      "break",
      "length",
    ]);
    expect(removeColumn(chords, "a2", 1)).toEqual(notebook);
    expect(() => insertColumn(notebook, "a2", 0, { name: "part" }, ["1"])).toThrow(/expected one for each of 3 rows/);
    expect(() => removeColumn(notebook, "a2", 2)).toThrow("got column 2, expected one of 0 to 1");
  });

  test("a column changes its name and unit, or loses its unit", () => {
    expect(tableOf(editColumn(notebook, "a2", 0, { name: "span", unit: "in" })).columns[0]).toEqual({
      name: "span",
      unit: "in",
    });
    expect(tableOf(editColumn(notebook, "a2", 0, { unit: undefined })).columns[0]).toEqual({ name: "length" });
    expect(tableOf(editColumn(notebook, "a2", 1, { text: true })).rows).toBe(panels.rows);
    expect(() => editColumn(notebook, "a2", 0, { name: "" })).toThrow(/columns\[0\]\.name: This text is empty/);
  });
});

test("after any row of edits a notebook can be saved and reads back the same, and the one before is untouched", () => {
  const where = fc.nat(9);
  const edit = fc.record({
    how: fc.nat(10),
    cell: where,
    one: where,
    other: where,
    text: fc.constantFrom("", "12 mm", "tip_break", "\ud800", '"'),
  });
  let done = 0;
  fc.assert(
    fc.property(randomNotebook, fc.array(edit, { maxLength: 12 }), (start, edits) => {
      let now = start;
      for (const each of edits) {
        const before = structuredClone(now);
        const next = attempt(now, each);
        expect(now).toEqual(before);
        if (next !== null && next !== now) done++;
        now = next ?? now;
      }
      expect(readNotebook(writeNotebook(now))).toEqual(now);
    }),
    { seed: 61, numRuns: 150 },
  );
  expect(done).toBeGreaterThan(200);

  /** The notebook after one edit, or null where the edit was refused. */
  function attempt(
    now: Notebook,
    { how, cell, one, other, text }: { how: number; cell: number; one: number; other: number; text: string },
  ): Notebook | null {
    const id = now.cells[cell % Math.max(1, now.cells.length)]?.id ?? "none";
    const edits = [
      () => setTitle(now, text),
      () => editCell(now, id, { reason: text }),
      () => insertCell(now, one, { ...note, id: freshId(now) }),
      () => insertCell(now, one, { ...panels, id: freshId(now) }),
      () => removeCell(now, id),
      () => moveCell(now, id, one),
      () => setEntry(now, id, one, other, text),
      () => insertRow(now, id, one),
      () => moveRow(now, id, one, other),
      () => insertColumn(now, id, one, { name: text }),
      () => removeColumn(now, id, one),
    ];
    try {
      return edits[how]?.() ?? null;
    } catch (error) {
      expect((error as Error).message).toMatch(/^got .*, expected /s);
      return null;
    }
  }
});
