import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Cell, Notebook } from "../../src/cells/cell.ts";
import { isNamed } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { readSignature } from "../../src/cells/names.ts";
import { readNotebook, writeNotebook } from "../../src/cells/notebook-file.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { rename } from "../../src/cells/rename.ts";
import { functions } from "../../src/library/index.ts";
import { quickPart } from "./quick-part.ts";

const plover = quickPart(readNotebook(readFileSync(new URL("../../notebooks/plover.json", import.meta.url), "utf8")));
const idOf = (notebook: Notebook, name: string): string =>
  notebook.cells.find((cell) => isNamed(cell) && readSignature(cell.name).name === name)?.id ?? "";

function notebookOf(cells: readonly Cell[], more: Partial<Notebook> = {}): Notebook {
  return { title: "", cells, trials: [], ...more };
}

describe("rename", () => {
  test("every place that names the cell follows: formulas, entries, braces, views, questions, trials, expectations", () => {
    const before = notebookOf(
      [
        { id: "a1", kind: "given", name: "bend", formula: "3 deg", range: ["0 deg", "9 deg"] },
        { id: "a2", kind: "derived", name: "twice", formula: "bend + bend * 1 + other.bend" },
        {
          id: "a3",
          kind: "table",
          name: "other",
          columns: [
            { name: "bend", unit: "deg" },
            { name: "part", text: true },
          ],
          rows: [["bend", "bend"]],
        },
        { id: "a4", kind: "note", text: "The bend is {bend}, not \\{bend} nor {other.bend[1]}." },
        { id: "a5", kind: "chart", view: "trade_off", sweep: "bend", x: "twice", y: ["bend"] },
        { id: "a6", kind: "question", about: "bend", prompt: "bend?", answer: null, because: "" },
        { id: "a7", kind: "check", name: "small", formula: "bend < 9 deg" },
        { id: "a8", kind: "chart", view: "modes", of: "bend.lateral" },
      ],
      {
        trials: [{ name: "bend", set: { bend: "5 deg", "other[1].bend": "bend" } }],
        expect: { bend: "3 deg ± 0 deg" },
      },
    );
    const after = rename(before, "a1", "break_angle", functions);
    expect(after.cells).toEqual([
      { ...before.cells[0], name: "break_angle" },
      { ...before.cells[1], formula: "break_angle + break_angle * 1 + other.bend" },
      { ...before.cells[2], rows: [["break_angle", "bend"]] },
      { ...before.cells[3], text: "The bend is {break_angle}, not \\{bend} nor {other.bend[1]}." },
      { ...before.cells[4], sweep: "break_angle", y: ["break_angle"] },
      { ...before.cells[5], about: "break_angle" },
      { ...before.cells[6], formula: "break_angle < 9 deg" },
      { ...before.cells[7], of: "break_angle.lateral" },
    ]);
    expect(after.trials).toEqual([{ name: "bend", set: { break_angle: "5 deg", "other[1].bend": "break_angle" } }]);
    expect(after.expect).toEqual({ break_angle: "3 deg ± 0 deg" });
  });

  test("a table's own name follows in trials that set an entry of it", () => {
    const before = notebookOf([{ id: "a1", kind: "table", name: "panels", columns: [], rows: [] }], {
      trials: [{ name: "t", set: { "panels[2].break": "7 deg" } }],
    });
    expect(rename(before, "a1", "halves", functions).trials[0]?.set).toEqual({ "halves[2].break": "7 deg" });
  });

  test("a formula with a fault is renamed all the same", () => {
    const before = notebookOf([
      { id: "a1", kind: "given", name: "span", formula: "3 mm" },
      { id: "a2", kind: "derived", name: "half", formula: "(span / 2 + wide span" },
    ]);
    expect(rename(before, "a1", "reach", functions).cells[1]).toMatchObject({ formula: "(reach / 2 + wide reach" });
  });

  test("a parameter of the same name keeps its own meaning", () => {
    const before = notebookOf([
      { id: "a1", kind: "given", name: "speed", formula: "3 m/s" },
      { id: "a2", kind: "derived", name: "twice(speed)", formula: "2 * speed" },
      { id: "a3", kind: "derived", name: "fast", formula: "twice(speed)" },
    ]);
    const after = rename(before, "a1", "pace", functions);
    expect(after.cells[1]).toBe(before.cells[1]);
    expect(after.cells[2]).toMatchObject({ formula: "twice(pace)" });
    expect(rename(before, "a2", "doubled", functions).cells.slice(1)).toMatchObject([
      { name: "doubled(speed)" },
      { formula: "doubled(speed)" },
    ]);
  });

  test.each([
    ["", /needs a name/],
    ["2x", /cannot be a name/],
    ["mm", /is a unit/],
    ["wing", /is a function/],
    ["if", /a word of the formula language/],
    ["other", /Another cell is named other/],
    ["v", /is a parameter of f/],
  ])("%j is refused with its reason", (name, reason) => {
    const before = notebookOf([
      { id: "a1", kind: "given", name: "span", formula: "3 mm" },
      { id: "a2", kind: "given", name: "other", formula: "3 mm" },
      { id: "a3", kind: "derived", name: "f(v)", formula: "v * span" },
    ]);
    expect(() => rename(before, "a1", name, functions)).toThrow(reason);
  });

  test("any cell of the demo, renamed and back, is the same file, and gives the same results in between", () => {
    const text = writeNotebook(plover);
    const results = JSON.stringify([...runPlan(compile(plover.cells, functions)).values()]);
    const names = plover.cells.filter(isNamed).map((cell) => readSignature(cell.name).name);
    fc.assert(
      fc.property(fc.constantFrom(...names), (name) => {
        const there = rename(plover, idOf(plover, name), "quite_another", functions);
        expect(writeNotebook(there)).not.toBe(text);
        expect(JSON.stringify([...runPlan(compile(there.cells, functions)).values()])).toBe(
          // Only what tells a name may differ: the text of a note's braces is not among the results.
          results,
        );
        const back = rename(there, idOf(there, "quite_another"), name, functions);
        expect(writeNotebook(back)).toBe(text);
      }),
      { seed: 5, numRuns: names.length },
    );
  });
});
