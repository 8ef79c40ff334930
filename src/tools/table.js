/**
 * Lays out rows of text in columns, the first row as the head.
 * @param {readonly (readonly string[])[]} rows as many entries in each row as in the first
 * @returns {string} without a newline at the end
 */
export function table(rows) {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const lines = rows.map((row) =>
    row
      .map((entry, column) => entry.padEnd(widths[column] ?? 0))
      .join("  ")
      .trimEnd(),
  );
  const rule = widths.map((width) => "-".repeat(width)).join("  ");
  return [lines[0], rule, ...lines.slice(1)].join("\n");
}
