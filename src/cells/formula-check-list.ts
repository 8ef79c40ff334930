import type { Shape } from "../library/spec.ts";
import { FormulaError } from "./errors.ts";
import { limits } from "./formula-parse.ts";
import { remedyFor } from "./formula-remedy.ts";
import type { Range } from "./formula-tree.ts";
import { messages } from "./messages.ts";
import { describe, joinShapes, listShape, numberWithin } from "./shapes.ts";
import type { TypedTree } from "./typed-tree.ts";

/** A list node of checked items, of one shape; lists hold single values only. `text` is their source. */
export function listOf(items: readonly TypedTree[], at: Range, text: string): TypedTree {
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
      const message = messages.itemsDiffer(describe(shape), describe(item.shape), toJoin(item, shape, text));
      throw new FormulaError(codeOf(shape, item.shape), message, item.at);
    }
    shape = joined;
  }
  return { type: "list", items, shape: listShape(shape), at };
}

/** What to write so that a value can join one of another shape, or null. */
export function toJoin(tree: TypedTree, shape: Shape, text: string): string | null {
  const wanted = numberWithin(shape);
  return wanted && remedyFor(tree, wanted.dimension, wanted.unit, text);
}

/** Two numbers (or lists of them) that do not go together differ in dimension, anything else in shape. */
export const codeOf = (a: Shape, b: Shape): "wrong_dimension" | "wrong_shape" =>
  a.kind === b.kind && numberWithin(a) && numberWithin(b) ? "wrong_dimension" : "wrong_shape";
