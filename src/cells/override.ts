import { nearest } from "../library/units.ts";
import { type Cell, isNamed, type Notebook } from "./cell.ts";
import { messages } from "./messages.ts";
import { readSignature } from "./names.ts";
import { editCell, setEntry } from "./notebook.ts";
import { readTarget } from "./target.ts";

/**
 * The notebook with one given, or one table entry written `panels[2].break`, set to a formula. Says in an Error what is
 * wrong with a target that is neither.
 */
export function override(notebook: Notebook, target: string, formula: string): Notebook {
  const place = placeOfTarget(notebook.cells, target);
  if (place.entry) return setEntry(notebook, place.cell.id, place.entry.row, place.entry.column, formula);
  return editCell(notebook, place.cell.id, { formula });
}

/** Where a target stands: a given, or a table with one of its entries; row and column count from 0. */
export interface TargetPlace {
  readonly cell: Cell;
  readonly entry: { readonly row: number; readonly column: number } | null;
}

/** Finds what a target names. Says in an Error what is wrong with one that can be set nowhere. */
export function placeOfTarget(cells: readonly Cell[], target: string): TargetPlace {
  const { name, entry } = readTarget(target);
  const cell = cells.find((each) => isNamed(each) && readSignature(each.name).name === name);
  if (!cell) throw new Error(messages.unknownName(name, nearest(name, settable(cells))));
  if (!entry) {
    if (cell.kind === "given") return { cell, entry: null };
    if (cell.kind !== "table") throw new Error(messages.onlyGivens(name));
    throw new Error(messages.nameAnEntry(name, cell.columns[0]?.name ?? "length"));
  }
  if (cell.kind !== "table") throw new Error(messages.notATable(name));
  const { row, column: asked } = entry;
  if (row < 1 || row > cell.rows.length) throw new Error(messages.noRow(name, row, cell.rows.length));
  const columns = cell.columns.map((each) => each.name);
  const column = columns.indexOf(asked);
  if (column < 0) throw new Error(messages.noColumn(name, asked, nearest(asked, columns), columns));
  return { cell, entry: { row: row - 1, column } };
}

const settable = (cells: readonly Cell[]): string[] =>
  cells.flatMap((cell) => (cell.kind === "given" || cell.kind === "table" ? [cell.name] : []));
