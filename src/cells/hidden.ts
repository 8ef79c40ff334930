import { isNamed, type Notebook } from "./cell.ts";
import { readSignature } from "./names.ts";

/**
 * Ids of the cells whose value stays hidden: those that a question asks about and that nobody has answered yet. A
 * question about a field or an element hides the whole cell.
 */
export function hiddenCells(notebook: Notebook): ReadonlySet<string> {
  const asked = new Set(
    notebook.cells.flatMap((cell) =>
      cell.kind === "question" && cell.answer === null ? [/^\s*(\w+)/.exec(cell.about)?.[1]] : [],
    ),
  );
  if (asked.size === 0) return new Set();
  return new Set(
    notebook.cells.flatMap((cell) => (isNamed(cell) && asked.has(readSignature(cell.name).name) ? [cell.id] : [])),
  );
}
