/** A number that stands on its own, as the ends of a range do: no cell is named in it. */
import type { FunctionTable } from "../library/spec.ts";
import { units } from "../library/units.ts";
import { checkWithUnit, declaredUnit } from "./declared-unit.ts";
import { FormulaError } from "./errors.ts";
import { check } from "./formula-check.ts";
import { compilationOf, compileTree } from "./formula-compile.ts";
import { parseFormula } from "./formula-parse.ts";
import { nodes, type Tree } from "./formula-tree.ts";
import { messages } from "./messages.ts";
import { constants } from "./names.ts";
import type { Scope } from "./typed-tree.ts";

/** How a number that stands on its own is meant. */
export interface Meaning {
  /** Its unit, with which it must agree. */
  readonly unit: string;
  /** A point of the scale, such as 20 °C, or else a difference, such as 1 K. */
  readonly isPoint: boolean;
  /** A number without name, unit or call takes the unit, as it does in a table. */
  readonly takesUnit: boolean;
}

/** The number in SI. Throws a FormulaError where the text is no such number. */
export function standaloneNumber(text: string, meaning: Meaning, functions: FunctionTable): number {
  const tree = parseFormula(text);
  refuseNames(tree, functions);
  const typed = check(tree, text, standalone(functions), meaning.isPoint);
  const plain = meaning.takesUnit && isPlain(tree);
  const checked = plain ? typed : checkWithUnit(typed, meaning.unit, text);
  if (checked.shape.kind !== "number") throw new FormulaError("wrong_shape", messages.singleNumber, checked.at);
  const value = compileTree(checked, compilationOf([]))([], []) as number;
  if (!plain) return value;
  const { factor, offset } = declaredUnit(meaning.unit, text.length);
  return value * factor + (meaning.isPoint ? offset : 0);
}

/** Refuses a formula that uses a cell. */
export function refuseNames(tree: Tree, functions: FunctionTable): void {
  for (const node of nodes(tree)) {
    const foreign =
      (node.type === "name" && !constants.has(node.name)) || (node.type === "call" && !functions.has(node.name));
    if (foreign && units.has(node.name)) throw new FormulaError("unknown_name", messages.unitAlone(node.name), node.at);
    if (foreign) throw new FormulaError("unknown_name", messages.namesInGiven(node.name), node.at);
  }
}

/** A formula without name, unit or call: where a unit is declared it takes that one. */
export function isPlain(tree: Tree): boolean {
  for (const node of nodes(tree)) {
    if (node.type === "name" || node.type === "call" || (node.type === "number" && node.unit !== null)) return false;
  }
  return true;
}

/** The scope of a formula that stands on its own. */
export const standalone = (functions: FunctionTable): Scope => ({
  functions,
  lookup: () => undefined,
  near: () => null,
  calls: { count: 0, isSlow: false },
});
