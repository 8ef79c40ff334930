import type { FunctionTable } from "../../../src/library/spec.ts";

/** The same functions, of which those named, and no others, are taken to be slow. */
export const withSlow = (table: FunctionTable, slow: readonly string[]): FunctionTable =>
  new Map(
    [...table].map(([name, { isSlow: _, ...spec }]) => [name, slow.includes(name) ? { ...spec, isSlow: true } : spec]),
  );
