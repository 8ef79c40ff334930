import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Notebook, StudyCell } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { readNotebook } from "../../src/cells/notebook-file.ts";
import { override } from "../../src/cells/override.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { prepareStudy } from "../../src/cells/studies/prepare.ts";
import { rowsOf, workOn } from "../../src/cells/studies/work.ts";
import { functions } from "../../src/library/index.ts";
import { quickPart } from "../cells/quick-part.ts";
import type { Bench } from "./bench.ts";
import { perCall, ratioText } from "./timing.ts";

type Fields = Pick<StudyCell, "study" | "inputs" | "results"> & Partial<StudyCell>;

/** A study of a notebook, ready to run. */
function studyOf(notebook: Notebook, fields: Fields) {
  const cell: StudyCell = { id: "bench", kind: "study", name: "bench", ...fields };
  return prepareStudy({ ...notebook, cells: [...notebook.cells, cell] }, cell, functions);
}

/** Variants of whole designs in one thread: as studies run them, against the notebook written anew for each. */
const variants: Bench = async ({ root }) => {
  const open = (name: string) => readNotebook(readFileSync(join(root, "notebooks", name), "utf8"));
  const plover = quickPart(open("plover.json"));
  const study = studyOf(plover, {
    study: "sweep",
    inputs: [{ input: "tip_break", points: 400 }],
    results: ["eda", "loss"],
  });
  const sweep = perCall(() => rowsOf(study), { milliseconds: 500, rounds: 3 }) / study.pieces;
  let program = compile(plover.cells, functions);
  let angle = 0;
  const anew = perCall(() => {
    // Never the same twice, so that nothing is remembered.
    angle += 0.001;
    program = compile(override(plover, "tip_break", `${angle} deg`).cells, functions, program);
    runPlan(program);
  });
  const lesson = studyOf(open("from-flat-to-bent.json"), {
    study: "tolerance",
    inputs: [
      { input: "tip_bend", plus_minus: "1 deg" },
      { input: "v_bend", plus_minus: "1 deg", law: "normal" },
    ],
    results: ["tip_righting", "v_righting"],
    builds: 10_000,
  });
  const start = performance.now();
  const work = workOn(lesson);
  while (!work.next(1000));
  lesson.conclude(work.rows);
  const builds = performance.now() - start;
  return [
    {
      figure: "variant of the demo in a sweep, against the notebook compiled and computed anew",
      measured: `${(1000 / sweep).toFixed(0)} a second against ${(1000 / anew).toFixed(0)}`,
      goal: "none set",
      ratio: `${ratioText(anew / sweep)} times as fast`,
    },
    {
      figure: "tolerance of the closed-form lesson, 10,000 builds, with what it comes to",
      measured: `${(builds / 1000).toFixed(2)} s`,
      goal: "none set",
      ratio: `${ratioText(10_000 / builds)} builds a millisecond`,
    },
  ];
};

export default variants;
