import { type Notebook, type Session, writeNotebook } from "../cells/index.ts";
import type { FileHandle } from "./files.ts";

/** The file that the open notebook came from or was saved to, and whether it is as it stands there. */
export class OpenFile {
  /** Null for a notebook that is in no file of the person's yet. */
  name: string | null = null;
  handle: FileHandle | null = null;
  private saved: Notebook;
  /** What stands in the file, once it was needed. */
  private savedText: string | null = null;
  private compared: { readonly notebook: Notebook; readonly changed: boolean } | null = null;

  constructor(private readonly session: Session) {
    this.saved = session.own;
  }

  /** Takes a notebook as what stands in a file. */
  isSaved(notebook: Notebook, name: string | null, handle: FileHandle | null): void {
    this.saved = notebook;
    this.name = name;
    this.handle = handle;
    this.savedText = null;
    this.compared = null;
  }

  /** True where anything was edited since, also where it was taken back again. Costs nothing. */
  get touched(): boolean {
    const { own: notebook } = this.session;
    return this.compared?.notebook === notebook ? this.compared.changed : notebook !== this.saved;
  }

  /** True where something would be lost: the file would not be the same. Costs the writing of a file, the first time of two. */
  get changed(): boolean {
    const { own: notebook } = this.session;
    if (notebook === this.saved) return false;
    if (this.compared?.notebook !== notebook) {
      const text = textOf(notebook);
      this.savedText ??= textOf(this.saved);
      this.compared = { notebook, changed: text === null || text !== this.savedText };
    }
    return this.compared.changed;
  }
}

/** The notebook as its file would be; null where it cannot be written. */
function textOf(notebook: Notebook): string | null {
  try {
    return writeNotebook(notebook);
  } catch {
    return null;
  }
}
