/** What a study studies: a compiled design with the results and checks that are told of each variant. */
import type { Notebook, StudyCell } from "../cell.ts";
import { compile } from "../compile.ts";
import { FormulaError } from "../errors.ts";
import { messages } from "../messages.ts";
import { OnDemand } from "../on-demand.ts";
import { numberProbe } from "../probe.ts";
import { describe, dimensionText } from "../shapes.ts";
import type { Program, Step } from "../step.ts";
import type { Failed, Result } from "../value.ts";
import { type Place, type Variants, variantsOf } from "../variants.ts";
import type { ToldResult } from "./study.ts";
import { studyMessages } from "./study-messages.ts";
import { refusalAt, StudyRefusal } from "./study-refusal.ts";

export interface Subject {
  readonly program: Program;
  /** Results of the present design, by id. */
  readonly present: (id: string) => Result | undefined;
  readonly results: readonly Step[];
  readonly checks: readonly Step[];
  readonly told: readonly ToldResult[];
  readonly checkNames: readonly string[];
}

/** What is compiled and computed already of a notebook much like the one that is studied. */
export interface Known {
  readonly program: Program;
  readonly results: OnDemand;
}

/**
 * The design of a notebook as a study of it sees it; of the present design only what is asked for is computed. Says in an
 * Error which result or check is wrong.
 */
export function subjectOf(
  notebook: Notebook,
  cell: StudyCell,
  functions: Program["functions"],
  known?: Partial<Known>,
): Subject {
  const program = compile(notebook.cells, functions, known?.program);
  const results = known?.results ?? new OnDemand();
  if (cell.results.length === 0) throw refusalAt("result", null, studyMessages.noResult);
  const wanted = cell.results.map((text, index) => resultStep(program, text, `${cell.id} result ${index + 1}`));
  const checks = checksOf(program, cell.checks);
  return {
    program,
    present: (id) => results.result(program, id),
    results: wanted,
    checks,
    told: wanted.map(({ shape }, index) => ({
      text: cell.results[index] ?? "",
      dimension: shape ? dimensionText(shape) : "1",
      unit: shape?.kind === "number" ? shape.unit : "1",
    })),
    checkNames: checks.map(({ name }) => name ?? ""),
  };
}

/** The subject run over and over, results first, then checks. */
export const variantsOfSubject = ({ program, present, results, checks }: Subject, places: readonly Place[]): Variants =>
  variantsOf(program, places, [...results, ...checks], present);

/** Of the variant that ran last: a result as a number in SI, a check as 1 where it holds and 0 where not, or why neither. */
export function toldOf({ program }: Subject, variants: Variants, index: number): number | string {
  const result = variants.result(index);
  return result.ok ? Number(result.value) : reasonOf(result, program, variants);
}

/** By how much a check holds (fails, where negative), in SI; null where it has no margin. */
export function marginOf(variants: Variants, index: number): number | null {
  const result = variants.result(index);
  return result.ok ? (result.margin?.gap ?? null) : null;
}

/** Why a result is missing: the error of the cell at which it began. */
function reasonOf({ error }: Failed, program: Program, variants: Variants): string {
  const root = program.byName.get(error.root) ?? program.byId.get(error.root);
  const began = error.code === "waits" && root ? variants.resultOf(root.id) : undefined;
  return began && !began.ok ? studyMessages.failedAt(error.root, began.error.message) : error.message;
}

function resultStep(program: Program, text: string, id: string): Step {
  try {
    return numberProbe(program, text, id, ({ shape }) =>
      messages.studyNumber(text, shape ? describe(shape) : "nothing"),
    );
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    throw new StudyRefusal(
      { field: "result", of: text, sentence: error.message },
      studyMessages.inResult(text, error.message),
    );
  }
}

/** The named checks, else all checks of the notebook; one that has an error of its own is a gap in every variant. */
function checksOf(program: Program, names: readonly string[] | undefined): Step[] {
  if (!names) {
    return program.cells.flatMap(({ id, kind }) => (kind === "check" ? (program.byId.get(id) ?? []) : []));
  }
  return names.map((name) => {
    const step = program.byName.get(name.trim());
    if (!step) throw refusalAt("checks", name, messages.unknownName(name.trim(), null));
    if (step.cell.kind !== "check") throw refusalAt("checks", name, messages.studyNeedsCheck(name.trim()));
    return step;
  });
}
