import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Notebook, StudyCell } from "../../../src/cells/cell.ts";
import { compile } from "../../../src/cells/compile.ts";
import { readNotebook, writeNotebook } from "../../../src/cells/notebook-file.ts";
import { override } from "../../../src/cells/override.ts";
import { runPlan } from "../../../src/cells/plan.ts";
import { prepareStudy, studyNamed } from "../../../src/cells/studies/prepare.ts";
import { rowsOf, workOn } from "../../../src/cells/studies/work.ts";
import { functions } from "../../../src/library/index.ts";
import { quickPart } from "../quick-part.ts";
import { editedNotebook } from "../random-edits.ts";
import { notebookWith } from "./study-cases.ts";

describe("a study asked for by name", () => {
  const notebook = notebookWith("given a = 1", { study: "sweep", inputs: [], results: [] });

  test("is found, or is told", () => {
    expect(studyNamed(notebook, "what_if").id).toBe("s");
    expect(() => studyNamed(notebook, "what_is")).toThrow("There is no study named what_is. Did you mean what_if?");
    expect(() => studyNamed(notebook, "a")).toThrow("There is no study named a. There are what_if.");
    expect(() => studyNamed({ ...notebook, cells: [] }, "a")).toThrow(
      "There is no study named a. The notebook has none.",
    );
  });
});

test("a sweep of any random notebook gives what the notebook gives with the value written in, gaps where that fails", () => {
  const property = fc.property(editedNotebook, fc.integer({ min: -3, max: 3 }), ({ notebook, edits }, value) => {
    const edited = edits.reduce((now, edit) => edit(now), notebook);
    const program = compile(edited.cells, functions);
    const given = program.steps.find(({ cell, shape }) => cell.kind === "given" && shape?.kind === "number");
    const results = program.steps.filter(
      ({ cell, shape, name }) => cell.kind === "derived" && shape?.kind === "number" && name,
    );
    if (!given?.name || given.shape?.kind !== "number" || results.length === 0) return;
    const { unit } = given.shape;
    const text = `${value}${unit === "1" ? "" : ` ${unit}`}`;
    const study: StudyCell = {
      id: "study",
      kind: "study",
      name: "study",
      study: "sweep",
      inputs: [{ input: given.name, range: [text, `9${unit === "1" ? "" : ` ${unit}`}`], points: 2 }],
      results: results.map(({ name }) => name ?? ""),
    };
    const notebookWithStudy: Notebook = { ...edited, cells: [...edited.cells, study] };
    const [row] = rowsOf(prepareStudy(notebookWithStudy, study, functions), { index: 1, of: 2 });
    const written = runPlan(compile(override(edited, given.name, text).cells, functions));
    results.forEach((result, index) => {
      const direct = written.get(result.id);
      if (!direct?.ok) expect(row?.[index]).toEqual(expect.any(String));
      else if (typeof direct.value === "number") expect(row?.[index]).toBeCloseTo(direct.value, 9);
    });
  });
  fc.assert(property, { seed: 64, numRuns: 300 });
});

test("studies of the demo run whole: every sort, over the real design", () => {
  const plover = quickPart(
    readNotebook(readFileSync(new URL("../../../notebooks/plover.json", import.meta.url), "utf8")),
  );
  const study = (fields: Partial<StudyCell>): StudyCell => ({
    id: "study",
    kind: "study",
    name: "study",
    study: "sweep",
    inputs: [],
    results: ["eda", "loss"],
    ...fields,
  });
  const studies = [
    study({ inputs: [{ input: "tip_break", points: 5 }] }),
    study({
      study: "map",
      inputs: [
        { input: "tip_break", points: 4 },
        { input: "span", points: 3 },
      ],
    }),
    study({ study: "sensitivity" }),
    study({
      study: "tolerance",
      inputs: [
        { input: "tip_break", plus_minus: "1 deg" },
        { input: "panels[2].thickness", plus_minus: "0.2" },
      ],
      builds: 20,
    }),
    study({ study: "solve", inputs: [{ input: "tip_break", points: 11 }], results: ["eda"], target: "9.5 deg" }),
  ];
  for (const cell of studies) {
    const notebook = { ...plover, cells: [...plover.cells, cell] };
    expect(readNotebook(writeNotebook(notebook))).toEqual(notebook);
    expect(runPlan(compile(notebook.cells, functions)).get("study")).toMatchObject({ ok: true });
    const work = workOn(prepareStudy(notebook, cell, functions));
    while (!work.next(10));
    expect(work.rows.flat().filter((each) => typeof each === "string")).toEqual([]);
  }
}, 120_000);
