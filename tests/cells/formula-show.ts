import { FormulaError } from "../../src/cells/errors.ts";
import { parseFormula } from "../../src/cells/formula-parse.ts";
import type { Tree } from "../../src/cells/formula-tree.ts";

/** The tree of a formula, or its error with the range that it marks, as one line. */
export function show(formula: string): string {
  try {
    return bracketed(parseFormula(formula));
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return `${error.code} ${error.at.join("-")} ‹${formula.slice(...error.at)}› ${error.message}`;
  }
}

/** A tree with every bracket that it could have; a literal with its unit stands between braces. */
function bracketed(tree: Tree): string {
  switch (tree.type) {
    case "number":
      return tree.unit === null ? `${tree.number}` : `{${tree.number} ${tree.unit}}`;
    case "text":
      return JSON.stringify(tree.value);
    case "boolean":
      return `${tree.value}`;
    case "name":
      return tree.name;
    case "list":
      return `[${tree.items.map(bracketed).join(", ")}]`;
    case "call":
      return `${tree.name}(${tree.arguments.map(({ name, value }) => `${name ? `${name}: ` : ""}${bracketed(value)}`).join(", ")})`;
    case "field":
      return `${bracketed(tree.of)}.${tree.field}`;
    case "element":
      return `${bracketed(tree.of)}[${bracketed(tree.index)}]`;
    case "negate":
      return `(-${bracketed(tree.of)})`;
    case "not":
      return `(not ${bracketed(tree.of)})`;
    case "if":
      return `(if ${bracketed(tree.condition)} then ${bracketed(tree.yes)} else ${bracketed(tree.no)})`;
    case "and":
    case "or":
      return `(${bracketed(tree.left)} ${tree.type} ${bracketed(tree.right)})`;
    case "comparison":
    case "arithmetic":
      return `(${bracketed(tree.left)} ${tree.sign} ${bracketed(tree.right)})`;
  }
}
