import type { Value } from "../cells/index.ts";

/** True where two values of cells are the same through and through. */
export function sameValue(a: Value, b: Value): boolean {
  if (typeof a !== "object" || typeof b !== "object") return a === b;
  const [left, right] = [Object.entries(a), b as Readonly<Record<string, Value>>];
  return (
    left.length === Object.keys(b).length && left.every(([key, value]) => sameValue(value, right[key] ?? Number.NaN))
  );
}
