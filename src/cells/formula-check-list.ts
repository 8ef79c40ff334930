import type { Shape } from "../library/spec.ts";
import { FormulaError } from "./errors.ts";
import { limits } from "./formula-parse.ts";
import type { Range } from "./formula-tree.ts";
import { messages } from "./messages.ts";
import { describe, joinShapes, listShape, numberWithin } from "./shapes.ts";
import type { TypedTree } from "./typed-tree.ts";

/** A list node of checked items, of one shape; lists hold single values only. */
export function listOf(items: readonly TypedTree[], at: Range): TypedTree {
  const [first] = items;
  if (!first) throw new FormulaError("wrong_shape", messages.emptyList, at);
  if (items.length > limits.list) throw new FormulaError("too_large", messages.listTooLong(limits.list), at);
  let shape = first.shape;
  for (const item of items) {
    if (item.shape.kind === "list" || item.shape.kind === "record") {
      throw new FormulaError("wrong_shape", messages.listOfSingle(describe(item.shape)), item.at);
    }
    const joined = joinShapes(shape, item.shape);
    if (!joined) {
      throw new FormulaError(
        codeOf(shape, item.shape),
        messages.itemsDiffer(describe(shape), describe(item.shape)),
        item.at,
      );
    }
    shape = joined;
  }
  return { type: "list", items, shape: listShape(shape), at };
}

/** Two numbers (or lists of them) that do not go together differ in dimension, anything else in shape. */
export const codeOf = (a: Shape, b: Shape): "wrong_dimension" | "wrong_shape" =>
  a.kind === b.kind && numberWithin(a) && numberWithin(b) ? "wrong_dimension" : "wrong_shape";
