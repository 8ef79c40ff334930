import { expect, test } from "vitest";
import type { Notebook } from "../../src/cells/cell.ts";
import {
  insertRowInTrials,
  moveRowInTrials,
  removeColumnInTrials,
  removeRowInTrials,
} from "../../src/cells/table-rows.ts";

const notebook: Notebook = {
  title: "",
  cells: [
    {
      id: "a1",
      kind: "table",
      name: "panels",
      columns: [{ name: "length" }, { name: "break" }],
      rows: ["1", "2", "3", "4"].map((each) => [each, each]),
    },
  ],
  trials: [
    {
      name: "steep",
      set: {
        bend: "1",
        "panels[1].length": "11",
        "panels[2].break": "22",
        "panels[4].break": "44",
        "other[2].break": "0",
      },
    },
    { name: "none", set: { bend: "2" } },
  ],
};
const keys = (after: Notebook) => Object.keys(after.trials[0]?.set ?? {}).slice(1, -1);
const lengths = (after: Notebook) =>
  after.cells.flatMap((cell) => (cell.kind === "table" ? cell.rows.map((row) => row[0]) : []));

test("a row put in shifts what trials name below it", () => {
  const after = insertRowInTrials(notebook, "a1", 1);
  expect(lengths(after)).toEqual(["1", "", "2", "3", "4"]);
  expect(keys(after)).toEqual(["panels[1].length", "panels[3].break", "panels[5].break"]);
  expect(after.trials[1]).toBe(notebook.trials[1]);
});

test("a row taken out takes along what trials set in it, and no other table's", () => {
  const after = removeRowInTrials(notebook, "a1", 1);
  expect(keys(after)).toEqual(["panels[1].length", "panels[3].break"]);
  expect(after.trials[0]?.set["other[2].break"]).toBe("0");
});

test("trials follow a row that is moved, down and up", () => {
  const down = moveRowInTrials(notebook, "a1", 0, 2);
  expect(lengths(down)).toEqual(["2", "3", "1", "4"]);
  expect(keys(down)).toEqual(["panels[3].length", "panels[1].break", "panels[4].break"]);
  const up = moveRowInTrials(notebook, "a1", 3, 1);
  expect(keys(up)).toEqual(["panels[1].length", "panels[3].break", "panels[2].break"]);
  expect(moveRowInTrials(down, "a1", 2, 0)).toEqual(notebook);
});

test("a column taken out takes along what trials set in it", () => {
  expect(keys(removeColumnInTrials(notebook, "a1", 1))).toEqual(["panels[1].length"]);
});
