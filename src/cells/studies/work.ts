/** A study, or a part of one, done bit by bit, so that a worker can be told to stop in between. */
import type { Row, Study } from "./study.ts";

/** Which part of how many, counted from 1. */
export interface Share {
  readonly index: number;
  readonly of: number;
}

export const whole: Share = { index: 1, of: 1 };

/** The pieces of a share: from one up to, without, another. Shares are as even as can be, in order, and leave none out. */
export function piecesOf(pieces: number, { index, of }: Share): { readonly from: number; readonly to: number } {
  return { from: Math.floor((pieces * (index - 1)) / of), to: Math.floor((pieces * index) / of) };
}

/** Work under way. */
export interface Work {
  /** The rows that are there so far, of the pieces in order. */
  readonly rows: readonly Row[];
  /** Of this work: how much is done, from 0 to 1. */
  readonly progress: number;
  /** Runs so many variants more, or what is left; true once all is done. */
  next(most: number): boolean;
}

/** Begins a share of a study. Nothing is computed before `next`. */
export function workOn(study: Study, share: Share = whole): Work {
  const { from, to } = piecesOf(study.pieces, share);
  return workOnPieces(study, from, to);
}

/** Begins the pieces of a study from one up to, without, another. Nothing is computed before `next`. */
export function workOnPieces(study: Study, from: number, to: number): Work {
  const steps = study.run(from, to);
  const rows: Row[] = [];
  let inPiece = 0;
  let isDone = from >= to;
  return {
    rows,
    get progress() {
      if (isDone) return 1;
      return (rows.length + Math.min(0.99, inPiece / study.variantsOfPiece)) / (to - from);
    },
    next(most) {
      for (let count = 0; count < most && !isDone; count++) {
        const { value, done } = steps.next();
        if (done) isDone = true;
        else if (value === null) inPiece++;
        else {
          rows.push(value);
          inPiece = 0;
        }
      }
      if (rows.length === to - from) isDone = true;
      return isDone;
    },
  };
}

/** The rows of a whole study, computed at once. */
export function rowsOf(study: Study, share: Share = whole): readonly Row[] {
  const work = workOn(study, share);
  while (!work.next(Number.MAX_SAFE_INTEGER));
  return work.rows;
}
