import type { Program, TypedTree } from "../cells/index.ts";
import type { Allowed } from "./charts/trade-off.ts";

/** What the notebook's checks allow of some cells: those that compare one of them with a fixed value. */
export function allowedBy(program: Program, names: readonly string[]): Allowed[] {
  return program.steps.flatMap(({ cell, name, tree }) => {
    if (cell.kind !== "check" || !tree || name === null) return [];
    const limits = comparisons(tree).flatMap((each) => limitOf(each) ?? []);
    return names.flatMap((quantity): Allowed[] => {
      const own = limits.filter((limit) => limit.name === quantity);
      if (own.length === 0) return [];
      const min = Math.max(...own.map((limit) => limit.min ?? Number.NEGATIVE_INFINITY));
      const max = Math.min(...own.map((limit) => limit.max ?? Number.POSITIVE_INFINITY));
      return [
        {
          quantity,
          label: name.replaceAll("_", " "),
          ...(Number.isFinite(min) && { min }),
          ...(Number.isFinite(max) && { max }),
        },
      ];
    });
  });
}

/** The comparisons that must all hold. */
function comparisons(tree: TypedTree): TypedTree[] {
  return tree.type === "and" ? [...comparisons(tree.left), ...comparisons(tree.right)] : [tree];
}

interface Limit {
  readonly name: string;
  readonly min?: number;
  readonly max?: number;
}

function limitOf(tree: TypedTree): Limit | null {
  if (tree.type !== "comparison") return null;
  const turned = tree.left.type === "constant";
  const [side, limit] = turned ? [tree.right, tree.left] : [tree.left, tree.right];
  if (side.type !== "input" || limit.type !== "constant" || typeof limit.value !== "number") return null;
  const { name } = side;
  const sign = turned ? flipped[tree.sign] : tree.sign;
  if (sign === "<" || sign === "<=") return { name, max: limit.value };
  return sign === ">" || sign === ">=" ? { name, min: limit.value } : null;
}

const flipped: Readonly<Record<string, string>> = { "<": ">", "<=": ">=", ">": "<", ">=": "<=" };
