/** What the cells offer to the views and to the two programs. */
export {
  type FigureCell,
  figuresOnBoard,
  isFigure,
  moveFigure,
  type PinnedCell,
  pinFigure,
  unpinFigure,
} from "./board.ts";
export type * from "./cell.ts";
export { isNamed } from "./cell.ts";
export { chartPaths } from "./chart-paths.ts";
export {
  type Compared,
  type ComparedColumn,
  type ComparedRow,
  type Comparison,
  checkedNumbers,
  compareTrials,
  comparisonOf,
} from "./compare.ts";
export { compile } from "./compile.ts";
export { concealedBraces, concealedCells } from "./concealed.ts";
export { Crew } from "./crew/crew.ts";
export { LiveStudies, type StudyNews, type StudyOf } from "./crew/live-studies.ts";
export type { Answer } from "./crew/orders.ts";
export type { Port } from "./crew/port.ts";
export { type CellError, type ErrorCode, FormulaError } from "./errors.ts";
export { type Explanation, explain, type Subject } from "./explain.ts";
export type { ExplainedArgument, ExplainedCall } from "./explain-calls.ts";
export type { EntryPlace, Written } from "./explain-written.ts";
export { parser } from "./formula.grammar";
export { limits, parseFormula } from "./formula-parse.ts";
export { nodes, type Range, type Tree } from "./formula-tree.ts";
export type { Step as HistoryStep } from "./history.ts";
export { constants, isName, keywords, readSignature, tidyName } from "./names.ts";
export { duplicateCell, newCell, unusedName } from "./new-cell.ts";
export * from "./notebook.ts";
export { NotebookError } from "./notebook-errors.ts";
export { packNotebook, readNotebook, writeNotebook } from "./notebook-file.ts";
export { studyLimits } from "./notebook-schema.ts";
export { override } from "./override.ts";
export { segments } from "./path.ts";
export { runPlan } from "./plan.ts";
export { rename } from "./rename.ts";
export { renameColumn } from "./rename-column.ts";
export { type CellReport, type Report, reportOf } from "./report.ts";
export { Session } from "./session.ts";
export { describe, dimensionText, fieldOf, numberWithin } from "./shapes.ts";
export { type TrialFault, textAt, withTrial } from "./shown-trial.ts";
export type { Program, Step } from "./step.ts";
export type { BestOutcome, Design } from "./studies/best.ts";
export type { MapOutcome } from "./studies/map-study.ts";
export { bandOf, type Difference, differenceOf } from "./studies/no-difference.ts";
export { joinParts, type Part, partOf, readShare } from "./studies/parts.ts";
export { type AnyStudy, type Outcome, prepareStudy, studyNamed } from "./studies/prepare.ts";
export type { Effect, SensitivityOutcome } from "./studies/sensitivity.ts";
export type { SolveOutcome } from "./studies/solve.ts";
export type { Sample } from "./studies/statistics.ts";
export type { Row, Study, ToldResult } from "./studies/study.ts";
export type { StudyFault, StudyField } from "./studies/study-refusal.ts";
export { studyText } from "./studies/study-text.ts";
export type { SweepCurve, SweepOutcome } from "./studies/sweep-study.ts";
export type { ToleranceOutcome } from "./studies/tolerance.ts";
export { rowsOf, type Share, type Work, workOn } from "./studies/work.ts";
export { isSlowSweep, sweep } from "./sweep.ts";
export { type Block, blockText, clearBlock, putBlock, readBlock } from "./table-block.ts";
export { insertRowInTrials, moveRowInTrials, removeColumnInTrials, removeRowInTrials } from "./table-rows.ts";
export { entryTarget, readTarget } from "./target.ts";
export {
  adoptTrial,
  changesSince,
  duplicateTrial,
  freeTrialName,
  insertTrial,
  moveTrial,
  removeTrial,
  renameTrial,
  trialOfChanges,
} from "./trial-edits.ts";
export { applyTrial, trialNamed } from "./trials.ts";
export { partsOf } from "./typed-parts.ts";
export type { TypedTree } from "./typed-tree.ts";
export type { Margin, RecordValue, Result, Value } from "./value.ts";
