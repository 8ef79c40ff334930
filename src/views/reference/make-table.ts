import { type Content, make } from "./make.ts";

/** One line of a table: what it is of, and an entry for each further column. */
export interface TableLine {
  readonly class?: string;
  readonly head: Content;
  readonly entries: readonly Content[];
}

/** A table with a caption that is heard but not seen, a line of heads, and a head before each line. */
export function makeTable(
  document: Document,
  name: string,
  caption: string,
  heads: readonly string[],
  lines: readonly TableLine[],
): HTMLElement {
  const part = (tag: string, ...rows: readonly HTMLElement[]): HTMLElement => make(document, tag, {}, ...rows);
  const headOf = (scope: string, content: Content): HTMLElement => make(document, "th", { scope }, content);
  const row = (line: TableLine): HTMLElement =>
    make(
      document,
      "tr",
      line.class === undefined ? {} : { class: line.class },
      headOf("row", line.head),
      line.entries.map((entry) => make(document, "td", {}, entry)),
    );
  const top = make(
    document,
    "tr",
    {},
    heads.map((head) => headOf("col", head)),
  );
  return make(
    document,
    "table",
    { class: name },
    make(document, "caption", { class: "unseen" }, caption),
    part("thead", top),
    part("tbody", ...lines.map(row)),
  );
}
