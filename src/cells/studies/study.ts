/** What all studies have in common: work that is cut into pieces, and rows of plain data that come out of each. */
import type { StudyCell } from "../cell.ts";

/**
 * What one piece of a study comes to: plain data that JSON can hold, so that it can go from a worker to the page, or from
 * one machine to another. Each sort of study has a form of its own.
 */
export type Row = readonly unknown[];

/** A study that is ready to run. The pieces are independent: whoever computes them, in whatever order, rows are the same. */
export interface Study<R extends Row = Row, O = unknown> {
  readonly cell: StudyCell;
  /** How many pieces there are. */
  readonly pieces: number;
  /** How many variants a piece runs, at most where it can be fewer. */
  readonly variantsOfPiece: number;
  /** Computes the pieces from one up to, without, another. Pauses after each variant; a row is given when its piece ends. */
  run(from: number, to: number): Iterator<R | null, unknown>;
  /** What the rows come to. While rows are missing (undefined) it tells of those that are there. */
  conclude(rows: readonly (R | undefined)[]): O;
}

/** A result that is told: what it is, and the unit in which a person reads it. Values are in SI throughout. */
export interface ToldResult {
  readonly text: string;
  /** The SI unit. */
  readonly dimension: string;
  readonly unit: string;
}

/** A value that could not be computed, and why. */
export interface Gap {
  readonly reason: string;
}
