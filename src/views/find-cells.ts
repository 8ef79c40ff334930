/** Finds cells by what stands in them: name or title first, then kind and value, then formula, reason and prose. */
import type { Cell, Kind } from "../cells/index.ts";
import { cellTitle, clipped, plainProse } from "./cell-title.ts";
import { words } from "./words.ts";

/** A cell as it is looked through. */
export interface FindableCell {
  readonly id: string;
  readonly kind: Kind;
  /** By what it is known: its name, title or first words. */
  readonly title: string;
  /** What it is worth, as it is told; "" where it has no value or shows none. */
  readonly value: string;
  /** Whatever else stands in it, most telling first. */
  readonly texts: readonly string[];
}

/** A cell that was found, with the piece of text that shows why. */
export interface FoundCell {
  readonly cell: FindableCell;
  readonly excerpt: Excerpt;
}

/** A piece of text, with what was looked for in its middle, or none of it. */
export interface Excerpt {
  readonly before: string;
  readonly match: string;
  readonly after: string;
}

/** What can be found of a cell. `value` is what the page shows of it; `hidden` where a question hides that. */
export function findable(cell: Cell, value: string, hidden: boolean): FindableCell {
  const { id, kind } = cell;
  return {
    id,
    kind,
    title: cellTitle(cell),
    value: hidden ? "" : value,
    texts: textsOf(cell, hidden).filter((text) => text !== undefined && text !== "") as string[],
  };
}

/**
 * The cells in which every word of the query stands, best first: in the name, at its start best of all, then in kind and
 * value, then anywhere else; among equals in the order of the notebook. An empty query finds all.
 */
export function findCells(cells: readonly FindableCell[], query: string): readonly FoundCell[] {
  const wanted = folded(query).split(/\s+/).filter(Boolean);
  return cells
    .flatMap((cell) => {
      const ranks = wanted.map((word) => rank(cell, word));
      return ranks.includes(nowhere) ? [] : [{ cell, rank: ranks.reduce((sum, each) => sum + each, 0) }];
    })
    .sort((a, b) => a.rank - b.rank)
    .map(({ cell }) => ({ cell, excerpt: excerptOf(cell, wanted) }));
}

function textsOf(cell: Cell, hidden: boolean): readonly (string | undefined)[] {
  switch (cell.kind) {
    case "note":
      return [plainProse(cell.text).replaceAll("\n", " ")];
    case "given":
      // What stands in a given is its value.
      return [hidden ? undefined : cell.formula, cell.reason];
    case "derived":
    case "check":
      return [cell.formula, cell.reason];
    case "table": {
      const heads = cell.columns.map(({ name }) => name).join(", ");
      return [heads, cell.reason, ...(hidden ? [] : cell.rows.map((row) => row.join("  ")))];
    }
    case "decision": {
      const others = (cell.alternatives ?? []).flatMap(({ option, why_not }) => [option, why_not]);
      return [cell.chosen, cell.why, ...others, cell.revisit];
    }
    case "question":
      return [cell.prompt, cell.about, cell.answer ?? undefined, cell.because];
    case "drawing":
      return [cell.of, cell.view];
    case "sheet":
      return [cell.of, cell.title, cell.paper];
    case "study":
      return [
        cell.title,
        cell.study,
        [...cell.inputs.map(({ input }) => input), ...cell.results].join(", "),
        cell.reason,
      ];
    case "chart":
      return [
        [cell.of, cell.sweep, cell.x, ...(cell.y ?? []), ...(cell.curves ?? []), cell.band].filter(Boolean).join(", "),
        cell.view,
      ];
  }
}

const nowhere = Number.POSITIVE_INFINITY;

function rank({ title, kind, value, texts }: FindableCell, word: string): number {
  const name = folded(title);
  if (name === word) return 0;
  if (name.startsWith(word)) return 1;
  if (name.includes(` ${word}`)) return 2;
  if (name.includes(word)) return 3;
  if (folded(words.kindNames[kind]).startsWith(word)) return 4;
  if (folded(value).includes(word)) return 5;
  return texts.some((text) => folded(text).includes(word)) ? 6 : nowhere;
}

/** Value or text around the first word that stands in neither name nor kind; else the value, else what is most telling. */
function excerptOf({ title, kind, value, texts }: FindableCell, wanted: readonly string[]): Excerpt {
  const head = `${folded(title)} ${folded(words.kindNames[kind])}`;
  for (const word of wanted.filter((each) => !head.includes(each))) {
    for (const text of [value, ...texts]) {
      const at = folded(text).indexOf(word);
      if (at >= 0) return around(text, at, word.length);
    }
  }
  return { before: clipped(value || texts.find((text) => text !== title) || "", 90), match: "", after: "" };
}

function around(text: string, at: number, length: number): Excerpt {
  const from = at > 36 ? text.indexOf(" ", at - 30) + 1 : 0;
  const start = from > 0 && from <= at ? from : 0;
  return {
    before: `${start > 0 ? "… " : ""}${text.slice(start, at)}`,
    match: text.slice(at, at + length),
    after: clipped(text.slice(at + length), 70),
  };
}

/** Small letters, and blanks for the underscores of names. Of the same length as the text, so that places agree. */
function folded(text: string): string {
  const small = text.toLowerCase();
  return (small.length === text.length ? small : text).replaceAll("_", " ");
}
