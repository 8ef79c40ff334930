/** Places in a table on the page, and how keys lead from one to another. */
import type { Block, TableCell } from "../cells/index.ts";

/** A place in a table, counted from 0; row -1 is its head, column -1 the numbers of its rows. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** Where an arrow key, Home or End leads, no further than `last`; null for any other key. */
export function placeByKey(key: string, { row, column }: Place, last: Place): Place | null {
  switch (key) {
    case "ArrowUp":
      return { row: Math.max(column < 0 ? 0 : -1, row - 1), column };
    case "ArrowDown":
      return { row: Math.min(last.row, row + 1), column };
    case "ArrowLeft":
      return { row, column: Math.max(row < 0 ? 0 : -1, column - 1) };
    case "ArrowRight":
      return { row, column: Math.min(last.column, column + 1) };
    case "Home":
      return { row, column: 0 };
    case "End":
      return { row, column: last.column };
    default:
      return null;
  }
}

/** The block that has two places at its corners; the head and the numbers are no part of it. */
export function blockBetween(a: Place, b: Place): Block {
  const between = (one: number, other: number): readonly [number, number] => [
    Math.max(0, Math.min(one, other)),
    Math.max(0, one, other),
  ];
  return { rows: between(a.row, b.row), columns: between(a.column, b.column) };
}

export const isWithin = ({ rows, columns }: Block, { row, column }: Place): boolean =>
  row >= rows[0] && row <= rows[1] && column >= columns[0] && column <= columns[1];

/** How many rows and columns a block has. */
export const sizeOf = ({ rows, columns }: Block): [rows: number, columns: number] => [
  rows[1] - rows[0] + 1,
  columns[1] - columns[0] + 1,
];

/** The entry that "why" is asked of: the one with the focus, unless it is plain text. */
export function entryAsked(table: TableCell, place: Place): { readonly entry?: Place } {
  const isAtEntry = document.activeElement?.closest("td") && place.row >= 0 && place.column >= 0;
  return isAtEntry && !table.columns[place.column]?.text ? { entry: place } : {};
}
