import { describe, expect, test } from "vitest";
import type { Cell, StudyCell } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { concealedCells } from "../../src/cells/concealed.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { rename } from "../../src/cells/rename.ts";
import { renameColumn } from "../../src/cells/rename-column.ts";
import { reportOf } from "../../src/cells/report.ts";
import { insertRowInTrials, removeRowInTrials } from "../../src/cells/table-rows.ts";
import { functions } from "../../src/library/index.ts";
import { cellsOf } from "./notebook-text.ts";

const design = cellsOf(`given tip [deg] from 0 deg to 20 deg = 11 deg
table panels | length mm | break deg
| 110 | 5
| 90 | tip
half [mm] = sum(panels.length * cos(panels.break))
odd = 1 / (tip / 1 deg - 11)
check long = half > 100 mm`);
const study: StudyCell = {
  id: "s",
  kind: "study",
  name: "bend",
  study: "sweep",
  inputs: [{ input: "tip" }, { input: "panels[1].length", pair: "panels[2].length" }],
  results: ["half", "2 * half"],
  checks: ["long"],
};
const withStudy = (patch: Partial<StudyCell>, more = ""): Cell[] => [
  ...design,
  { ...study, ...patch },
  ...(more ? cellsOf(more).map((cell) => ({ ...cell, id: `m${cell.id}` })) : []),
];
const errorOf = (cells: readonly Cell[], id = "s") => {
  const result = runPlan(compile(cells, functions)).get(id);
  return result?.ok ? null : `${result?.error.code}: ${result?.error.message}`;
};
const notebook = { title: "", trials: [], cells: withStudy({}) };
const studyIn = (cells: readonly Cell[]) => cells.find((cell): cell is StudyCell => cell.kind === "study");

describe("a study as a cell", () => {
  test("has no error where all that it names is there", () => {
    expect(errorOf(withStudy({}))).toBeNull();
    expect(errorOf(withStudy({ inputs: [], results: [], checks: [] }))).toBeNull();
  });

  test.each<[Partial<StudyCell>, string]>([
    [{ inputs: [{ input: "tpi" }] }, "unknown_name: There is no cell named tpi. Did you mean tip?"],
    [{ inputs: [{ input: "half" }] }, "wrong_argument: half is computed. Only givens and table entries can be set."],
    [{ inputs: [{ input: "panels" }] }, "panels is a table. Name one entry of it, such as panels[1].length."],
    [{ inputs: [{ input: "panels[3].break" }] }, "panels has no row 3: it has 2, counted from 1."],
    [{ inputs: [{ input: "tip", pair: "panels[1].brake" }] }, "panels has no column brake. Did you mean break?"],
    [{ results: ["halv"] }, "unknown_name: There is no cell named halv. Did you mean half?"],
    [{ results: ["half +"] }, "syntax: "],
    [{ results: ["panels.length"] }, "A study tells numbers; panels.length is a list, each element a length."],
    [{ results: ["half + tip"] }, "wrong_dimension: "],
    [{ checks: ["half"] }, "half is not a check. Here stand names of checks."],
    [{ checks: ["longer"] }, "unknown_name: There is no cell named longer."],
    [{ results: ["odd"] }, "waits: Waits for odd."],
  ])("with %j says what is wrong", (patch, message) => {
    expect(errorOf(withStudy(patch))).toContain(message);
  });

  test("has no value that a formula could take", () => {
    expect(errorOf(withStudy({}, "twice = 2 * bend"), "m1")).toBe(
      "wrong_shape: bend is a study and has no value. Name what it studies.",
    );
  });

  test("follows when a cell or a column that it names is renamed", () => {
    const renamed = rename(rename(notebook, "1", "tip_break", functions), "3", "half_span", functions);
    expect(studyIn(renamed.cells)).toEqual({
      ...study,
      inputs: [{ input: "tip_break" }, study.inputs[1]],
      results: ["half_span", "2 * half_span"],
    });
    expect(studyIn(rename(notebook, "5", "wide", functions).cells)?.checks).toEqual(["wide"]);
    expect(studyIn(renameColumn(notebook, "2", 0, "width").cells)?.inputs[1]).toEqual({
      input: "panels[1].width",
      pair: "panels[2].width",
    });
    expect(studyIn(rename(notebook, "s", "bending", functions).cells)).toEqual({ ...study, name: "bending" });
    expect(studyIn(rename(notebook, "4", "strange", functions).cells)).toBe(studyIn(notebook.cells));
  });

  test("goes on naming the same entries when rows are put in and taken out", () => {
    const shifted = insertRowInTrials(notebook, "2", 1);
    expect(studyIn(shifted.cells)?.inputs[1]).toEqual({ input: "panels[1].length", pair: "panels[3].length" });
    expect(studyIn(removeRowInTrials(notebook, "2", 1).cells)?.inputs[1]).toEqual({ input: "panels[1].length" });
    expect(studyIn(removeRowInTrials(notebook, "2", 0).cells)?.inputs).toEqual([{ input: "tip" }]);
  });

  test("is concealed while a question hides what it tells of", () => {
    expect(concealedCells(compile(notebook.cells, functions), new Set(["3"])).get("s")).toBe("3");
  });

  test("stands in the report by its name, without a value", () => {
    const program = compile(notebook.cells, functions);
    const report = reportOf(notebook, program, runPlan(program), () => "");
    expect(report.cells.bend).toEqual({ kind: "study", value: null, dimension: null, text: "sweep", error: null });
  });
});

describe("the ± of a given", () => {
  const plusMinus = (given: string, plus_minus: string) => {
    const cells = cellsOf(given).map((cell): Cell => (cell.kind === "given" ? { ...cell, plus_minus } : cell));
    const step = compile(cells, functions).steps[0];
    return step?.error ? step.error.message : step?.plusMinus;
  };

  test("is a difference of its unit, or a share of the value", () => {
    expect(plusMinus("given a [mm] = 3 mm", "0.5 mm")).toEqual({ size: 0.0005, isShare: false });
    expect(plusMinus("given a [mm] = 3 mm", "5%")).toEqual({ size: 0.05, isShare: true });
    expect(plusMinus("given a [%] = 3%", "1%")).toEqual({ size: 0.01, isShare: false });
    expect(plusMinus("given a [°C] = 20 °C", "2 K")).toEqual({ size: 2, isShare: false });
  });

  test.each([
    ["given a [mm] = 3 mm", "0.5", "The ±: The unit mm is for a length, but this is a number."],
    ["given a [mm] = 3 mm", "0 mm", "The ±: It must be more than zero."],
    ["given a [mm] = 3 mm", "-1 mm", "The ±: It must be more than zero."],
    ["given a [mm] = 3 mm", "b", "The ±: A given stands on its own and cannot use b."],
    ["given a = [1, 2]", "1", "Only a single number is off by ±. Take the ± away."],
  ])("%s ± %s says what is wrong", (given, text, message) => {
    expect(plusMinus(given, text)).toContain(message);
  });
});
