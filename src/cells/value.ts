import type { Shape } from "../library/spec.ts";
import type { CellError } from "./errors.ts";

/** What a cell holds once computed: numbers in SI, texts, booleans, lists, records by field. */
export type Value = number | string | boolean | readonly Value[] | RecordValue;
export interface RecordValue {
  readonly [field: string]: Value;
}

/**
 * A compiled formula: the results of the cells it names, by slot, all of them known to have a value, and the values of
 * the parameters of the function cell it is in.
 */
export type Run = (inputs: Inputs, parameters: readonly Value[]) => Value;
export type Inputs = readonly { readonly value: Value }[];

/** By how much a check holds (more than 0) or fails. */
export interface Margin {
  /** How far the smaller side is from the limit, as a share of the limit; null where the limit is 0. */
  readonly share: number | null;
  /** The same distance in SI, and the unit to tell it in. */
  readonly gap: number;
  readonly unit: string;
}

/**
 * The result of a cell: a value with its shape, or the error that stands in its place. Cells with several formulas
 * (a note's braces, a chart's axes) tell each of them in `parts`, also where one of them failed.
 */
export type Result = Ok | Failed;
export interface Ok {
  readonly ok: true;
  readonly value: Value;
  readonly shape: Shape;
  readonly margin?: Margin | null;
  readonly parts?: readonly Result[];
}
export interface Failed {
  readonly ok: false;
  readonly error: CellError;
  readonly parts?: readonly Result[];
}
