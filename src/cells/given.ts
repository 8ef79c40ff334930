/** What is particular to a given: it names no cell, and it may have a range to be dragged over. */
import type { FunctionTable } from "../library/spec.ts";
import { units } from "../library/units.ts";
import type { GivenCell } from "./cell.ts";
import { checkWithUnit } from "./declared-unit.ts";
import { FormulaError } from "./errors.ts";
import { check } from "./formula-check.ts";
import { compilationOf, compileTree } from "./formula-compile.ts";
import { parseFormula } from "./formula-parse.ts";
import { nodes, type Tree } from "./formula-tree.ts";
import { messages } from "./messages.ts";
import { constants } from "./names.ts";
import type { Step } from "./step.ts";
import { told } from "./told.ts";
import type { Scope, TypedTree } from "./typed-tree.ts";

/** Refuses a given's formula that uses a cell. */
export function refuseNames(tree: Tree, functions: FunctionTable): void {
  for (const node of nodes(tree)) {
    const foreign =
      (node.type === "name" && !constants.has(node.name)) || (node.type === "call" && !functions.has(node.name));
    if (foreign && units.has(node.name)) throw new FormulaError("unknown_name", messages.unitAlone(node.name), node.at);
    if (foreign) throw new FormulaError("unknown_name", messages.namesInGiven(node.name), node.at);
  }
}

/** The scope of a formula that stands on its own. */
export const standalone = (functions: FunctionTable): Scope => ({
  functions,
  lookup: () => undefined,
  names: () => [],
  calls: { count: 0 },
});

/**
 * The range of a given in SI, or null where it has none. Its formulas stand on their own, as the given's does, and are
 * of its dimension. Throws a FormulaError bad_entry where one is not, or where the range is empty.
 */
export function rangeOf(cell: GivenCell, value: TypedTree, functions: FunctionTable): Step["range"] {
  if (!cell.range) return null;
  if (value.shape.kind !== "number") throw new FormulaError("bad_entry", messages.rangeWithoutNumber, [0, 0]);
  const { unit } = value.shape;
  const [from, to, step] = cell.range.map((text, index) => limit(text, index, cell.unit ?? unit, functions));
  if (from === undefined || to === undefined) throw new Error("got a range with one end, expected two");
  if (from >= to) throw new FormulaError("bad_entry", messages.rangeOrder(told(from, unit), told(to, unit)), [0, 0]);
  if (step !== undefined && step <= 0) throw new FormulaError("bad_entry", messages.rangeStep, [0, 0]);
  return { from, to, step: step ?? null };
}

function limit(text: string, index: number, unit: string, functions: FunctionTable): number {
  try {
    const tree = parseFormula(text);
    refuseNames(tree, functions);
    // A step is a difference: 1 K, not the point 1 °C of the scale.
    const typed = checkWithUnit(check(tree, text, standalone(functions), index < 2), unit, text);
    if (typed.shape.kind !== "number") throw new FormulaError("wrong_shape", messages.rangeNumber, typed.at);
    return compileTree(typed, compilationOf([]))([], []) as number;
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    const which = (["first value", "second value", "step"] as const)[index] ?? "step";
    throw new FormulaError("bad_entry", messages.inRange(which, error.message), [0, 0]);
  }
}
