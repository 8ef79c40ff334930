import { angle, type Dimension, equal, isDimensionless } from "../library/quantity.ts";
import { messages } from "./messages.ts";
import { numberWithin } from "./shapes.ts";
import type { TypedTree } from "./typed-tree.ts";

/** What to write where a value of another dimension is needed, or null where nothing simple helps. */
export function remedyFor(got: TypedTree, wanted: Dimension, unit: string, text: string): string | null {
  const shape = numberWithin(got.shape);
  if (!shape) return null;
  const written = text.slice(...got.at);
  if (got.type === "constant" && isDimensionless(shape.dimension)) {
    return isDimensionless(wanted) ? null : messages.sayUnit(`${written} ${unit}`);
  }
  const bracketed = /^[\w.]+(\(.*\))?$/s.test(written) ? written : `(${written})`;
  if (equal(shape.dimension, angle) && isDimensionless(wanted)) return messages.sayUnit(`${bracketed} / 1 rad`);
  if (isDimensionless(shape.dimension) && equal(wanted, angle)) return messages.sayUnit(`${bracketed} * 1 rad`);
  return null;
}
