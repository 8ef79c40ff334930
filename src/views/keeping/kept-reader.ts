/** Reading kept notebooks, whatever stands in the storage: what cannot be read is said in a sentence. */
import { type Notebook, NotebookError, readNotebook } from "../../cells/index.ts";
import type { OpenedFile } from "../files.ts";
import { type Kept, savedNotebook } from "./kept.ts";
import { type Shelf, ShelfError } from "./shelf.ts";
import { words } from "./words.ts";

/** A kept notebook that can be shown, or what is wrong with it, alone and as a whole sentence. */
export type Found =
  | { readonly notebook: Notebook; readonly saved: Notebook; readonly kept: Kept }
  | { readonly fault: string; readonly sentence: string };

/** How long the storage may take to answer before the app goes on without it, in ms. */
const patience = 4000;

/** What is kept under an id. */
export async function readKept(shelf: Pick<Shelf, "get">, id: string): Promise<Found> {
  let title: string = words.untitled;
  try {
    const kept = await within(patience, shelf.get(id));
    if (!kept) return { fault: words.gone, sentence: words.gone };
    title = kept.entry.title || title;
    if (kept.text === null) throw new NotebookError("", words.textMissing);
    const notebook = readNotebook(kept.text);
    return { notebook, saved: savedNotebook(kept, notebook), kept };
  } catch (error) {
    const { message } = error as Error;
    if (error instanceof NotebookError) return { fault: message, sentence: words.damaged(title, message) };
    if (!(error instanceof ShelfError)) throw error;
    const sentence = words.unreadable[error.hindrance];
    return { fault: sentence, sentence };
  }
}

/** The entry of a file that is kept already, and just as it stands in the file; null where none is. */
export async function idOfFile(
  shelf: Pick<Shelf, "get" | "entries">,
  { name, text }: OpenedFile,
): Promise<string | null> {
  try {
    for (const { id, fileName, changed } of await within(patience, shelf.entries())) {
      if (fileName === name && !changed && (await shelf.get(id))?.savedText === text) return id;
    }
  } catch {
    // What cannot be read cannot be found; the file opens all the same.
  }
  return null;
}

/** The ids of all that is kept, the latest first; none where the storage cannot be read. */
export async function idsKept(shelf: Pick<Shelf, "entries">): Promise<readonly string[]> {
  const entries = await within(patience, shelf.entries()).catch(() => []);
  return entries.map(({ id }) => id);
}

/** The promise, or an error where it takes longer than so many ms. */
function within<T>(ms: number, promise: Promise<T>): Promise<T> {
  const late = new Promise<never>((_, fail) => setTimeout(() => fail(new ShelfError("refused")), ms));
  return Promise.race([promise, late]);
}
