/** Typeset mathematics as plain data, before it is an element: what the printer makes and tests can look at. */

/**
 * How a leaf looks: the name of a cell, a function, a unit, a word of the language, a sign between two things; null for
 * what has no look.
 */
export type Look = "name" | "call" | "unit" | "word" | "infix" | null;

export type Maths =
  | { readonly tag: "mi" | "mn" | "mo" | "mtext"; readonly text: string; readonly look: Look }
  | {
      readonly tag: "mrow" | "mfrac" | "msqrt" | "msup" | "msub" | "mtable" | "mtr" | "mtd";
      readonly parts: readonly Maths[];
      /** Cases of an `if`, which stand behind a brace. */
      readonly look?: "cases";
    };

export const leaf = (tag: "mi" | "mn" | "mo" | "mtext", text: string, look: Look = null): Maths => ({
  tag,
  text,
  look,
});
/** A sign between two things: + · = <. */
export const infix = (sign: string): Maths => leaf("mo", sign, "infix");
export const row = (...parts: readonly Maths[]): Maths =>
  parts.length === 1 ? (parts[0] as Maths) : { tag: "mrow", parts };
export const fraction = (over: Maths, under: Maths): Maths => ({ tag: "mfrac", parts: [over, under] });
export const root = (of: Maths): Maths => ({ tag: "msqrt", parts: [of] });
export const power = (base: Maths, exponent: Maths): Maths => ({ tag: "msup", parts: [base, exponent] });
export const index = (base: Maths, ...parts: readonly Maths[]): Maths => ({
  tag: "msub",
  parts: [base, row(...parts)],
});
export const fenced = (open: string, of: Maths, close: string): Maths => row(leaf("mo", open), of, leaf("mo", close));

/** The same in one line of text, for those who hear it. */
export function mathsText(maths: Maths): string {
  return spoken(maths)
    .replaceAll(/[ \u00a0\u202f]+/g, " ")
    .trim();
}

function spoken(maths: Maths): string {
  if ("text" in maths) {
    if (maths.look === "infix") return ` ${maths.text} `;
    return maths.text === "," || maths.text === ":" ? `${maths.text} ` : maths.text;
  }
  const parts = maths.parts.map(spoken);
  const [first = "", second = ""] = parts;
  switch (maths.tag) {
    case "mfrac":
      return `${bracketed(maths.parts[0], first)} / ${bracketed(maths.parts[1], second)}`;
    case "msqrt":
      return `√(${first.trim()})`;
    case "msup":
      return `${first}^${bracketed(maths.parts[1], second)}`;
    case "msub":
      return `${first} [${second.trim()}]`;
    case "mtable":
      return parts.join("; ");
    case "mtr":
      return parts.join(" ");
    default:
      return parts.join("");
  }
}

const bracketed = (maths: Maths | undefined, text: string): string =>
  maths && "parts" in maths && maths.tag === "mrow" ? `(${text.trim()})` : text;

const namespace = "http://www.w3.org/1998/Math/MathML";

/**
 * One line of mathematics as an element, its alternative text with it. The pieces of a long line may stand one under the
 * other where there is no room beside each other.
 */
export function mathsElement(pieces: readonly Maths[], document: Document): Element {
  const math = document.createElementNS(namespace, "math");
  math.setAttribute("displaystyle", "true");
  math.setAttribute("alttext", mathsText(row(...pieces)));
  const line = document.createElementNS(namespace, "mrow");
  line.setAttribute("class", "wraps");
  for (const piece of pieces) {
    const part = document.createElementNS(namespace, "mrow");
    part.append(elementOf(piece, document));
    line.append(part);
  }
  math.append(line);
  return math;
}

function elementOf(maths: Maths, document: Document): Element {
  const element = document.createElementNS(namespace, maths.tag);
  if (maths.look && maths.look !== "infix") element.setAttribute("class", `m-${maths.look}`);
  if ("text" in maths) {
    element.textContent = maths.text;
    // Of an operator at the edge of a piece its neighbours do not tell that it stands between two things.
    if (maths.look === "infix") element.setAttribute("form", "infix");
    return element;
  }
  // A fraction within a fraction is no smaller, so that it can be read.
  if (maths.tag === "mfrac") element.setAttribute("displaystyle", "true");
  element.append(...maths.parts.map((part) => elementOf(part, document)));
  return element;
}
