import { agree, inWords } from "../library/quantity.ts";
import type { Shape } from "../library/spec.ts";
import { isUnitFault, parseUnit, type UnitExpression } from "../library/units.ts";
import { FormulaError } from "./errors.ts";
import { meantUnit, remedyFor } from "./formula-remedy.ts";
import { messages } from "./messages.ts";
import { describe, listShape, numberShape, numberWithin } from "./shapes.ts";
import type { TypedTree } from "./typed-tree.ts";

/** The unit that a cell or column declares. Throws a FormulaError unknown_unit, marked over `length` characters. */
export function declaredUnit(text: string, length: number): UnitExpression {
  const unit = parseUnit(text);
  if (!isUnitFault(unit)) return unit;
  const message = unit.scale
    ? messages.scaleAlone
    : messages.unitFault(text, unit.word, meantUnit(unit.word, unit.nearest));
  throw new FormulaError("unknown_unit", message, [0, length]);
}

/** A checked formula with the unit its cell declares: the unit sets the dimension of a number that agrees with it. */
export function checkWithUnit(tree: TypedTree, unitText: string | undefined, text: string): TypedTree {
  if (unitText === undefined) return tree;
  const unit = declaredUnit(unitText, text.length);
  const number = numberWithin(tree.shape);
  if (!number) throw new FormulaError("wrong_shape", messages.unitOnlyNumbers(unitText, describe(tree.shape)), tree.at);
  if (!agree(number.dimension, unit.dimension)) {
    const remedy = remedyFor(tree, unit.dimension, unitText, text);
    const message = messages.unitDisagrees(unitText, inWords(unit.dimension), inWords(number.dimension), remedy);
    throw new FormulaError("wrong_dimension", message, tree.at);
  }
  const shape: Shape = numberShape(unit.dimension, unitText);
  return { ...tree, shape: tree.shape.kind === "list" ? listShape(shape) : shape };
}
