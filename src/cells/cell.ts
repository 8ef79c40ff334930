import type { CellOf, Column, Kind, StudyInput, Trial } from "./notebook-schema.ts";

export type NoteCell = CellOf<"note">;
export type GivenCell = CellOf<"given">;
export type DerivedCell = CellOf<"derived">;
export type TableCell = CellOf<"table">;
export type CheckCell = CellOf<"check">;
export type DecisionCell = CellOf<"decision">;
export type QuestionCell = CellOf<"question">;
export type DrawingCell = CellOf<"drawing">;
export type ChartCell = CellOf<"chart">;
export type StudyCell = CellOf<"study">;
export type SheetCell = CellOf<"sheet">;

/** One entry of a notebook, of one of the kinds. */
export type Cell =
  | NoteCell
  | GivenCell
  | DerivedCell
  | TableCell
  | CheckCell
  | DecisionCell
  | QuestionCell
  | DrawingCell
  | ChartCell
  | StudyCell
  | SheetCell;

/** A cell with a name of its own; formulas can call each but a study. */
export type NamedCell = GivenCell | DerivedCell | TableCell | CheckCell | StudyCell;

export const isNamed = (cell: Cell): cell is NamedCell => "name" in cell;

export type { Column, Kind, StudyInput, Trial };

/** One document: an immutable value. Edits make a new one that shares every cell they leave alone. */
export interface Notebook {
  readonly title: string;
  readonly cells: readonly Cell[];
  /** Ids of what is pinned to the board, in its order. Absent where that is all drawings and charts, as on the page. */
  readonly board?: readonly string[];
  readonly trials: readonly Trial[];
  /** What the tests hold it to: name → "9.21 deg ± 0.01 deg". Absent in most notebooks. */
  readonly expect?: Readonly<Record<string, string>>;
}
