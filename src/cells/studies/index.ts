/** What studies offer to the rest: to prepare one, to run it bit by bit, to join its parts, and what each comes to. */
export type { BestOutcome, Design } from "./best.ts";
export type { MapOutcome } from "./map-study.ts";
export { bandOf, type Difference, differenceOf } from "./no-difference.ts";
export { joinParts, type Part, partOf, readShare } from "./parts.ts";
export { type AnyStudy, type Outcome, prepareStudy, studyNamed } from "./prepare.ts";
export type { Effect, SensitivityOutcome } from "./sensitivity.ts";
export type { SolveOutcome } from "./solve.ts";
export type { Sample } from "./statistics.ts";
export type { Row, Study, ToldResult } from "./study.ts";
export type { SweepCurve, SweepOutcome } from "./sweep-study.ts";
export type { ToleranceOutcome } from "./tolerance.ts";
export { rowsOf, type Share, type Work, workOn } from "./work.ts";
