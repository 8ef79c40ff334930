import { describe, expect, test } from "vitest";
import type { DecisionCell, Notebook, StudyCell } from "../../src/cells/cell.ts";
import { editCell, setEntry } from "../../src/cells/notebook.ts";
import {
  adoptTrial,
  changesSince,
  duplicateTrial,
  freeTrialName,
  moveTrial,
  removeTrial,
  renameTrial,
  trialOfChanges,
} from "../../src/cells/trial-edits.ts";
import { applyTrial } from "../../src/cells/trials.ts";
import { cellsOf } from "./notebook-text.ts";

const study: StudyCell = {
  ...{ id: "s", kind: "study", name: "bends", study: "sweep", results: ["half"] },
  ...{ inputs: [{ input: "tip" }], trials: ["steep", "long"] },
};
const notebook: Notebook = {
  title: "",
  trials: [
    { name: "steep", set: { tip: "13 deg" } },
    { name: "long", set: { "panels[1].length": "130" } },
  ],
  cells: [
    ...cellsOf(`given tip [deg] = 11 deg
table panels | length mm | break deg
| 110 | 5
| 90 | tip
half [mm] = sum(panels.length)`),
    study,
  ],
};
const decision: DecisionCell = { id: "d", kind: "decision", question: "Which?", chosen: "long", why: "glides on" };
const names = ({ trials }: Notebook): string[] => trials.map(({ name }) => name);

describe("what was edited since", () => {
  const edited = editCell(setEntry(setEntry(notebook, "2", 1, 1, "7"), "2", 0, 0, "115"), "1", {
    formula: "12 deg",
    reason: "tried",
  });

  test("is what givens and entries say that they did not, whatever else changed of them", () => {
    expect(changesSince(notebook, edited)).toEqual({
      tip: "12 deg",
      "panels[1].length": "115",
      "panels[2].break": "7",
    });
    expect(changesSince(notebook, notebook)).toEqual({});
  });

  test("made a trial gives back what the notebook had, and the trial has what it said", () => {
    const made = trialOfChanges(notebook, edited, "tried");
    expect(made.cells[1]).toEqual(notebook.cells[1]);
    expect(made.cells[0]).toMatchObject({ formula: "11 deg", reason: "tried" });
    expect(applyTrial(made, made.trials[2] as never).cells).toEqual(edited.cells);
  });

  test("leaves out rows that were put in, and cells that are new", () => {
    const cells = edited.cells.map((cell) =>
      cell.kind === "table" ? { ...cell, rows: [["1", "2"], ...cell.rows] } : cell,
    );
    expect(changesSince(notebook, { ...edited, cells })).toEqual({ tip: "12 deg" });
  });
});

describe("a trial's name", () => {
  test("is changed where studies name it too", () => {
    const renamed = renameTrial(notebook, 0, " steeper ");
    expect(names(renamed)).toEqual(["steeper", "long"]);
    expect(renamed.cells.at(-1)).toMatchObject({ trials: ["steeper", "long"] });
    expect(renameTrial(notebook, 0, "steep")).toBe(notebook);
  });

  test("that is empty or another's is refused with the reason", () => {
    expect(() => renameTrial(notebook, 0, "  ")).toThrow("A trial needs a name.");
    expect(() => renameTrial(notebook, 0, "long")).toThrow("Another trial is called “long”. Choose another name.");
  });

  test("of a further one is free", () => {
    expect(freeTrialName(notebook, "long")).toBe("long (2)");
    expect(names(duplicateTrial(duplicateTrial(notebook, 0), 0))).toEqual(["steep", "steep (3)", "steep (2)", "long"]);
  });
});

test("a trial that is moved stands at its new place", () => {
  expect(names(moveTrial(notebook, 0, 1))).toEqual(["long", "steep"]);
  expect(moveTrial(notebook, 0, 0)).toBe(notebook);
  expect(moveTrial(notebook, 0, 2)).toBe(notebook);
});

test("a trial that is deleted goes from studies too", () => {
  const without = removeTrial(notebook, 0);
  expect(without.cells.at(-1)).toMatchObject({ trials: ["long"] });
  expect(removeTrial(without, 0).cells.at(-1)).not.toHaveProperty("trials");
});

test("a trial taken over is the notebook's own, with its decision after what it changed", () => {
  const adopted = adoptTrial(notebook, 1, decision);
  expect(names(adopted)).toEqual(["steep"]);
  expect(adopted.cells[1]).toMatchObject({
    rows: [
      ["130", "5"],
      ["90", "tip"],
    ],
  });
  expect(adopted.cells[2]).toBe(decision);
  expect(adoptTrial({ ...notebook, trials: [{ name: "none", set: {} }] }, 0, decision).cells.at(-1)).toBe(decision);
});
