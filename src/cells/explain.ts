/** Why a number is what it is: what its formula takes, what it was computed from, and what it feeds. */
import type { AnyFunctionSpec } from "../library/spec.ts";
import { type ExplainedCall, explainCalls } from "./explain-calls.ts";
import { type Secrets, secretsOf, type ValueOf, valuesOf } from "./explain-values.ts";
import { type EntryPlace, entryResult, type Written, writtenOf } from "./explain-written.ts";
import { nodes } from "./formula-tree.ts";
import type { Program, Step } from "./step.ts";
import { partsOf } from "./typed-parts.ts";
import type { TypedTree } from "./typed-tree.ts";
import type { Result } from "./value.ts";

/** What is asked about: a cell, or one entry of a table. */
export interface Subject {
  readonly id: string;
  readonly entry?: EntryPlace;
}

export interface Explanation {
  readonly step: Step;
  /** Its formula as written; null for a whole table, and for cells without one formula. */
  readonly written: Written | null;
  readonly result: Result | undefined;
  /** The cells its formula names, function cells among them, in order of appearance. */
  readonly takes: readonly Step[];
  /** The cells whose formulas name it; of an entry, its table. */
  readonly feeds: readonly Step[];
  /** The givens, and tables of plain entries, that it rests on in the end, in the order of the notebook. */
  readonly ground: readonly Step[];
  /** The library functions that its formula calls, in order of appearance. */
  readonly functions: readonly AnyFunctionSpec[];
  /** Every call in its formula, with its arguments, the outer before the inner. */
  readonly calls: readonly ExplainedCall[];
  /** The cell at which its error began; null where that is itself, or where there is none. */
  readonly origin: Step | null;
  /**
   * The value of a part of its formula, with the numbers that are in it now; null where it cannot be told, or where it
   * would give a hidden value away.
   */
  readonly valueOf: ValueOf;
}

/**
 * Explains a cell or an entry; null for a cell that computes nothing, and for what is not there. `concealed` holds the
 * ids of the cells whose value is hidden.
 */
export function explain(
  program: Program,
  results: (id: string) => Result | undefined,
  subject: Subject,
  concealed: { has(id: string): boolean } = new Set(),
): Explanation | null {
  const { id, entry } = subject;
  const place = program.structure.placeOfId.get(id);
  const step = place === undefined ? undefined : program.steps[place];
  if (place === undefined || !step) return null;
  const written = writtenOf(program, step, entry);
  if (entry && !written) return null;
  const at = (places: readonly number[] = []): Step[] =>
    [...new Set(places)].flatMap((each) => program.steps[each] ?? []);
  const needs = at(program.structure.needs[place]);
  const takes = entry ? needs.filter((need) => isNamedIn(written, need)) : needs;
  const secrets: Secrets = secretsOf(program, step, written?.text ?? "", concealed);
  const tell = valuesOf(step, program, results, secrets);
  const result = entry && written ? entryResult(step, written, results(id), entry, tell) : results(id);
  return {
    step,
    written,
    result,
    takes,
    feeds: entry ? [step] : at(program.structure.neededBy[place]),
    ground: groundOf(program, takes),
    functions: written?.typed ? functionsIn(written.typed) : [],
    calls: written ? explainCalls(written, tell) : [],
    origin: originOf(program, step, result),
    valueOf: tell,
  };
}

function functionsIn(tree: TypedTree): AnyFunctionSpec[] {
  return [...new Set(partsOf(tree).flatMap((part) => (part.type === "call" ? part.spec : [])))];
}

function isNamedIn(written: Written | null, { name }: Step): boolean {
  if (!written?.tree) return false;
  for (const node of nodes(written.tree)) {
    if ((node.type === "name" || node.type === "call") && node.name === name) return true;
  }
  return false;
}

/** All that needs nothing more, on the way down from some cells. */
function groundOf({ structure, steps, cells }: Program, from: readonly Step[]): Step[] {
  const seen = new Set(from.flatMap(({ id }) => structure.placeOfId.get(id) ?? []));
  // A set that grows while it is walked is walked to its end.
  for (const place of seen) for (const need of structure.needs[place] ?? []) seen.add(need);
  const ground = new Map(
    [...seen].flatMap((place) => {
      const step = steps[place];
      return step && !step.definition && (structure.needs[place] ?? []).length === 0 ? [[step.id, step] as const] : [];
    }),
  );
  return cells.flatMap(({ id }) => ground.get(id) ?? []);
}

function originOf(program: Program, step: Step, result: Result | undefined): Step | null {
  if (!result || result.ok) return null;
  const origin = program.byName.get(result.error.root) ?? program.byId.get(result.error.root);
  return origin && origin.id !== step.id ? origin : null;
}
