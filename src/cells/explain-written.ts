/** The one formula of what is asked about: a cell's, or that of a table's entry. */
import { isUnitFault, parseUnit, unitOf } from "../library/units.ts";
import { namedOf } from "./compile-step.ts";
import { FormulaError } from "./errors.ts";
import type { ValueOf } from "./explain-values.ts";
import { check } from "./formula-check.ts";
import type { Tree } from "./formula-tree.ts";
import { numberShape } from "./shapes.ts";
import { isPlain } from "./standalone-number.ts";
import type { Program, Step } from "./step.ts";
import { cellError } from "./step-run.ts";
import type { Scope, TypedTree } from "./typed-tree.ts";
import type { RecordValue, Result, Value } from "./value.ts";

/** An entry of a table; both count from 0. */
export interface EntryPlace {
  readonly row: number;
  readonly column: number;
}

export interface Written {
  readonly text: string;
  /** Null where it cannot be read. */
  readonly tree: Tree | null;
  /** The same after checking; null where it fails that, and for the body of a function cell. */
  readonly typed: TypedTree | null;
  /** Why it could not be read or checked; of entries only: a cell's error is its result. */
  readonly fault: FormulaError | null;
  /** The unit that an entry without one takes from its column. */
  readonly unit: string | null;
}

/** Null for cells without a formula, with several, and for entries of text or outside the table. */
export function writtenOf(program: Program, step: Step, entry: EntryPlace | undefined): Written | null {
  const { cell, reading, tree: typed } = step;
  if (entry) return entryOf(program, step, entry);
  if (cell.kind !== "given" && cell.kind !== "derived" && cell.kind !== "check") return null;
  const [part] = reading.parts;
  const text = cell.formula;
  return {
    text,
    tree: part && !(part.tree instanceof FormulaError) ? part.tree : null,
    typed,
    fault: null,
    unit: null,
  };
}

function entryOf(program: Program, { cell, reading }: Step, { row, column }: EntryPlace): Written | null {
  const part = reading.parts.find(({ place }) => place?.row === row && place.column === column);
  if (cell.kind !== "table" || !part) return null;
  const { text, tree } = part;
  if (tree instanceof FormulaError) return { text, tree: null, typed: null, fault: tree, unit: null };
  const unit = isPlain(tree) ? (cell.columns[column]?.unit ?? "1") : null;
  const scope: Scope = {
    functions: program.functions,
    near: program.structure.near,
    lookup: (name) => namedOf(program.byName.get(name)),
    calls: { count: 0, isSlow: false },
  };
  try {
    return { text, tree, typed: check(tree, text, scope), fault: null, unit };
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return { text, tree, typed: null, fault: error, unit };
  }
}

/** The result of an entry: out of the table's, or by itself where another entry of the table has failed. */
export function entryResult(
  { cell, name, id }: Step,
  { typed, fault, unit }: Written,
  table: Result | undefined,
  { row, column: index }: EntryPlace,
  tell: ValueOf,
): Result | undefined {
  const column = cell.kind === "table" ? cell.columns[index] : undefined;
  const told = parseUnit(column?.unit ?? "1");
  if (!column || !table || isUnitFault(told)) return table;
  const shape = numberShape(told.dimension, told.text);
  if (table.ok) {
    const value = ((table.value as RecordValue)[column.name] as readonly Value[])[row];
    return value === undefined ? undefined : { ok: true, value, shape };
  }
  if (fault) return { ok: false, error: cellError(fault, name ?? id) };
  const value = typed && tell(typed);
  if (typeof value !== "number") return table;
  const { factor, offset } = unitOf(unit ?? "1");
  return { ok: true, value: value * factor + offset, shape };
}
