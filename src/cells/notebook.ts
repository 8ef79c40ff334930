/**
 * Edits of a notebook. Each is pure and gives a new notebook that shares every cell it leaves alone, or the very same one
 * where nothing changes. Positions count from 0. Misuse throws, and so does content that no file could hold: what an edit
 * gave can always be saved. Formulas, names and trials are not looked at: their faults belong to the cells.
 */
import { withCells } from "./board.ts";
import type { Cell, Column, Notebook, TableCell } from "./cell.ts";
import { placeOf } from "./notebook-errors.ts";
import { cellFault } from "./notebook-faults.ts";
import type { CellOf, Kind } from "./notebook-schema.ts";

/** New content for keys of a cell; `undefined` takes an optional key away. A cell keeps its id and its kind. */
export type CellPatch = {
  [K in Kind]: { readonly [P in Exclude<keyof CellOf<K>, "id" | "kind">]?: CellOf<K>[P] | undefined };
}[Kind];

/** New content for keys of a column; `undefined` takes an optional key away. */
export type ColumnPatch = { readonly [P in keyof Column]?: Column[P] | undefined };

/** The cell with this id. @throws where there is none */
export function cellById(notebook: Notebook, id: string): Cell {
  const cell = notebook.cells.find((each) => each.id === id);
  if (cell === undefined) throw new Error(`got the id "${id}", expected that of a cell of this notebook`);
  return cell;
}

/** An id that no cell of the notebook has: `a` and a number above that of every other such. */
export function freshId(notebook: Notebook): string {
  const taken = new Set(notebook.cells.map(({ id }) => id));
  let number = 1;
  for (const id of taken) number = Math.max(number, 1 + Number(/^a(\d{1,15})$/.exec(id)?.[1] ?? 0));
  while (taken.has(`a${number}`)) number++;
  return `a${number}`;
}

export function setTitle(notebook: Notebook, title: string): Notebook {
  return title === notebook.title ? notebook : { ...notebook, title };
}

/** The cell with some of its content changed; where that cannot be content of its kind, it throws. */
export function editCell(notebook: Notebook, id: string, patch: CellPatch): Notebook {
  const cell = cellById(notebook, id);
  if ("id" in patch || "kind" in patch) throw new Error("got a patch with an id or a kind, expected content only");
  return replace(notebook, cell, patched(cell, patch));
}

/**
 * A given made derived, or a derived cell made a given, under the same id and name, so that all that names it still does.
 * What only the one can have, range and ±, goes; a formula that a given cannot have is the given's fault to tell.
 */
export function turnInto(notebook: Notebook, id: string, kind: "given" | "derived"): Notebook {
  const cell = cellById(notebook, id);
  if (cell.kind !== "given" && cell.kind !== "derived")
    throw new Error(`got "${id}", which is a ${cell.kind}, expected a given or a derived cell`);
  if (cell.kind === kind) return notebook;
  return replace(notebook, cell, patched(cell, { kind, range: undefined, plus_minus: undefined }));
}

/** The cell put in so that it stands at `index`; its id must be new. */
export function insertCell(notebook: Notebook, index: number, cell: Cell): Notebook {
  if (notebook.cells.some(({ id }) => id === cell.id))
    throw new Error(`got the id "${cell.id}" twice, expected a new one`);
  const cells = inserted(notebook.cells, index, checked(cell));
  return withCells(notebook, cells, cell);
}

export function removeCell(notebook: Notebook, id: string): Notebook {
  const cell = cellById(notebook, id);
  const cells = notebook.cells.filter((each) => each !== cell);
  return withCells(notebook, cells);
}

/** The cell taken out and put in again so that it stands at `index` of the result. */
export function moveCell(notebook: Notebook, id: string, index: number): Notebook {
  const cells = moved(notebook.cells, notebook.cells.indexOf(cellById(notebook, id)), index);
  return cells === notebook.cells ? notebook : { ...notebook, cells };
}

/** One entry of a table, by row and position of its column. */
export function setEntry(notebook: Notebook, id: string, row: number, column: number, text: string): Notebook {
  if (typeof text !== "string") throw new Error(`got ${typeof text}, expected text`);
  const table = tableById(notebook, id);
  const entries = at(table.rows, row, "row");
  if (at(entries, column, "column") === text) return notebook;
  const rows = replaced(table.rows, row, replaced(entries, column, text));
  // No need to check the whole table again, which would take its time where a long one is typed into.
  return withCell(notebook, table, { ...table, rows });
}

/** A row put in so that it stands at `index`, empty unless it says otherwise. */
export function insertRow(notebook: Notebook, id: string, index: number, entries?: readonly string[]): Notebook {
  const table = tableById(notebook, id);
  const row = entries ?? table.columns.map(() => "");
  return replace(notebook, table, { ...table, rows: inserted(table.rows, index, row) });
}

