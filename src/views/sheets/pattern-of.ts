import type { Result } from "../../cells/index.ts";
import type { PatternValue } from "./parts.ts";

/** The pattern that a result is, or has in its field `pattern`; null where it has none. */
export function patternOf(result: Extract<Result, { readonly ok: true }>): PatternValue | null {
  const { shape, value } = result;
  if (shape.kind !== "record") return null;
  if (shape.type === "pattern") return value as unknown as PatternValue;
  const field = shape.fields.pattern;
  if (field?.kind !== "record" || field.type !== "pattern") return null;
  return (value as unknown as { readonly pattern: PatternValue }).pattern;
}
