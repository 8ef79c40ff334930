import { nearest } from "../../library/units.ts";
import { isNamed, type Notebook, type StudyCell } from "../cell.ts";
import type { Program } from "../step.ts";
import { type BestOutcome, bestStudy } from "./best.ts";
import { type MapOutcome, mapStudy } from "./map-study.ts";
import { type SensitivityOutcome, sensitivityStudy } from "./sensitivity.ts";
import { type SolveOutcome, solveStudy } from "./solve.ts";
import type { Row, Study } from "./study.ts";
import { studyMessages } from "./study-messages.ts";
import { inField } from "./study-refusal.ts";
import type { Known } from "./subject.ts";
import { type SweepOutcome, sweepStudy } from "./sweep-study.ts";

import { type ToleranceOutcome, toleranceStudy } from "./tolerance.ts";

/** What a study comes to, told apart by `study`. */
export type Outcome = SweepOutcome | MapOutcome | SensitivityOutcome | ToleranceOutcome | SolveOutcome | BestOutcome;

/** A study of any sort; its rows are seen without their own form. */
export type AnyStudy = Study<Row, Outcome>;

/** The study of that name. Says in an Error which there are where none has it. */
export function studyNamed({ cells }: Notebook, name: string): StudyCell {
  const studies = cells.filter((cell): cell is StudyCell => cell.kind === "study");
  const found = studies.find((cell) => cell.name === name);
  if (found) return found;
  const names = studies.filter(isNamed).map((cell) => cell.name);
  throw new Error(studyMessages.noStudy(name, nearest(name, names), names));
}

/**
 * Makes a study ready to run: the design compiled, its inputs, results and checks found, its size known. What keeps it
 * from being run is said in a refusal that names the study, the place and the remedy. What is `known` serves again.
 */
export function prepareStudy(
  notebook: Notebook,
  cell: StudyCell,
  functions: Program["functions"],
  known?: Known,
): AnyStudy {
  return inField(
    "inputs",
    null,
    () => sorts[cell.study](notebook, cell, functions, known) as unknown as AnyStudy,
    (message) => studyMessages.in(cell.name, message),
  );
}

const sorts = {
  sweep: sweepStudy,
  map: mapStudy,
  sensitivity: sensitivityStudy,
  tolerance: toleranceStudy,
  solve: solveStudy,
  best: bestStudy,
} as const;
