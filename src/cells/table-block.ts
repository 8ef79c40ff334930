/** Blocks of entries of a table: copied as text with tabs, put in from such a text, cleared. Places count from 0. */
import type { Notebook, TableCell } from "./cell.ts";
import { cellById, editCell } from "./notebook.ts";

/** From one place to another, both within it. */
export interface Block {
  readonly rows: readonly [from: number, to: number];
  readonly columns: readonly [from: number, to: number];
}

/** The entries as text: tabs between columns, line ends between rows; quoted where an entry holds one of these. */
export function blockText({ rows }: TableCell, block: Block): string {
  return rows
    .slice(block.rows[0], block.rows[1] + 1)
    .map((row) =>
      row
        .slice(block.columns[0], block.columns[1] + 1)
        .map(quoted)
        .join("\t"),
    )
    .join("\n");
}

/** The entries of such a text, row by row; an empty last line is none. Line ends within quotes become blanks. */
export function readBlock(text: string): string[][] {
  const rows: string[][] = [[]];
  const pattern = /(?:"((?:[^"]|"")*)"(?=[\t\r\n]|$)|([^\t\r\n]*))(\t|\r\n|\r|\n|$)/y;
  for (let match = pattern.exec(text); match; match = pattern.exec(text)) {
    const entry =
      match[1] === undefined ? (match[2] ?? "") : match[1].replaceAll('""', '"').replaceAll(/[\t\r\n]+/g, " ");
    rows.at(-1)?.push(entry.trim());
    if (match[3] === "") break;
    if (match[3] !== "\t") rows.push([]);
  }
  if (rows.length > 1 && rows.at(-1)?.every((entry) => entry === "")) rows.pop();
  return rows;
}

/** The entries put in from a place on; rows are added where they are needed, columns beyond the last are left off. */
export function putBlock(
  notebook: Notebook,
  id: string,
  row: number,
  column: number,
  entries: readonly (readonly string[])[],
): Notebook {
  const { columns, rows } = tableOf(notebook, id);
  const next = rows.map((each) => [...each]);
  entries.forEach((texts, down) => {
    const into = next[row + down] ?? columns.map(() => "");
    next[row + down] = into;
    texts.slice(0, Math.max(0, columns.length - column)).forEach((text, across) => {
      into[column + across] = text;
    });
  });
  return editCell(notebook, id, { rows: next });
}

/** The entries of a block emptied. */
export function clearBlock(notebook: Notebook, id: string, { rows, columns }: Block): Notebook {
  const within = ([from, to]: readonly [number, number], at: number): boolean => at >= from && at <= to;
  const cleared = tableOf(notebook, id).rows.map((each, row) =>
    within(rows, row) ? each.map((entry, column) => (within(columns, column) ? "" : entry)) : each,
  );
  return editCell(notebook, id, { rows: cleared });
}

const quoted = (entry: string): string => (/[\t\r\n"]/.test(entry) ? `"${entry.replaceAll('"', '""')}"` : entry);

function tableOf(notebook: Notebook, id: string): TableCell {
  const cell = cellById(notebook, id);
  if (cell.kind !== "table") throw new Error(`got a ${cell.kind}, expected a table`);
  return cell;
}
