/** Trials side by side: the baseline and each trial across, chosen results and every check down. */
import type { Notebook } from "./cell.ts";
import { compile } from "./compile.ts";
import { equalNumbers } from "./formula-compile.ts";
import { runPlan } from "./plan.ts";
import { probe } from "./probe.ts";
import type { Program, Step } from "./step.ts";
import { differenceOf } from "./studies/no-difference.ts";
import { applyTrial } from "./trials.ts";
import type { TypedTree } from "./typed-tree.ts";
import type { Failed, Result } from "./value.ts";

export interface Comparison {
  /** The baseline first. */
  readonly columns: readonly {
    /** Null for the baseline. */
    readonly trial: string | null;
    /** Why the trial cannot be made; its values are then null. */
    readonly error: string | null;
  }[];
  readonly rows: readonly ComparedRow[];
}

export interface ComparedRow {
  /** A formula, often just a name; of a check its name. */
  readonly text: string;
  readonly kind: "value" | "check";
  /** What is better, where the checks of the notebook say so. */
  readonly goal: "least" | "most" | null;
  /** One for each column. */
  readonly values: readonly Compared[];
}

/** The baseline or a trial, compiled and computed. */
export interface ComparedColumn {
  /** Null for the baseline. */
  readonly trial: string | null;
  /** Why the trial cannot be made; there is then no program. */
  readonly error: string | null;
  readonly program: Program | null;
  /** The result of a cell, by id; undefined where it is not there, or not yet. */
  readonly result: (id: string) => Result | undefined;
}

export interface Compared {
  /** Null in a trial that cannot be made, and where it is not there yet. */
  readonly result: Result | null;
  /** How far a number moved from the baseline in SI, and as a share of it; null for others and in the baseline. */
  readonly moved: number | null;
  readonly share: number | null;
  /** False where it moved less than could be seen. */
  readonly isSeen: boolean;
  /** The best of its row, where there is one and what is better is known; for checks, the largest margin. */
  readonly isBest: boolean;
  /** A check that does not hold, or a value that cannot be computed. */
  readonly isFailing: boolean;
}

export interface Choices {
  /** Formulas to compare; every derived number where left out. */
  readonly texts?: readonly string[];
  /** Trials by name, in this order; all where left out. */
  readonly trials?: readonly string[];
  /** How far a result is known, ±, in SI; null or left out where that is not known. */
  readonly bandOf?: (text: string) => number | null;
}

/** Compiles and computes the baseline and each trial. What is compiled already can be handed in. */
export function compareTrials(
  notebook: Notebook,
  functions: Program["functions"],
  { texts, trials, bandOf = () => null }: Choices = {},
  baseline: Program = compile(notebook.cells, functions),
): Comparison {
  const chosen = notebook.trials.filter(({ name }) => trials?.includes(name) ?? true);
  if (trials) chosen.sort((a, b) => trials.indexOf(a.name) - trials.indexOf(b.name));
  const made = chosen.map((trial) =>
    madeColumn(trial.name, () => compile(applyTrial(notebook, trial).cells, functions, baseline)),
  );
  const columns = [{ trial: null, error: null, program: baseline }, ...made].map((column): ComparedColumn => {
    const results = column.program && runPlan(column.program);
    return { ...column, result: (id) => results?.get(id) };
  });
  return comparisonOf(baseline, columns, texts ?? derivedNumbers(baseline), bandOf);
}

/**
 * Compares columns that are computed already, the baseline first: the results of these formulas, then every check of the
 * baseline.
 */
export function comparisonOf(
  baseline: Program,
  columns: readonly ComparedColumn[],
  texts: readonly string[],
  bandOf: (text: string) => number | null,
): Comparison {
  const goals = goalsOf(baseline);
  const values = texts.map((text): ComparedRow => {
    const goal = goals.get(text.trim()) ?? null;
    const results = columns.map((column) => resultIn(column, text));
    return { text, kind: "value", goal, values: comparedNumbers(results, goal, bandOf(text)) };
  });
  const checks = baseline.cells.flatMap(({ id, kind }): ComparedRow[] => {
    const name = kind === "check" ? baseline.byId.get(id)?.name : undefined;
    if (!name) return [];
    const results = columns.map(({ result }) => result(id) ?? null);
    return [{ text: name, kind: "check", goal: null, values: comparedChecks(results) }];
  });
  return { columns: columns.map(({ trial, error }) => ({ trial, error })), rows: [...values, ...checks] };
}

