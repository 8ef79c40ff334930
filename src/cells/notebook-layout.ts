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

/** `taken` is what already stands on the line, and after the value: its key, and a comma. */
function print(value: unknown, indent: string, taken: number, isRow: boolean): string {
  const line = onOneLine(value);
  if (typeof value !== "object" || value === null) return line;
  if (isRow || indent.length + taken + line.length <= lineWidth) return line;
  const inner = `${indent}  `;
  const entries = Array.isArray(value)
    ? value.map((each) => ["", each] as const)
    : keysOf(value).map(([key, each]) => [`${JSON.stringify(key)}: `, each] as const);
  const lines = entries.map(([key, each], index) => {
    const comma = index < entries.length - 1 ? "," : "";
    const row = Array.isArray(value) && Array.isArray(each);
    return `${inner}${key}${print(each, inner, key.length + comma.length, row)}${comma}`;
  });
  const [open, close] = Array.isArray(value) ? "[]" : "{}";
  return `${open}\n${lines.join("\n")}\n${indent}${close}`;
}

/** JSON on one line, with a blank after each comma and colon. */
function onOneLine(value: unknown): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(onOneLine).join(", ")}]`;
  return `{${keysOf(value)
    .map(([key, each]) => `${JSON.stringify(key)}: ${onOneLine(each)}`)
    .join(", ")}}`;
}

const keysOf = (value: object): readonly [string, unknown][] =>
  Object.entries(value).filter(([, each]) => each !== undefined);
