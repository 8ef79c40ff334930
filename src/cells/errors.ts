/** What can go wrong in a cell: a closed set. A cell's error is a value, not an exception. */

export const errorCodes = [
  "syntax",
  "unknown_name",
  "unknown_unit",
  "unknown_field",
  "wrong_dimension",
  "wrong_shape",
  "wrong_argument",
  "loop",
  "waits",
  "duplicate_name",
  "reserved_name",
  "bad_entry",
  "out_of_domain",
  "not_finite",
  "too_long",
  "too_deep",
  "too_large",
] as const;
export type ErrorCode = (typeof errorCodes)[number];

/** The error of a cell, with the very term it marks. */
export interface CellError {
  readonly code: ErrorCode;
  /** One or two sentences: what is wrong and the remedy. */
  readonly message: string;
  /** Range of characters in the cell's formula, or in the table entry or range entry that `place` names. */
  readonly at: readonly [from: number, to: number];
  /** The cell at which it began: the name, or the id of a cell without one. */
  readonly root: string;
  /** The table entry it stands in; row counts from 0. */
  readonly place?: { readonly row: number; readonly column: string };
}

/** Thrown within the language and caught at a cell's border, where it becomes a CellError. */
export class FormulaError extends Error {
  constructor(
    readonly code: ErrorCode,
    message: string,
    readonly at: readonly [from: number, to: number],
    /** For `waits`: the cell at which it began. */
    readonly root: string | null = null,
    /** The table entry it stands in. */
    readonly place: { readonly row: number; readonly column: string } | null = null,
  ) {
    super(message);
    this.name = "FormulaError";
  }
}
