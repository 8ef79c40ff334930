import type { Shape } from "../library/spec.ts";
import type { CellError } from "./errors.ts";

/** What a cell holds once computed: numbers in SI, texts, booleans, lists, records by field. */
export type Value = number | string | boolean | readonly Value[] | RecordValue;
export interface RecordValue {
  readonly [field: string]: Value;
}

/** The result of a cell: a value with its shape, or the error that stands in its place. */
export type Result =
  | { readonly ok: true; readonly value: Value; readonly shape: Shape; readonly margin?: number | null }
  | { readonly ok: false; readonly error: CellError };
