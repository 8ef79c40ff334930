/** The tree of a formula: what the checker, the compiler and the printers walk. Ranges count characters from 0. */

export type Range = readonly [from: number, to: number];
export type ArithmeticSign = "+" | "-" | "*" | "/" | "^";
export type ComparisonSign = "<" | "<=" | "=" | "!=" | ">=" | ">";

export type Tree =
  | NumberTree
  | { readonly type: "text"; readonly value: string; readonly at: Range }
  | { readonly type: "boolean"; readonly value: boolean; readonly at: Range }
  | { readonly type: "name"; readonly name: string; readonly at: Range }
  | { readonly type: "list"; readonly items: readonly Tree[]; readonly at: Range }
  | CallTree
  | { readonly type: "field"; readonly of: Tree; readonly field: string; readonly fieldAt: Range; readonly at: Range }
  | { readonly type: "element"; readonly of: Tree; readonly index: Tree; readonly at: Range }
  | { readonly type: "negate" | "not"; readonly of: Tree; readonly at: Range }
  | {
      readonly type: "arithmetic";
      readonly sign: ArithmeticSign;
      readonly left: Tree;
      readonly right: Tree;
      readonly at: Range;
    }
  | {
      readonly type: "comparison";
      readonly sign: ComparisonSign;
      readonly left: Tree;
      readonly right: Tree;
      readonly at: Range;
    }
  | { readonly type: "and" | "or"; readonly left: Tree; readonly right: Tree; readonly at: Range }
  | { readonly type: "if"; readonly condition: Tree; readonly yes: Tree; readonly no: Tree; readonly at: Range };

/** A literal; `number` is as written, `unit` the text of its unit or null. */
export interface NumberTree {
  readonly type: "number";
  readonly number: number;
  readonly unit: string | null;
  readonly unitAt: Range;
  readonly at: Range;
}

export interface CallTree {
  readonly type: "call";
  readonly name: string;
  readonly nameAt: Range;
  readonly arguments: readonly Argument[];
  readonly at: Range;
}

/** An argument; `name` is null for a positional one. */
export interface Argument {
  readonly name: string | null;
  readonly value: Tree;
  readonly at: Range;
}

/** Every node of a tree, the outer before the inner, left to right. */
export function* nodes(tree: Tree): Generator<Tree> {
  const rest: Tree[] = [tree];
  for (let node = rest.pop(); node; node = rest.pop()) {
    yield node;
    rest.push(...children(node).reverse());
  }
}

/** How many nodes stand within each other at most. */
export function heightOf(tree: Tree): number {
  let height = 0;
  for (let level: Tree[] = [tree]; level.length > 0; level = level.flatMap(children)) height++;
  return height;
}

function children(tree: Tree): Tree[] {
  switch (tree.type) {
    case "number":
    case "text":
    case "boolean":
    case "name":
      return [];
    case "list":
      return [...tree.items];
    case "call":
      return tree.arguments.map((argument) => argument.value);
    case "element":
      return [tree.of, tree.index];
    case "field":
    case "negate":
    case "not":
      return [tree.of];
    case "if":
      return [tree.condition, tree.yes, tree.no];
    default:
      return [tree.left, tree.right];
  }
}