/** The numbers that the checks of a program look at, in its order: what is worth comparing first. */
export const checkedNumbers = (program: Program): string[] => [...goalsOf(program).keys()];

function resultIn({ program, result }: ComparedColumn, text: string): Result | null {
  if (!program) return null;
  // A cell's own error says more than that something waits for it.
  const own = program.byName.get(text.trim());
  if (own) return result(own.id) ?? null;
  const step = probe(program, text, "compared");
  const inputs = step.inputs.map(result);
  return inputs.every((input) => input !== undefined) ? step.run(inputs as Result[]) : null;
}

function madeColumn(
  trial: string,
  make: () => Program,
): { trial: string; error: string | null; program: Program | null } {
  try {
    return { trial, error: null, program: make() };
  } catch (error) {
    if (!(error instanceof Error && error.constructor === Error)) throw error;
    return { trial, error: error.message, program: null };
  }
}

const derivedNumbers = ({ cells, byId }: Program): string[] =>
  cells.flatMap(({ id, kind }) => {
    const step = kind === "derived" ? byId.get(id) : undefined;
    return step?.shape?.kind === "number" && step.name ? [step.name] : [];
  });

const numberIn = (result: Result | null | undefined): number | null =>
  result?.ok && typeof result.value === "number" ? result.value : null;

function comparedNumbers(
  results: readonly (Result | null)[],
  goal: ComparedRow["goal"],
  band: number | null,
): Compared[] {
  const numbers = results.map(numberIn);
  const before = numbers[0] ?? null;
  const best = bestOf(numbers, goal);
  return results.map((result, column) => {
    const now = numbers[column] ?? null;
    const difference = column > 0 && before !== null && now !== null ? differenceOf(before, now, band) : null;
    return {
      result,
      moved: difference?.size ?? null,
      share: difference?.share ?? null,
      isSeen: difference?.isSeen ?? true,
      isBest: isBest(now, best),
      isFailing: isFailed(result),
    };
  });
}

function comparedChecks(results: readonly (Result | null)[]): Compared[] {
  const margins = results.map((result) => (result?.ok ? (result.margin?.gap ?? null) : null));
  const best = bestOf(margins, "most");
  return results.map((result, column) => ({
    result,
    moved: null,
    share: null,
    isSeen: true,
    isBest: isBest(margins[column] ?? null, best) && result?.ok === true && result.value === true,
    isFailing: isFailed(result) || (result?.ok === true && result.value !== true),
  }));
}

const isFailed = (result: Result | null): result is Failed => result !== null && !result.ok;

/** What differs by rounding alone is as good. */
const isBest = (now: number | null, best: number | null): boolean =>
  now !== null && best !== null && equalNumbers(now, best);

/** The best of several numbers; null where no direction is known, or where all are the same. */
function bestOf(numbers: readonly (number | null)[], goal: ComparedRow["goal"]): number | null {
  const known = numbers.filter((each) => each !== null);
  const [first = 0] = known;
  if (goal === null || known.length < 2 || known.every((each) => equalNumbers(each, first))) return null;
  return goal === "least" ? Math.min(...known) : Math.max(...known);
}

/** What the checks want of a result: more of it where each of them asks that it be larger than a limit, and less likewise. */
function goalsOf(program: Program): Map<string, "least" | "most" | null> {
  const goals = new Map<string, "least" | "most" | null>();
  const note = (side: TypedTree, step: Step, goal: "least" | "most"): void => {
    const text = step.reading.parts[0]?.text.slice(...side.at).trim();
    if (!text || side.type === "constant") return;
    goals.set(text, goals.has(text) && goals.get(text) !== goal ? null : goal);
  };
  const walk = (tree: TypedTree, step: Step): void => {
    if (tree.type === "and") {
      walk(tree.left, step);
      walk(tree.right, step);
    }
    if (tree.type !== "comparison" || tree.sign === "=" || tree.sign === "!=") return;
    const less = tree.sign === "<" || tree.sign === "<=";
    note(tree.left, step, less ? "least" : "most");
    note(tree.right, step, less ? "most" : "least");
  };
  for (const step of program.steps) if (step.cell.kind === "check" && step.tree) walk(step.tree, step);
  return goals;
}
