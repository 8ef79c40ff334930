/** What is kept of a notebook in the browser's storage, and how it is read back, whatever stands there. */
import { type Notebook, readNotebook } from "../../cells/index.ts";
import { type PictureData, pictureOf } from "./small-picture.ts";

/** What the list shows of a kept notebook. */
export interface Entry {
  readonly id: string;
  readonly title: string;
  /** When it was kept last, in ms since 1970. */
  readonly keptAt: number;
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
  /** The text as it stands in its file, or that it was begun with; null where that is not known. */
  readonly savedText: string | null;
  /** By the id of the question. */
  readonly drafts: Readonly<Record<string, Draft>>;
}

/** An entry as far as what stands in the storage makes sense; the rest has the value that promises least. */
export function entryFrom(stored: unknown, id: string): Entry {
  const found = objectOf(stored);
  return {
    id,
    title: textOr(found.title, ""),
    keptAt: numberOr(found.keptAt, 0),
    revision: numberOr(found.revision, 0),
    fileName: typeof found.fileName === "string" ? found.fileName : null,
    changed: found.changed !== false,
    picture: pictureOf(found.picture),
  };
}

/** The text of a notebook that stands in the storage; null where none does. */
export function textFrom(stored: unknown): string | null {
  const { text } = objectOf(stored);
  return typeof text === "string" ? text : null;
}

/** The drafts that stand beside a text; what is none is passed over. */
export function draftsFrom(stored: unknown): Readonly<Record<string, Draft>> {
  const found = Object.entries(objectOf(objectOf(stored).drafts)).map(([id, draft]): [string, Draft] => {
    const { answer, reason } = objectOf(draft);
    return [id, { answer: textOr(answer, ""), reason: textOr(reason, "") }];
  });
  return Object.fromEntries(found);
}

/** The latest first; of one moment by title. */
export function inOrder(entries: readonly Entry[]): readonly Entry[] {
  const compare = new Intl.Collator("en", { numeric: true }).compare;
  return [...entries].sort((a, b) => b.keptAt - a.keptAt || compare(a.title, b.title) || compare(a.id, b.id));
}

/** The notebook as it stands in its file; an empty one where that is not known, so that it counts as changed. */
export function savedNotebook({ entry, savedText }: Pick<Kept, "entry" | "savedText">, notebook: Notebook): Notebook {
  if (!entry.changed) return notebook;
  try {
    if (savedText !== null) return readNotebook(savedText);
  } catch {
    // It is damaged, which costs only the comparison.
  }
  return { title: "", cells: [], trials: [] };
}

const objectOf = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
const textOr = (value: unknown, otherwise: string): string => (typeof value === "string" ? value : otherwise);
const numberOr = (value: unknown, otherwise: number): number =>
  typeof value === "number" && Number.isFinite(value) ? value : otherwise;
