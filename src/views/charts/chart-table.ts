/** The numbers behind a chart: for reading, for screen readers, and for a file of comma-separated values. */

/** A table; numbers are in the unit of their column, and null where there is none. */
export interface ChartTable {
  readonly title: string;
  readonly columns: readonly { readonly name: string; readonly unit: string }[];
  readonly rows: readonly (readonly (number | string | null)[])[];
}

/**
 * Tables as comma-separated values (RFC 4180): lines end in CR LF, a field with a comma, a quote or a line break is quoted,
 * and a quote within is doubled. The head comes first; of several tables each is led by its title; an empty line parts
 * them. A text that could be taken for a formula where the file is opened is led by an apostrophe.
 */
export function csvText(head: readonly (readonly string[])[], tables: readonly ChartTable[]): string {
  const blocks = tables.map(({ title, columns, rows }) => [
    ...(tables.length > 1 ? [[title]] : []),
    columns.map(({ name, unit }) => (unit === "" ? name : `${name} (${unit})`)),
    ...rows,
  ]);
  const all: readonly (readonly (readonly (number | string | null)[])[])[] = [head, ...blocks];
  const lines = all.flatMap((block, index) => (index === 0 ? block : [[], ...block]));
  return lines.map((line) => `${line.map(field).join(",")}\r\n`).join("");
}

function field(value: number | string | null): string {
  if (value === null) return "";
  if (typeof value === "number") return String(Number(value.toPrecision(12)));
  const text = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
