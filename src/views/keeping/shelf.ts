import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import { draftsFrom, type Entry, entryFrom, inOrder, type Kept, textFrom } from "./kept.ts";

/** Why nothing can be kept or read: no room, no storage at all, another tab has written, a later Spanwise keeps here. */
export type Hindrance = "full" | "refused" | "overwritten" | "later";

/** The one error of the shelf. */
export class ShelfError extends Error {
  constructor(readonly hindrance: Hindrance) {
    super(`the notebook could not be kept or read: ${hindrance}`);
    this.name = "ShelfError";
  }
}

/** In three stores: a list that is quick to read, the texts, and the texts as they stand in files, written seldom. */
interface Stores extends DBSchema {
  entries: { key: string; value: Entry };
  texts: { key: string; value: { readonly id: string } & Pick<Kept, "text" | "drafts"> };
  saved: { key: string; value: { readonly id: string; readonly text: string | null } };
}

const names = ["entries", "texts", "saved"] as const;
const version = 1;

/** How a notebook is put on the shelf. */
export interface PutOptions {
  /** The revision that should stand there; where another does nothing is written. Null where it does not matter. */
  readonly after: number | null;
  /** Also writes what stands in the file. */
  readonly withSaved: boolean;
}

/** The notebooks kept in the storage of the browser. Where it could not be opened, each call tries again. */
export class Shelf {
  private opening: Promise<IDBPDatabase<Stores>> | null = null;

  /** What is kept, the latest first. Also what is damaged is listed. @throws ShelfError, as all others */
  async entries(): Promise<readonly Entry[]> {
    return this.attempt(async (database) => {
      const transaction = database.transaction(names, "readonly");
      const stores = names.map((name) => transaction.objectStore(name));
      const keys = await Promise.all(stores.map((store) => store.getAllKeys()));
      const entries = transaction.objectStore("entries");
      const ids = [...new Set(keys.flat().map(String))];
      return inOrder(await Promise.all(ids.map(async (id) => entryFrom(await entries.get(id), id))));
    });
  }

  /** A notebook, its text null where it has none; undefined where nothing is kept under this id. */
  async get(id: string): Promise<Kept | undefined> {
    return this.attempt(async (database) => {
      const transaction = database.transaction(names, "readonly");
      const [entry, text, saved] = await Promise.all([
        transaction.objectStore("entries").get(id),
        transaction.objectStore("texts").get(id),
        transaction.objectStore("saved").get(id),
      ]);
      if (!entry && !text && !saved) return undefined;
      return {
        entry: entryFrom(entry, id),
        text: textFrom(text),
        savedText: textFrom(saved),
        drafts: draftsFrom(text),
      };
    });
  }

  /** Resolves once it is on the disk. */
  async put({ entry, text, savedText, drafts }: Kept, { after, withSaved }: PutOptions): Promise<void> {
    const { id } = entry;
    await this.attempt(async (database) => {
      const transaction = database.transaction(names, "readwrite", { durability: "strict" });
      // Each is told by its own promise too; what failed is told once, by the whole.
      const failed = transaction.done.catch((error: unknown) => error);
      const written = async (): Promise<void> => {
        const entries = transaction.objectStore("entries");
        if (after !== null) {
          const there = await entries.get(id);
          if (there && entryFrom(there, id).revision !== after) throw new ShelfError("overwritten");
        }
        const puts: Promise<unknown>[] = [
          entries.put(entry),
          transaction.objectStore("texts").put({ id, text, drafts }),
        ];
        if (withSaved) puts.push(transaction.objectStore("saved").put({ id, text: savedText }));
        // Without waiting for answers: a page that is being left hears none.
        const all = Promise.all(puts);
        transaction.commit();
        await all;
      };
      try {
        await written();
      } catch (error) {
        abort(transaction);
        await failed;
        throw error;
      }
      const error = await failed;
      if (error) throw error;
    });
  }

  /** Takes a notebook off the shelf. */
  async remove(id: string): Promise<void> {
    await this.attempt(async (database) => {
      const transaction = database.transaction(names, "readwrite", { durability: "strict" });
      await Promise.all([...names.map((name) => transaction.objectStore(name).delete(id)), transaction.done]);
    });
  }

  private async attempt<T>(act: (database: IDBPDatabase<Stores>) => Promise<T>): Promise<T> {
    try {
      this.opening ??= this.open();
      return await act(await this.opening);
    } catch (error) {
      throw error instanceof ShelfError ? error : new ShelfError(hindranceOf(error));
    }
  }

  private open(): Promise<IDBPDatabase<Stores>> {
    const forget = (): void => {
      this.opening = null;
    };
    const opening = openDB<Stores>("spanwise", version, {
      upgrade(database) {
        for (const name of names) database.createObjectStore(name, { keyPath: "id" });
      },
      // A later Spanwise in another tab wants to change the stores.
      blocking(_now, _wanted, { target }) {
        (target as IDBDatabase).close();
        forget();
      },
      terminated: forget,
    });
    opening.catch(forget);
    return opening;
  }
}

function abort(transaction: { abort(): void }): void {
  try {
    transaction.abort();
  } catch {
    // It has ended already.
  }
}

function hindranceOf(error: unknown): Hindrance {
  const name = error instanceof DOMException || error instanceof Error ? error.name : "";
  if (name === "QuotaExceededError") return "full";
  if (name === "VersionError") return "later";
  return "refused";
}