export function removeRow(notebook: Notebook, id: string, index: number): Notebook {
  const table = tableById(notebook, id);
  return replace(notebook, table, { ...table, rows: removed(table.rows, index, "row") });
}

export function moveRow(notebook: Notebook, id: string, from: number, to: number): Notebook {
  const table = tableById(notebook, id);
  const rows = moved(table.rows, from, to);
  return rows === table.rows ? notebook : replace(notebook, table, { ...table, rows });
}

/** A column put in so that it stands at `index`, with one entry for each row, empty unless it says otherwise. */
export function insertColumn(
  notebook: Notebook,
  id: string,
  index: number,
  column: Column,
  entries?: readonly string[],
): Notebook {
  const table = tableById(notebook, id);
  if (entries !== undefined && entries.length !== table.rows.length) {
    throw new Error(`got ${entries.length} entries, expected one for each of ${table.rows.length} rows`);
  }
  const rows = table.rows.map((row, each) => inserted(row, index, entries?.[each] ?? ""));
  return replace(notebook, table, { ...table, columns: inserted(table.columns, index, column), rows });
}

/** A column's name, unit or whether it holds text. Formulas and trials that use its name do not follow. */
export function editColumn(notebook: Notebook, id: string, index: number, patch: ColumnPatch): Notebook {
  const table = tableById(notebook, id);
  const column = at(table.columns, index, "column");
  const columns = replaced(table.columns, index, patched(column, patch));
  return columns[index] === column ? notebook : replace(notebook, table, { ...table, columns });
}

export function removeColumn(notebook: Notebook, id: string, index: number): Notebook {
  const table = tableById(notebook, id);
  const columns = removed(table.columns, index, "column");
  return replace(notebook, table, { ...table, columns, rows: table.rows.map((row) => removed(row, index, "column")) });
}

export function moveColumn(notebook: Notebook, id: string, from: number, to: number): Notebook {
  const table = tableById(notebook, id);
  const columns = moved(table.columns, from, to);
  if (columns === table.columns) return notebook;
  return replace(notebook, table, { ...table, columns, rows: table.rows.map((row) => moved(row, from, to)) });
}

function tableById(notebook: Notebook, id: string): TableCell {
  const cell = cellById(notebook, id);
  if (cell.kind !== "table") throw new Error(`got "${id}", which is a ${cell.kind}, expected a table`);
  return cell;
}

function replace(notebook: Notebook, old: Cell, cell: Cell): Notebook {
  return cell === old ? notebook : withCell(notebook, old, checked(cell));
}

function withCell(notebook: Notebook, old: Cell, cell: Cell): Notebook {
  return { ...notebook, cells: notebook.cells.map((each) => (each === old ? cell : each)) };
}

function checked(cell: Cell): Cell {
  const fault = cellFault(cell);
  if (fault === null) return cell;
  const place = placeOf(fault.path);
  throw new Error(
    `got a ${cell.kind} that cannot be saved, expected one that can: ${place}${place && ": "}${fault.message}`,
  );
}

/** The object with the patch on it and without what the patch takes away; the same one where nothing changes. */
function patched<T extends object>(object: T, patch: object): T {
  const now = new Map<string, unknown>(Object.entries(object));
  if (Object.entries(patch).every(([key, value]) => now.get(key) === value)) return object;
  return Object.fromEntries(Object.entries({ ...object, ...patch }).filter(([, value]) => value !== undefined)) as T;
}

function at<T>(list: readonly T[], index: number, what: string): T {
  const found = list[index];
  if (found === undefined) throw new Error(`got ${what} ${index}, expected one of 0 to ${list.length - 1}`);
  return found;
}

function replaced<T>(list: readonly T[], index: number, item: T): readonly T[] {
  return list.map((each, position) => (position === index ? item : each));
}

function inserted<T>(list: readonly T[], index: number, item: T): readonly T[] {
  if (!Number.isInteger(index) || index < 0 || index > list.length) {
    throw new Error(`got the position ${index}, expected 0 to ${list.length}`);
  }
  return [...list.slice(0, index), item, ...list.slice(index)];
}

function removed<T>(list: readonly T[], index: number, what: string): readonly T[] {
  at(list, index, what);
  return list.filter((_, position) => position !== index);
}

/** The item taken out and put in again so that it stands at `to` of the result. */
function moved<T>(list: readonly T[], from: number, to: number): readonly T[] {
  const item = at(list, from, "position");
  at(list, to, "position");
  return from === to ? list : inserted(removed(list, from, "position"), to, item);
}
