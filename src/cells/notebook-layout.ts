/** How a notebook's JSON is laid out, so that a person can read it and compare two versions line by line. */

/** Columns that a line may fill: its indentation, its key and a comma after it counted, in UTF-16 code units. */
export const lineWidth = 120;

/**
 * JSON with two spaces. An object or list that fits its line stays on it, else each of its entries has a line of its own;
 * a row, that is a list within a list, stays on one line however long.
 */
export function layOut(value: unknown): string {
  return print(value, "", 0, false);
}

/** `taken` is what stands on the line beside the value: its key before it, and a comma after it. */
function print(value: unknown, indent: string, taken: number, isRow: boolean): string {
  const line = onOneLine(value, isRow ? Number.POSITIVE_INFINITY : lineWidth - indent.length - taken);
  if (line !== null) return line;
  // Nothing can break a text, a number or a word, however long.
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const inner = `${indent}  `;
  const entries = entriesOf(value);
  const lines = entries.map(([key, each], index) => {
    const comma = index < entries.length - 1 ? "," : "";
    const row = Array.isArray(value) && Array.isArray(each);
    return `${inner}${key}${print(each, inner, key.length + comma.length, row)}${comma}`;
  });
  const [open, close] = bracketsOf(value);
  return `${open}\n${lines.join("\n")}\n${indent}${close}`;
}

/** JSON with a blank after each comma and colon, or null as soon as it is longer than there is room for. */
function onOneLine(value: unknown, room: number): string | null {
  if (typeof value !== "object" || value === null) {
    const line = JSON.stringify(value);
    return line.length <= room ? line : null;
  }
  const [open, close] = bracketsOf(value);
  let line = open;
  for (const [key, each] of entriesOf(value)) {
    const before = `${line === open ? "" : ", "}${key}`;
    const entry = onOneLine(each, room - line.length - before.length - close.length);
    if (entry === null) return null;
    line += before + entry;
  }
  line += close;
  return line.length <= room ? line : null;
}

/** What stands between the brackets: the key as it is written, empty in a list, and the value. */
function entriesOf(value: object): readonly (readonly [key: string, value: unknown])[] {
  if (Array.isArray(value)) return value.map((each) => ["", each]);
  return Object.entries(value)
    .filter(([, each]) => each !== undefined)
    .map(([key, each]) => [`${JSON.stringify(key)}: `, each]);
}

const bracketsOf = (value: object): readonly [open: string, close: string] =>
  Array.isArray(value) ? ["[", "]"] : ["{", "}"];
