/** Writes a tree as a formula, with no more brackets than it needs; reading it gives the same tree again. */
import type { Argument, NumberTree, Tree } from "./formula-tree.ts";

/**
 * The formula of a tree. Shop fractions become decimals, brackets and blanks are those of a careful writer: the tree
 * keeps no others.
 */
export const printFormula = (tree: Tree): string => full(tree);

/** Where an `if` may stand bare: a whole formula, an argument, an element, an index, a branch, within brackets. */
function full(tree: Tree): string {
  if (tree.type !== "if") return written(tree);
  return `if ${within(tree.condition, levels.or)} then ${full(tree.yes)} else ${full(tree.no)}`;
}

/** How tightly an expression holds together: the operator of a looser one in a tighter place needs brackets. */
const levels = { if: 0, or: 1, and: 2, not: 3, compare: 4, plus: 5, times: 6, sign: 7, power: 8, access: 9 } as const;

const arithmeticLevels = { "+": levels.plus, "-": levels.plus, "*": levels.times, "/": levels.times } as const;

function levelOf(tree: Tree): number {
  switch (tree.type) {
    case "if":
    case "or":
    case "and":
    case "not":
      return levels[tree.type];
    case "comparison":
      return levels.compare;
    case "arithmetic":
      return tree.sign === "^" ? levels.power : arithmeticLevels[tree.sign];
    case "negate":
      return levels.sign;
    case "number":
      return tree.number < 0 ? levels.sign : levels.access;
    default:
      return levels.access;
  }
}

const within = (tree: Tree, level: number): string => (levelOf(tree) < level ? `(${full(tree)})` : written(tree));

function written(tree: Tree): string {
  switch (tree.type) {
    case "number":
      return literal(tree);
    case "text":
      return `"${tree.value.replace(/["\\\n]/g, "\\$&")}"`;
    case "boolean":
      return `${tree.value}`;
    case "name":
      return tree.name;
    case "list":
      return `[${tree.items.map(full).join(", ")}]`;
    case "call":
      return `${tree.name}(${tree.arguments.map(argument).join(", ")})`;
    case "field":
      return `${within(tree.of, levels.access)}.${tree.field}`;
    case "element":
      return `${within(tree.of, levels.access)}[${full(tree.index)}]`;
    case "negate":
      return `-${within(tree.of, levels.sign)}`;
    case "not":
      return `not ${within(tree.of, levels.not)}`;
    case "and":
    case "or":
      return `${within(tree.left, levels[tree.type])} ${tree.type} ${within(tree.right, levels[tree.type] + 1)}`;
    case "comparison":
      return `${within(tree.left, levels.plus)} ${tree.sign} ${within(tree.right, levels.plus)}`;
    case "arithmetic": {
      if (tree.sign === "^") return `${base(tree.left)}^${within(tree.right, levels.sign)}`;
      const level = arithmeticLevels[tree.sign];
      return `${within(tree.left, level)} ${tree.sign} ${within(tree.right, level + 1)}`;
    }
    case "if":
      return full(tree);
  }
}

/** What is raised: a literal with a unit needs brackets, or the power would be its unit's. */
function base(tree: Tree): string {
  return tree.type === "number" && tree.unit !== null ? `(${literal(tree)})` : within(tree, levels.access);
}

const literal = ({ number, unit }: NumberTree): string =>
  unit === null ? `${number}` : `${number}${unit === "%" || unit === "°" ? "" : " "}${unit}`;

const argument = ({ name, value }: Argument): string => (name === null ? full(value) : `${name}: ${full(value)}`);
