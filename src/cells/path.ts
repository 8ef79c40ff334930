/** Names with fields and elements, as they stand between a note's braces and in a drawing's `of`. */
import { FormulaError } from "./errors.ts";
import { parseFormula } from "./formula-parse.ts";
import type { Tree } from "./formula-tree.ts";
import { messages } from "./messages.ts";

/** A name, with fields and elements: `main_wing.span`, `cants[2]`. Throws a FormulaError where it is anything else. */
export function parsePath(text: string): Tree {
  const tree = parseFormula(text);
  if (isPath(tree)) return tree;
  throw new FormulaError("syntax", messages.notAPath(text.trim()), [0, text.length]);
}

function isPath(tree: Tree): boolean {
  let node = tree;
  while (node.type === "field" || node.type === "element") {
    if (node.type === "element" && node.index.type !== "number") return false;
    node = node.of;
  }
  return node.type === "name";
}

/** What stands between a note's braces, in order. A backslash before a brace makes it a plain one. */
export const placeholders = (text: string): string[] =>
  segments(text).flatMap((segment) => (segment.live ? [segment.text] : []));

/** A piece of a note: as it is read, and as it is written; `live` where it stands between braces. */
export interface Segment {
  readonly live: boolean;
  readonly text: string;
  readonly source: string;
}

/** A note's text cut at its braces: plain pieces, and live ones without their braces. */
export function segments(text: string): Segment[] {
  const found: Segment[] = [];
  let from = 0;
  const plain = (read: string, source: string) => found.push({ live: false, text: read, source });
  for (const match of text.matchAll(/\\[{}]|\{([^{}\n]{1,200})\}/g)) {
    if (match.index > from) plain(text.slice(from, match.index), text.slice(from, match.index));
    if (match[1] === undefined) plain(match[0].slice(1), match[0]);
    else found.push({ live: true, text: match[1], source: match[0] });
    from = match.index + match[0].length;
  }
  if (from < text.length) plain(text.slice(from), text.slice(from));
  return found;
}
