import type { TypedTree } from "./typed-tree.ts";

/** Every part of a checked formula, the outer before the inner, left to right; bodies of function cells left out. */
export function partsOf(tree: TypedTree): TypedTree[] {
  return [tree, ...childrenOf(tree).flatMap(partsOf)];
}

function childrenOf(tree: TypedTree): readonly TypedTree[] {
  switch (tree.type) {
    case "constant":
    case "input":
    case "parameter":
      return [];
    case "list":
      return tree.items;
    case "field":
    case "negate":
    case "not":
      return [tree.of];
    case "element":
      return [tree.of, tree.index];
    case "if":
      return [tree.condition, tree.yes, tree.no];
    case "call":
      return tree.arguments.filter((argument) => argument !== null);
    case "apply":
      return tree.arguments;
    default:
      return [tree.left, tree.right];
  }
}
