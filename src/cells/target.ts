/** What a trial, a study or the command line sets: a given, or one entry of a table written `panels[2].break`. */

import type { StudyCell } from "./cell.ts";

/** A name alone, or with the row, counted from 1 as it is written, and the column of an entry. */
export interface Target {
  readonly name: string;
  readonly entry: { readonly row: number; readonly column: string } | null;
}

/** Reads a target; a text that is neither is taken as a name, which then belongs to no cell. */
export function readTarget(text: string): Target {
  const match = /^\s*([A-Za-z]\w*)\s*\[\s*(\d+)\s*\]\s*\.\s*(\w+)\s*$/.exec(text);
  if (!match) return { name: text.trim(), entry: null };
  const [, name = "", row, column = ""] = match;
  return { name, entry: { row: Number(row), column } };
}

/** An entry as a target is written. */
export const entryTarget = (table: string, row: number, column: string): string => `${table}[${row}].${column}`;

/** The inputs of a study as they are written, and those of the other half. */
export const targetsOf = ({ inputs }: StudyCell): string[] =>
  inputs.flatMap(({ input, pair }) => (pair === undefined ? [input] : [input, pair]));
