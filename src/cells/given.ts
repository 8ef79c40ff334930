/** What is particular to a given: it names no cell, may have a range to be dragged over, and may be off by so much. */
import { isDimensionless } from "../library/quantity.ts";
import type { FunctionTable } from "../library/spec.ts";
import type { GivenCell } from "./cell.ts";
import { FormulaError } from "./errors.ts";
import { messages } from "./messages.ts";
import { type Meaning, standaloneNumber } from "./standalone-number.ts";
import type { PlusMinus, Step } from "./step.ts";
import { told } from "./told.ts";
import type { TypedTree } from "./typed-tree.ts";

/**
 * The range of a given in SI, or null where it has none. Its formulas stand on their own, as the given's does, and are
 * of its dimension. Throws a FormulaError bad_entry where one is not, or where the range is empty.
 */
export function rangeOf(cell: GivenCell, value: TypedTree, functions: FunctionTable): Step["range"] {
  if (!cell.range) return null;
  if (value.shape.kind !== "number") throw new FormulaError("bad_entry", messages.rangeWithoutNumber, [0, 0]);
  const { unit } = value.shape;
  return readRange(cell.range, cell.unit ?? unit, unit, functions, false);
}

/**
 * A range in SI, written in formulas that stand on their own; `shown` is the unit in which a fault is told. Throws a
 * FormulaError bad_entry.
 */
export function readRange(
  range: readonly string[],
  unit: string,
  shown: string,
  functions: FunctionTable,
  takesUnit: boolean,
): NonNullable<Step["range"]> {
  // A step is a difference: 1 K, not the point 1 °C of the scale.
  const [from, to, step] = range.map((text, index) =>
    limit(text, index, { unit, isPoint: index < 2, takesUnit }, functions),
  );
  if (from === undefined || to === undefined) throw new Error("got a range with one end, expected two");
  if (from >= to) throw new FormulaError("bad_entry", messages.rangeOrder(told(from, shown), told(to, shown)), [0, 0]);
  if (step !== undefined && step <= 0) throw new FormulaError("bad_entry", messages.rangeStep, [0, 0]);
  return { from, to, step: step ?? null };
}

/**
 * By how much a value may be off either way: a difference of its dimension, or a share of it where it has a dimension and
 * the text is a percentage. Throws a FormulaError bad_entry.
 */
export function readPlusMinus(
  text: string,
  value: TypedTree["shape"],
  unit: string,
  functions: FunctionTable,
  takesUnit: boolean,
): PlusMinus {
  if (value.kind !== "number") throw new FormulaError("bad_entry", messages.plusMinusWithoutNumber, [0, 0]);
  const isShare = !isDimensionless(value.dimension) && /%\s*$/.test(text);
  try {
    const size = standaloneNumber(text, { unit: isShare ? "%" : unit, isPoint: false, takesUnit }, functions);
    if (size <= 0) throw new FormulaError("bad_entry", messages.plusMinusSize, [0, 0]);
    return { size, isShare };
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    throw new FormulaError("bad_entry", messages.inPlusMinus(error.message), [0, 0]);
  }
}

function limit(text: string, index: number, meaning: Meaning, functions: FunctionTable): number {
  try {
    return standaloneNumber(text, meaning, functions);
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    const which = (["first value", "second value", "step"] as const)[index] ?? "step";
    throw new FormulaError("bad_entry", messages.inRange(which, error.message), [0, 0]);
  }
}
