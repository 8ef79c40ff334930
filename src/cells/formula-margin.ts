/** By how much a check holds: how far the smaller side is from the limit, the worst part of an `and`. */
import { FormulaError } from "./errors.ts";
import { type Compilation, compileTree, equalNumbers } from "./formula-compile.ts";
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
  const told = unitOfGap(left, right);
  return (inputs) => {
    try {
      const [least, most] = [smaller(inputs, []) as number, limit(inputs, []) as number];
      const gap = equalNumbers(least, most) ? 0 : most - least;
      return { share: most === 0 ? null : gap / Math.abs(most), gap, unit: told };
    } catch (error) {
      if (error instanceof FormulaError) return null;
      throw error;
    }
  };
}

/** The unit of the limit where it is written as a number, else that of a side that is a cell's own value. */
function unitOfGap(left: TypedTree, right: TypedTree): string {
  const plain = (side: TypedTree): boolean => ["input", "field", "element"].includes(side.type);
  const side = [right, left].find(({ type }) => type === "constant") ?? [left, right].find(plain) ?? right;
  return side.shape.kind === "number" ? side.shape.unit : "1";
}

function pick(a: Margin | null, b: Margin | null, worst: boolean): Margin | null {
  if (!a || !b) return a ?? b;
  return (a.share ?? a.gap) < (b.share ?? b.gap) === worst ? a : b;
}
