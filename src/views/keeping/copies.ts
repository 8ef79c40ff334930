/** Notebooks that stand for others: a copy of one's own, and the same one as another tab has it. */
import { type Cell, type Notebook, setTitle } from "../../cells/index.ts";
import { words } from "./words.ts";

/** A new id: ten letters and digits by chance, 50 bits. */
export function newId(): string {
  const letters = "abcdefghijkmnpqrstuvwxyz23456789";
  return [...crypto.getRandomValues(new Uint8Array(10))].map((byte) => letters[byte % letters.length]).join("");
}

/** The same notebook under a title that says so. */
export const copyOf = (notebook: Notebook): Notebook =>
  setTitle(notebook, words.copyOf(notebook.title.trim() || words.untitled));

/** Every cell that is as it was before is the very same object: only what differs is computed and drawn anew. */
export function withSameCells(next: Notebook, before: Notebook): Notebook {
  const byId = new Map(before.cells.map((cell) => [cell.id, cell]));
  const cells = next.cells.map((cell): Cell => {
    const old = byId.get(cell.id);
    return old && JSON.stringify(old) === JSON.stringify(cell) ? old : cell;
  });
  return { ...next, cells };
}
