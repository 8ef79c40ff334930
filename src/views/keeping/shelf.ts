import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from "idb";
import { type PictureData, pictureOf } from "./small-picture.ts";

/** What the list shows of a kept notebook. */
export interface Entry {
  readonly id: string;
  readonly title: string;
  /** When it was kept last, in ms since 1970. */
  readonly keptAt: number;
  /** When a person had it open last, in ms since 1970; 0 for never. */
  readonly openedAt: number;
  /** Counts its keepings: by it a tab notices that another has written meanwhile. */
  readonly revision: number;
  /** The file it was opened from or saved to last; null where it is in none. */
  readonly fileName: string | null;
  /** True where it differs from what stands in that file, or from what it was begun with. */
  readonly changed: boolean;
  readonly picture: PictureData | null;
}

/** An answer to a question that is written but not given yet. */
export interface Draft {
  readonly answer: string;
  readonly reason: string;
}

/** A notebook as it is kept. */
export interface Kept {
  readonly entry: Entry;
  /** The text of a notebook file; null where it is missing. */
  readonly text: string | null;
  /** By the id of the question. */
  readonly drafts: Readonly<Record<string, Draft>>;
}

/** Why nothing can be kept or read: no room, no storage to be had, or another tab has written meanwhile. */
export type Hindrance = "full" | "refused" | "overwritten";

/** The one error of the shelf. */
export class ShelfError extends Error {
  constructor(readonly hindrance: Hindrance) {
    super(`the notebook could not be kept or read: ${hindrance}`);
    this.name = "ShelfError";
  }
}

/** In two stores, so that the list is quick to read. */
interface Stores extends DBSchema {
  entries: { key: string; value: Entry };
  texts: { key: string; value: { readonly id: string } & Omit<Kept, "entry"> };
}

const names: ("entries" | "texts")[] = ["entries", "texts"];
type Writing = IDBPTransaction<Stores, typeof names, "readwrite">;

/** The notebooks kept in the storage of the browser. Where it could not be opened, each call tries again. */
export class Shelf {
  private opening: Promise<IDBPDatabase<Stores>> | null = null;
  /** Had without waiting once it is open. */
  private database: IDBPDatabase<Stores> | null = null;
  /** The last `put` that was begun; it may have ended. */
  private putting: Writing | null = null;

  /** What is kept, the latest first. @throws ShelfError, as all others */
  async entries(): Promise<readonly Entry[]> {
    const found = await this.attempt((database) => database.getAll("entries"));
    return found.map(entryFrom).sort((a, b) => b.keptAt - a.keptAt);
  }

  /** A notebook, its text null where it has none; undefined where nothing is kept under this id. */
  get(id: string): Promise<Kept | undefined> {
    return this.attempt(async (database) => {
      const transaction = database.transaction(names, "readonly");
      const [entry, text] = await Promise.all([
        transaction.objectStore("entries").get(id),
        transaction.objectStore("texts").get(id),
      ]);
      return entry && { entry: entryFrom(entry), text: textFrom(text), drafts: draftsFrom(text) };
    });
  }

  /**
   * Resolves once it is on the disk. `after` is the revision that should stand there, 0 for none; where another stands
   * there nothing is written. Null where it does not matter.
   */
  put(kept: Kept, after: number | null): Promise<void> {
    return this.write(async (transaction) => {
      if (after !== null) {
        this.putting = transaction;
        const there = await transaction.objectStore("entries").get(kept.entry.id);
        if (there && entryFrom(there).revision !== after) throw new ShelfError("overwritten");
      }
      await putInto(transaction, kept);
    });
  }

  /**
   * As `put`, for a page that is being left: all is asked of the browser before this returns, if the storage was open,
   * so that no answer is waited for. A `put` that still waits for one is called off, as it would hold this up for ever.
   */
  putLast(kept: Kept): Promise<void> {
    if (this.putting) abort(this.putting);
    return this.write((transaction) => putInto(transaction, kept));
  }

  /** A person opened it. Nothing where nothing is kept under this id. */
  wasOpened(id: string, openedAt: number): Promise<void> {
    return this.write(async (transaction) => {
      const entries = transaction.objectStore("entries");
      const entry = await entries.get(id);
      if (entry) await entries.put({ ...entry, openedAt });
    });
  }

  /** Takes a notebook off the shelf. */
  remove(id: string): Promise<void> {
    return this.write(async (transaction) => {
      await Promise.all(names.map((name) => transaction.objectStore(name).delete(id)));
    });
  }

  private write(act: (transaction: Writing) => Promise<void>): Promise<void> {
    return this.attempt(async (database) => {
      const transaction = database.transaction(names, "readwrite", { durability: "strict" });
      // Its promise is told of every failure too; where nobody listened that would be an uncaught error.
      const done = transaction.done.then(
        () => null,
        (error: unknown) => error,
      );
      try {
        await act(transaction);
      } catch (error) {
        abort(transaction);
        await done;
        throw error;
      }
      const error = await done;
      if (error !== null) throw error;
    });
  }

  private async attempt<T>(act: (database: IDBPDatabase<Stores>) => Promise<T>): Promise<T> {
    try {
      return await act(this.database ?? (await this.open()));
    } catch (error) {
      throw error instanceof ShelfError ? error : new ShelfError(hindranceOf(error));
    }
  }

  private async open(): Promise<IDBPDatabase<Stores>> {
    const forget = (): void => {
      this.opening = null;
      this.database = null;
    };
    this.opening ??= openDB<Stores>("spanwise", 1, {
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
    try {
      this.database = await this.opening;
      return this.database;
    } catch (error) {
      forget();
      throw error;
    }
  }
}

async function putInto(transaction: Writing, { entry, text, drafts }: Kept): Promise<void> {
  const puts = [
    transaction.objectStore("entries").put(entry),
    transaction.objectStore("texts").put({ id: entry.id, text, drafts }),
  ];
  transaction.commit();
  await Promise.all(puts);
}

function abort(transaction: Writing): void {
  try {
    transaction.abort();
  } catch {
    // It has ended already.
  }
}

function hindranceOf(error: unknown): Hindrance {
  return error instanceof DOMException && error.name === "QuotaExceededError" ? "full" : "refused";
}

/** As far as what stands in the storage makes sense; the rest has the value that promises least. */
function entryFrom(stored: Entry): Entry {
  const { id, title, keptAt, openedAt, revision, fileName, changed, picture } = stored;
  return {
    id,
    title: textOr(title, ""),
    keptAt: numberOr(keptAt, 0),
    openedAt: numberOr(openedAt, numberOr(keptAt, 0)),
    revision: numberOr(revision, 0),
    fileName: typeof fileName === "string" ? fileName : null,
    changed: changed !== false,
    picture: pictureOf(picture),
  };
}

const textFrom = (stored: Omit<Kept, "entry"> | undefined): string | null =>
  typeof stored?.text === "string" ? stored.text : null;

function draftsFrom(stored: Omit<Kept, "entry"> | undefined): Readonly<Record<string, Draft>> {
  const found = Object.entries(stored?.drafts ?? {}).map(([id, draft]): [string, Draft] => [
    id,
    { answer: textOr(draft?.answer, ""), reason: textOr(draft?.reason, "") },
  ]);
  return Object.fromEntries(found);
}

const textOr = (value: unknown, otherwise: string): string => (typeof value === "string" ? value : otherwise);
const numberOr = (value: unknown, otherwise: number): number =>
  typeof value === "number" && Number.isFinite(value) ? value : otherwise;
