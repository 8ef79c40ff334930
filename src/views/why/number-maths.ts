/** Numbers, units and names as they are typeset. */
import type { NumberText } from "../format.ts";
import { fraction, index, infix, leaf, type Maths, power, row } from "./maths.ts";

const thinSpace = leaf("mtext", "\u202f");

/** A number with its unit, as `format.ts` tells it: decimals, powers of ten, shop fractions. */
export function quantityMaths({ number, unit }: NumberText): Maths {
  const bare = numberMaths(number);
  if (unit === "") return bare;
  return unit === "%" || unit === "°" ? row(bare, unitMaths(unit)) : row(bare, thinSpace, unitMaths(unit));
}

function numberMaths(text: string): Maths {
  const [, about, sign, size = text] = /^(≈ )?(−|-)?(.+)$/.exec(text) ?? [];
  const before = [...(about ? [leaf("mo", "≈")] : []), ...(sign ? [leaf("mo", "−")] : [])];
  return row(...before, sizeMaths(size));
}

function sizeMaths(text: string): Maths {
  const [, whole, over, under] = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(text) ?? [];
  if (over && under) {
    const part = fraction(leaf("mn", over), leaf("mn", under));
    return whole ? row(leaf("mn", whole), thinSpace, part) : part;
  }
  const [, digits, exponent] = /^([\d.]+)e(-?\d+)$/.exec(text) ?? [];
  if (!digits || !exponent) return leaf("mn", text);
  return row(leaf("mn", digits), infix("·"), power(leaf("mn", "10"), numberMaths(exponent)));
}

/** A unit, upright: `m/s^2` as m/s². */
export const unitMaths = (unit: string): Maths =>
  leaf("mtext", unit.replace(/\^(-?[\d.]+)/g, (_, exponent: string) => raised(exponent)).replaceAll(" ", "·"), "unit");

const raised = (digits: string): string =>
  [...digits].map((digit) => "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(digit)] ?? (digit === "-" ? "⁻" : "˙")).join("");

/**
 * A name in words that can be read: `tip_break` as "tip break"; a letter, or what counts something, carries the rest as
 * an index: `v_max`, `panel_2`, `x1`.
 */
export function nameMaths(name: string, look: "name" | "call" | null = "name"): Maths {
  const [, letters = "", digits] = /^([A-Za-z]+)(\d+)$/.exec(name) ?? [];
  if (digits) return index(wordMaths(letters, look), leaf("mn", digits, look));
  const [first = name, ...rest] = name.split("_").filter((word) => word !== "");
  if (first.length === 1 && rest.length > 0) return index(wordMaths(first, look), wordMaths(rest.join("\u00a0"), look));
  const last = rest.at(-1) ?? "";
  if (!/^\d+$/.test(last)) return wordMaths([first, ...rest].join("\u00a0"), look);
  return index(wordMaths([first, ...rest.slice(0, -1)].join("\u00a0"), look), leaf("mn", last, look));
}

/** A single letter is a symbol, in italics; a word stands upright by the rules of MathML. */
const wordMaths = (word: string, look: "name" | "call" | null): Maths => leaf("mi", word, look);
