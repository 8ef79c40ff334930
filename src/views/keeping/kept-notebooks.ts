/** Reading what is kept, whatever stands in the storage. */
import { type Notebook, NotebookError, packNotebook, readNotebook } from "../../cells/index.ts";
import { type Kept, type Shelf, ShelfError } from "./shelf.ts";
import { words } from "./words.ts";

/** A notebook that is kept, and can be shown. */
export interface Found {
  readonly kept: Kept;
  readonly notebook: Notebook;
}

/** How long the storage may take to answer before the app opens without it, in ms. */
const patience = 4000;

/** A kept notebook. @throws ShelfError, and NotebookError with a whole sentence where it is damaged or gone */
export async function readKept(shelf: Shelf, id: string): Promise<Found> {
  const kept = await within(patience, shelf.get(id));
  if (!kept) throw new NotebookError("", words.gone);
  try {
    if (kept.text === null) throw new NotebookError("", words.textMissing);
    return { kept, notebook: readNotebook(kept.text) };
  } catch (error) {
    const { message } = error as Error;
    throw new NotebookError("", words.damaged(kept.entry.title.trim() || words.untitled, message));
  }
}

/** Under which id just this notebook is kept already; null where none is. */
export async function idOfSame(shelf: Shelf, notebook: Notebook): Promise<string | null> {
  const text = packNotebook(notebook);
  try {
    for (const { id, title } of await within(patience, shelf.entries())) {
      if (title === notebook.title && (await shelf.get(id))?.text === text) return id;
    }
  } catch {
    // What cannot be read cannot be found; it opens all the same.
  }
  return null;
}

/** The ids of all that is kept, the one opened last first; none where the storage cannot be read. */
export async function idsKept(shelf: Shelf): Promise<readonly string[]> {
  const entries = await within(patience, shelf.entries()).catch(() => []);
  return entries.toSorted((a, b) => b.openedAt - a.openedAt).map(({ id }) => id);
}

/** The promise, or an error where it takes longer than so many ms. */
function within<T>(ms: number, promise: Promise<T>): Promise<T> {
  const late = new Promise<never>((_, fail) => setTimeout(() => fail(new ShelfError("refused")), ms));
  return Promise.race([promise, late]);
}
