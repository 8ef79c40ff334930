/** The run of a step: takes the results of its inputs, waits for the first that failed, else computes. */
import { type CellError, FormulaError } from "./errors.ts";
import { messages } from "./messages.ts";
import type { Failed, Ok, Result, Value } from "./value.ts";

/** Where each input is named in the cell, for the error of a cell that waits. */
export type Mentions = (input: number) => Pick<CellError, "at" | "place">;

/** A run that computes by `compute` once all inputs have values; faults become the cell's error with this root. */
export function runnerOf(
  root: string,
  mentions: Mentions,
  compute: (values: readonly Value[]) => Ok,
): (inputs: readonly Result[]) => Result {
  // Taken up anew by each run; what computes from it keeps none of it.
  const values: Value[] = [];
  return (inputs) => {
    for (let index = 0; index < inputs.length; index++) {
      const input = inputs[index] as Result;
      if (!input.ok) return waiting(input, mentions(index));
      values[index] = input.value;
    }
    try {
      return compute(values);
    } catch (error) {
      if (error instanceof FormulaError) return { ok: false, error: cellError(error, root) };
      throw error;
    }
  };
}

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
