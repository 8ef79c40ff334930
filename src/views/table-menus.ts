/** What can be done with a row or a column of a table; each is one step to undo, and trials go on naming the same entries. */
import {
  editColumn,
  insertColumn,
  insertRowInTrials,
  moveColumn,
  moveRowInTrials,
  type Notebook,
  removeColumnInTrials,
  removeRowInTrials,
  renameColumn,
  type TableCell,
  tidyName,
} from "../cells/index.ts";
import type { Desk } from "./desk.ts";
import type { Detail } from "./details.ts";
import type { MenuItem } from "./menu.ts";
import type { Place } from "./table-places.ts";
import { words } from "./words.ts";

type Focus = (place: Place) => void;

/** Puts an empty row in so that it stands at `row`. */
export function addRow({ session }: Desk, { id }: TableCell, row: number, focus: Focus): void {
  session.edit((notebook) => insertRowInTrials(notebook, id, row));
  focus({ row, column: 0 });
}

/** Takes a row out; the focus goes to the row in its place. */
export function dropRow({ session }: Desk, { id, rows }: TableCell, { row, column }: Place, focus: Focus): void {
  session.edit((notebook) => removeRowInTrials(notebook, id, row));
  focus({ row: Math.min(row, rows.length - 2), column: rows.length === 1 ? Math.max(0, column) : column });
}

/** Puts a column in, its name unused, so that it stands at `column`; it takes its unit from the column beside it. */
export function addColumn({ session }: Desk, { id, columns }: TableCell, column: number): void {
  const unit = columns[column - 1]?.unit ?? columns[column]?.unit;
  const taken = new Set(columns.map(({ name }) => name));
  let name: string = words.newColumn;
  for (let number = 2; taken.has(name); number++) name = `${words.newColumn}_${number}`;
  const fill = (notebook: Notebook): Notebook => {
    const table = notebook.cells.find((each) => each.id === id) as TableCell;
    return insertColumn(
      notebook,
      id,
      column,
      { name, ...(unit && { unit }) },
      table.rows.map(() => "0"),
    );
  };
  session.edit(fill);
}

export function rowItems(desk: Desk, table: TableCell, row: number, focus: Focus): MenuItem[] {
  const move = (to: number): void => {
    desk.session.edit((notebook) => moveRowInTrials(notebook, table.id, row, to));
    focus({ row: to, column: -1 });
  };
  return [
    { label: words.rowAbove, act: () => addRow(desk, table, row, focus) },
    { label: words.rowBelow, act: () => addRow(desk, table, row + 1, focus) },
    ...(row > 0 ? [{ label: words.rowUp, act: () => move(row - 1) }] : []),
    ...(row < table.rows.length - 1 ? [{ label: words.rowDown, act: () => move(row + 1) }] : []),
    { label: words.rowRemove, parted: true, act: () => dropRow(desk, table, { row, column: -1 }, focus) },
  ];
}

export function columnItems(
  desk: Desk,
  table: TableCell,
  column: number,
  focus: Focus,
  enter: (column: number) => void,
): MenuItem[] {
  const { session } = desk;
  const { id, columns } = table;
  const move = (to: number): void => {
    session.edit((notebook) => moveColumn(notebook, id, column, to));
    focus({ row: -1, column: to });
  };
  const add = (at: number): void => {
    addColumn(desk, table, at);
    enter(at);
  };
  const remove = (): void => {
    session.edit((notebook) => removeColumnInTrials(notebook, id, column));
    focus({ row: -1, column: Math.max(0, Math.min(column, columns.length - 2)) });
  };
  return [
    { label: words.columnDetails, act: () => enter(column) },
    { label: words.columnBefore, parted: true, act: () => add(column) },
    { label: words.columnAfter, act: () => add(column + 1) },
    ...(column > 0 ? [{ label: words.columnLeft, act: () => move(column - 1) }] : []),
    ...(column < columns.length - 1 ? [{ label: words.columnRight, act: () => move(column + 1) }] : []),
    { label: words.columnRemove, parted: true, act: remove },
  ];
}

/** Name, unit and what a column holds. */
export function columnDetails(
  { session }: Desk,
  { id, columns }: TableCell,
  column: number,
  refusal: string | null,
  onRefusal: (refusal: string | null) => void,
): Detail[] {
  const { name = "", unit, text } = columns[column] ?? {};
  const edit = (key: string, patch: Parameters<typeof editColumn>[3]): void =>
    session.edit((notebook) => editColumn(notebook, id, column, patch), `column ${id} ${column} ${key}`);
  const rename = (now: string): void => {
    try {
      session.edit((notebook) => renameColumn(notebook, id, column, tidyName(now)));
      onRefusal(null);
    } catch (error) {
      onRefusal(error instanceof Error ? error.message : String(error));
    }
  };
  return [
    { label: words.columnName, value: name, late: true, beside: true, fault: refusal ?? undefined, set: rename },
    ...(text
      ? []
      : [
          {
            label: words.columnUnit,
            value: unit ?? "",
            beside: true,
            set: (now: string) => edit("unit", { unit: now.trim() === "" ? undefined : now }),
          },
        ]),
    {
      label: words.columnHolds,
      value: text ? "text" : "",
      beside: true,
      choices: [
        ["", words.numbers],
        ["text", words.plainText],
      ],
      set: (now) => edit("text", now === "text" ? { text: true, unit: undefined } : { text: undefined }),
    },
  ];
}
