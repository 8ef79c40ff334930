import { nearest } from "../library/units.ts";
import { type Cell, isNamed, type Notebook } from "./cell.ts";
import { messages } from "./messages.ts";
import { readSignature } from "./names.ts";
import { editCell, setEntry } from "./notebook.ts";

/**
 * The notebook with one given, or one table entry written `panels[2].break`, set to a formula. Says in an Error what is
 * wrong with a target that is neither.
 */
export function override(notebook: Notebook, target: string, formula: string): Notebook {
  const entry = /^\s*([A-Za-z]\w*)\s*\[\s*(\d+)\s*\]\s*\.\s*(\w+)\s*$/.exec(target);
  const name = entry?.[1] ?? target.trim();
  const cell = notebook.cells.find((each) => isNamed(each) && readSignature(each.name).name === name);
  if (!cell) throw new Error(messages.unknownName(name, nearest(name, settable(notebook.cells))));
  if (!entry) {
    if (cell.kind === "given") return editCell(notebook, cell.id, { formula });
    if (cell.kind !== "table") throw new Error(messages.onlyGivens(name));
    throw new Error(messages.nameAnEntry(name, cell.columns[0]?.name ?? "length"));
  }
  if (cell.kind !== "table") throw new Error(messages.notATable(name));
  const [row, column] = [Number(entry[2]), cell.columns.findIndex((each) => each.name === entry[3])];
  if (row < 1 || row > cell.rows.length) throw new Error(messages.noRow(name, row, cell.rows.length));
  const columns = cell.columns.map((each) => each.name);
  const asked = entry[3] ?? "";
  if (column < 0) throw new Error(messages.noColumn(name, asked, nearest(asked, columns), columns));
  return setEntry(notebook, cell.id, row - 1, column, formula);
}

const settable = (cells: readonly Cell[]): string[] =>
  cells.flatMap((cell) => (cell.kind === "given" || cell.kind === "table" ? [cell.name] : []));
