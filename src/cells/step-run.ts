/** The run of a step: takes the results of its inputs, waits for the first that failed, else computes. */
import type { Shape } from "../library/spec.ts";
import { type CellError, FormulaError } from "./errors.ts";
import { messages } from "./messages.ts";
import type { Failed, Inputs, Margin, Ok, Result, Run, Value } from "./value.ts";

/** Where each input is named in the cell, for the error of a cell that waits. */
export type Mentions = (input: number) => Pick<CellError, "at" | "place">;

/** What a step computes from the values of its inputs. */
export interface Computation {
  readonly run: Run;
  readonly shape: Shape;
  /** Of a check. */
  readonly margin?: (inputs: Inputs, holds: boolean) => Margin | null;
}

/**
 * A run that computes once all inputs have values; faults become the cell's error with this root. One closure does it
 * all: in a long chain of cells it is memory, not arithmetic, that takes the time.
 */
export function runnerOf(
  root: string,
  mentions: Mentions,
  { run, shape, margin }: Computation,
): (inputs: readonly Result[]) => Result {
  return (results) => {
    for (let index = 0; index < results.length; index++) {
      const result = results[index] as Result;
      if (!result.ok) return waiting(result, mentions(index));
    }
    const inputs = results as readonly Ok[];
    try {
      const value = run(inputs, noParameters);
      return margin ? { ok: true, value, shape, margin: margin(inputs, value === true) } : { ok: true, value, shape };
    } catch (error) {
      if (error instanceof FormulaError) return { ok: false, error: cellError(error, root) };
      throw error;
    }
  };
}

const noParameters: readonly Value[] = [];

/** The result of a cell that waits for one that failed: it names the cell at which the failure began. */
export function waiting(input: Failed, mention: Pick<CellError, "at" | "place">): Failed {
  const { root } = input.error;
  return { ok: false, error: { code: "waits", message: messages.waits(root), root, ...mention } };
}

/** A fault told as the error of a cell; a waiting one names the cell at which it began. */
export const cellError = (fault: FormulaError, root: string): CellError => ({
  code: fault.code,
  message: fault.message,
  at: fault.at,
  root: fault.root ?? root,
  ...(fault.place && { place: fault.place }),
});
