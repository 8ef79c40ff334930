/** What goes between whoever draws and the hands that compute for it: plain data, as a message can carry it. */
import type { Cell } from "../cell.ts";
import type { CellError } from "../errors.ts";
import type { Margin, Value } from "../value.ts";

/** The cells that a hand is to know, all anew or only those that say something else, each with its place. */
export type Change =
  | { readonly cells: readonly Cell[] }
  | { readonly changed: readonly (readonly [place: number, cell: Cell])[] };

/** Compute one cell of the notebook as it is after the change. */
export interface CellOrder {
  readonly kind: "cell";
  /** Comes back with the answer. */
  readonly key: number;
  readonly change: Change;
  readonly id: string;
}

/** Nothing else is to do: compute what makes the first call of slow functions slow. */
export interface WarmOrder {
  readonly kind: "warm";
}

export type Order = CellOrder | WarmOrder;

export interface CellAnswer {
  readonly kind: "cell";
  readonly key: number;
  readonly result: PlainResult;
}

/** Our own fault, in words of ours. */
export interface FaultAnswer {
  readonly kind: "fault";
  readonly key: number;
  readonly message: string;
}

export type Answer = CellAnswer | FaultAnswer;

/** A result without its shape, which can hold functions; whoever asked knows it. */
export type PlainResult =
  | { readonly ok: true; readonly value: Value; readonly margin?: Margin | null }
  | { readonly ok: false; readonly error: CellError };

/** What has to be told to a hand that knows the cells `before`, so that it knows those of `now`. */
export function changeOf(before: readonly Cell[] | null, now: readonly Cell[]): Change {
  if (!before || before.length !== now.length) return { cells: now };
  return { changed: now.flatMap((cell, place) => (cell === before[place] ? [] : [[place, cell] as const])) };
}

/** The cells after a change. */
export function changed(cells: readonly Cell[], change: Change): readonly Cell[] {
  if ("cells" in change) return change.cells;
  if (change.changed.length === 0) return cells;
  const now = cells.slice();
  for (const [place, cell] of change.changed) now[place] = cell;
  return now;
}
