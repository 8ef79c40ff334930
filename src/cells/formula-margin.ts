/** By how much a check holds: how far the smaller side is from the limit, the worst part of an `and`. */
import { FormulaError } from "./errors.ts";
import { type Compilation, compileTree } from "./formula-compile.ts";
import type { TypedTree } from "./typed-tree.ts";
import type { Inputs, Margin } from "./value.ts";

type MarginRun = (inputs: Inputs) => Margin | null;

/** Gives null where the condition compares no sizes, or where its sides cannot be computed. */
export function compileMargin(tree: TypedTree, compilation: Compilation): MarginRun {
  switch (tree.type) {
    case "comparison":
      return comparisonMargin(tree, compilation);
    case "and":
    case "or": {
      const [left, right] = [compileMargin(tree.left, compilation), compileMargin(tree.right, compilation)];
      const worst = tree.type === "and";
      return (inputs) => pick(left(inputs), right(inputs), worst);
    }
    case "not": {
      const of = compileMargin(tree.of, compilation);
      return (inputs) => {
        const margin = of(inputs);
        return margin && { ...margin, share: margin.share === null ? null : -margin.share, gap: -margin.gap };
      };
    }
    case "if": {
      const condition = compileTree(tree.condition, compilation);
      const [yes, no] = [compileMargin(tree.yes, compilation), compileMargin(tree.no, compilation)];
      return (inputs) => (condition(inputs, []) ? yes : no)(inputs);
    }
    default:
      return () => null;
  }
}

/** The margin of a check, or null where it speaks against the outcome: then no size decided, but something else. */
export const fitting = (margin: Margin | null, holds: boolean): Margin | null =>
  margin && (holds ? margin.gap >= 0 : margin.gap <= 0) ? margin : null;

function comparisonMargin(tree: TypedTree & { type: "comparison" }, compilation: Compilation): MarginRun {
  const { left, right, sign } = tree;
  if (left.shape.kind !== "number" || right.shape.kind !== "number" || sign === "=" || sign === "!=") return () => null;
  const less = sign === "<" || sign === "<=";
  const smaller = compileTree(less ? left : right, compilation);
  const limit = compileTree(less ? right : left, compilation);
  const unit = (right.type === "constant" ? right : left.type === "constant" ? left : right).shape;
  const told = unit.kind === "number" ? unit.unit : "1";
  return (inputs) => {
    try {
      const most = limit(inputs, []) as number;
      const gap = most - (smaller(inputs, []) as number);
      return { share: most === 0 ? null : gap / Math.abs(most), gap, unit: told };
    } catch (error) {
      if (error instanceof FormulaError) return null;
      throw error;
    }
  };
}

function pick(a: Margin | null, b: Margin | null, worst: boolean): Margin | null {
  if (!a || !b) return a ?? b;
  return (a.share ?? a.gap) < (b.share ?? b.gap) === worst ? a : b;
}
