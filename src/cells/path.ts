/** Names with fields and elements, as they stand between a note's braces and in a drawing's `of`. */
import { FormulaError } from "./errors.ts";
import { parseFormula } from "./formula-parse.ts";
import { nodes, type Tree } from "./formula-tree.ts";
import { messages } from "./messages.ts";

/** A name, with fields and elements: `main_wing.span`, `cants[2]`. Throws a FormulaError where it is anything else. */
export function parsePath(text: string): Tree {
  const tree = parseFormula(text);
  const [root] = [...nodes(tree)].filter((node) => !["field", "element", "number"].includes(node.type));
  const plain = [...nodes(tree)].every((node) => ["field", "element", "number", "name"].includes(node.type));
  if (!plain || root?.type !== "name")
    throw new FormulaError("syntax", messages.notAPath(text.trim()), [0, text.length]);
  return tree;
}

/** What stands between a note's braces, in order. A backslash before a brace makes it a plain one. */
export const placeholders = (text: string): string[] =>
  segments(text).flatMap((segment) => (segment.live ? [segment.text] : []));

/** A note's text cut at its braces: plain pieces, and live ones without their braces. */
export function segments(text: string): { readonly live: boolean; readonly text: string }[] {
  const found: { live: boolean; text: string }[] = [];
  let from = 0;
  for (const match of text.matchAll(/\\[{}]|\{([^{}\n]{1,200})\}/g)) {
    if (match.index > from) found.push({ live: false, text: text.slice(from, match.index) });
    found.push(match[1] === undefined ? { live: false, text: match[0].slice(1) } : { live: true, text: match[1] });
    from = match.index + match[0].length;
  }
  if (from < text.length) found.push({ live: false, text: text.slice(from) });
  return found;
}
