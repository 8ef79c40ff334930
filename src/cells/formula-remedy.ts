import { angle, type Dimension, dimensionless, divide, equal, isDimensionless } from "../library/quantity.ts";
import { units } from "../library/units.ts";
import { messages } from "./messages.ts";
import { numberWithin } from "./shapes.ts";
import type { TypedTree } from "./typed-tree.ts";

/**
 * What to write where a number of another dimension is needed, told in `unit`: `30 deg` for 30, `x * 1 mm` for a bare x,
 * an angle made a number and the reverse; null where nothing simple helps.
 */
export function remedyFor(got: TypedTree, wanted: Dimension, unit: string, text: string): string | null {
  const shape = numberWithin(got.shape);
  if (!shape) return null;
  const written = text.slice(...got.at);
  const term = written.length > longest ? "(…)" : isLoose(got) ? `(${written})` : written;
  const missing = divide(wanted, shape.dimension);
  if (isDimensionless(shape.dimension) && !isDimensionless(wanted)) {
    // No literal has a unit such as 1/rad: that is divided by.
    if (unit.startsWith("1/")) return messages.sayUnit(`${term} / 1 ${unit.slice(2)}`);
    if (isLiteral(got)) return messages.sayUnit(`${written} ${unit}`);
    const other = equal(wanted, angle) ? ` or ${term} * 1 ${unit === "rad" ? "deg" : "rad"}` : "";
    return messages.sayUnit(`${term} * 1 ${unit}${other}`);
  }
  if (wanted[4] !== 0 && shape.dimension[4] !== 0) return null;
  if (equal(missing, angle)) return messages.sayUnit(`${term} * 1 rad`);
  if (equal(missing, divide(dimensionless, angle))) return messages.sayUnit(`${term} / 1 rad`);
  return null;
}

/** The unit that a word which is none was meant for: its power may lack the sign, as in mm2. */
export function meantUnit(word: string, nearest: string | null): string | null {
  const [, spelling = "", power] = /^([a-z]+)(\d)$/i.exec(word) ?? [];
  return units.has(spelling) ? `${spelling}^${power}` : nearest;
}

/** A term of more characters is not repeated in a remedy. */
const longest = 40;

/** A number as written, its sign included. */
const isLiteral = (tree: TypedTree): boolean =>
  tree.type === "negate" ? isLiteral(tree.of) : tree.type === "constant" && tree.name === undefined;

/** Needs brackets before it is multiplied. */
const isLoose = (tree: TypedTree): boolean =>
  tree.type === "if" || (tree.type === "arithmetic" && (tree.sign === "+" || tree.sign === "-"));
