/** What goes between whoever draws and the hands that compute for it: plain data, as a message can carry it. */
import type { Cell, StudyCell, Trial } from "../cell.ts";
import type { CellError } from "../errors.ts";
import type { Outcome } from "../studies/prepare.ts";
import type { Row } from "../studies/study.ts";
import type { StudyFault } from "../studies/study-refusal.ts";
import type { Margin, Value } from "../value.ts";

/** The cells that a hand is to know, all anew or only those that say something else, each with its place. */
export type Change =
  | { readonly cells: readonly Cell[] }
  | { readonly changed: readonly (readonly [place: number, cell: Cell])[] };

/** What is to be answered, once or, while it is under way, several times. */
export type Order =
  /** Compute one cell of the notebook as it is after the change. */
  | { readonly kind: "cell"; readonly change: Change; readonly id: string }
  /** Get a study of the notebook as it is after the change ready to run; `run` names it from then on. */
  | {
      readonly kind: "prepare";
      readonly run: number;
      readonly change: Change;
      readonly trials: readonly Trial[];
      readonly study: StudyCell;
    }
  /** Compute the pieces of a prepared study from one up to, without, another. */
  | { readonly kind: "part"; readonly run: number; readonly from: number; readonly to: number }
  /** Say what all rows come to that were told so far, these added, each with its place. */
  | { readonly kind: "conclude"; readonly run: number; readonly rows: readonly (readonly [number, Row])[] };

/** What is not answered. */
export type Notice =
  /** The order of that key is not wanted any more. */
  | { readonly kind: "stop"; readonly key: number }
  /** A study is over. */
  | { readonly kind: "drop"; readonly run: number }
  /** Nothing else is to do: call a function, so that its first call is over. */
  | { readonly kind: "warm"; readonly name: string };

/** An order has a key, which comes back with its answers. */
export type Message = (Order & { readonly key: number }) | Notice;

export type Reply =
  | { readonly kind: "cell"; readonly result: PlainResult }
  | { readonly kind: "prepared"; readonly pieces: number }
  /** The study cannot be run, for a reason that a person can mend. */
  | { readonly kind: "refused"; readonly message: string; readonly fault: StudyFault }
  /** Rows that have come since the last answer, in order, and how much of the part is done, from 0 to 1. */
  | { readonly kind: "rows"; readonly rows: readonly Row[]; readonly progress: number; readonly isLast: boolean }
  | { readonly kind: "outcome"; readonly outcome: Outcome }
  | { readonly kind: "stopped" }
  /** Our own fault, in words of ours. */
  | { readonly kind: "fault"; readonly message: string };

export type Answer = Reply & { readonly key: number };

/** True where no more answers to the same order follow. */
export const isLast = (answer: Answer): boolean => answer.kind !== "rows" || answer.isLast;

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
