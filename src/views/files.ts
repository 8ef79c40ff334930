/** Files of the person's own: by the browser's dialogs where it has them, else by upload and download. */

import { download } from "./download.ts";

export interface OpenedFile {
  readonly name: string;
  readonly text: string;
  /** Where to save it again; null where the browser gives no way back to the file. */
  readonly handle: FileHandle | null;
}

/** As much of the browser's handle of a file as is used here. */
export interface FileHandle {
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{ write(content: string | Blob): Promise<void>; close(): Promise<void> }>;
}

interface Pickers {
  showOpenFilePicker?: (options: object) => Promise<readonly FileHandle[]>;
  showSaveFilePicker?: (options: object) => Promise<FileHandle>;
}

const types = [{ description: "Spanwise notebook", accept: { "application/json": [".json"] } }];

/** Asks for a file by the browser's dialog; null where the person chose none, undefined where there is no such dialog. */
export async function chooseFile(): Promise<OpenedFile | null | undefined> {
  const { showOpenFilePicker } = window as Pickers;
  if (!showOpenFilePicker) return undefined;
  const [handle] = await unlessAborted(() => showOpenFilePicker.call(window, { types, multiple: false }), []);
  return handle ? readFile(await handle.getFile(), handle) : null;
}

/** Reads a file that was uploaded or dropped. */
export const readFile = async (file: File, handle: FileHandle | null = null): Promise<OpenedFile> => ({
  name: file.name,
  text: await file.text(),
  handle,
});

/**
 * Writes a file: to `handle` where there is one, else where the person says, else as a download. Gives the name and
 * the way back to it, or null where the person chose no place.
 */
export async function saveFile(
  name: string,
  text: string,
  handle: FileHandle | null,
): Promise<{ readonly name: string; readonly handle: FileHandle | null } | null> {
  const { showSaveFilePicker } = window as Pickers;
  if (!handle && !showSaveFilePicker) {
    download(name, text, "application/json");
    return { name, handle: null };
  }
  const place =
    handle ??
    (await unlessAborted(async () => showSaveFilePicker?.call(window, { types, suggestedName: name }) ?? null, null));
  if (!place) return null;
  const writable = await place.createWritable();
  await writable.write(text);
  await writable.close();
  return { name: place.name, handle: place };
}

/** A name for the file of a notebook: "plover-a-club-glider.json"; or of what is drawn in it, by another ending. */
export function fileNameOf(title: string, ending = "json"): string {
  const plain = title
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 60);
  return `${plain || "notebook"}.${ending}`;
}

/**
 * Writes a file that is not opened again, where the person says or else as a download; `accept` tells its endings by type.
 * Gives its name, or null where the person chose no place.
 */
export async function offerFile(
  name: string,
  content: Blob,
  accept: Readonly<Record<string, readonly string[]>>,
): Promise<string | null> {
  const { showSaveFilePicker } = window as Pickers;
  if (!showSaveFilePicker) {
    download(name, content, content.type);
    return name;
  }
  const ask = () => showSaveFilePicker.call(window, { types: [{ accept }], suggestedName: name });
  const place = await unlessAborted<FileHandle | null>(ask, null);
  if (!place) return null;
  const writable = await place.createWritable();
  await writable.write(content);
  await writable.close();
  return place.name;
}

async function unlessAborted<T>(ask: () => Promise<T>, otherwise: T): Promise<T> {
  try {
    return await ask();
  } catch (error) {
    if (error instanceof DOMException && error.name === "AbortError") return otherwise;
    throw error;
  }
}
