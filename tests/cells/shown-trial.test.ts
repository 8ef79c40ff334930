import { expect, test } from "vitest";
import type { Notebook } from "../../src/cells/cell.ts";
import { editCell } from "../../src/cells/notebook.ts";
import { editedTrial, shownWith, withTrial } from "../../src/cells/shown-trial.ts";
import { cellsOf } from "./notebook-text.ts";

const notebook: Notebook = {
  title: "",
  trials: [{ name: "steep", set: { tip: "13 deg", gone: "1", "panels[9].length": "2" } }],
  cells: cellsOf(`given tip [deg] = 11 deg
table panels | length mm
| 110
given tip [deg] = 4 deg`),
};

test("what a trial cannot set is told, and the rest is set", () => {
  const { notebook: shown, faults } = withTrial(notebook, notebook.trials[0] as never);
  expect(shown.cells[0]).toMatchObject({ formula: "13 deg" });
  expect(faults.map(({ target }) => target)).toEqual(["gone", "panels[9].length"]);
});

test("cells that say what they said are the very same objects when a trial is shown again", () => {
  const first = shownWith(notebook, 0, null);
  const again = shownWith(editCell(notebook, "2", { reason: "as cut" }), 0, first);
  expect(again.cells[0]).toBe(first.cells[0]);
  expect(again.cells[1]).not.toBe(first.cells[1]);
});

test("a given that another of its name hides is no matter of a trial", () => {
  const shown = shownWith(notebook, 0, null);
  expect(editedTrial(notebook, 0, shown, editCell(shown, "3", { formula: "5 deg" }))).toBeNull();
  expect(editedTrial(notebook, 0, shown, editCell(shown, "1", { formula: "5 deg" }))?.trials[0]?.set.tip).toBe("5 deg");
});

test("a change of anything but givens and entries is none of a trial", () => {
  const shown = shownWith(notebook, 0, null);
  expect(editedTrial(notebook, 0, shown, { ...shown, title: "other" })).toBeNull();
  expect(editedTrial(notebook, 0, shown, editCell(shown, "1", { reason: "so" }))).toBeNull();
});

test("a trial that is not there is misuse", () => {
  expect(() => shownWith(notebook, 3, null)).toThrow("got the trial 3");
});
