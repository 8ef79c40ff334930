import { packNotebook, type Session } from "../../cells/index.ts";
import type { OpenFile } from "../open-file.ts";
import type { Drafts } from "./drafts.ts";
import type { Kept } from "./kept.ts";
import type { Shelf } from "./shelf.ts";
import { type PictureData, takePicture } from "./small-picture.ts";

/** What is kept of the open notebook. */
export interface CopyPorts {
  readonly session: Session;
  readonly file: OpenFile;
  readonly drafts: Drafts;
  readonly shelf: Pick<Shelf, "put">;
  now(): number;
}

/** The open notebook on the shelf: what this tab knows of it, and how it is brought up to date. */
export class ShelfCopy {
  /** When it was kept last, in ms since 1970; null where it never was. */
  keptAt: number | null = null;
  /** The revision that stands there; 0 where none does. */
  private stored = 0;
  private counted = 0;
  private savedText: string | null = null;
  private savedIsStored = false;
  private picture: PictureData | null = null;
  private pictureIsOld = true;

  constructor(
    private readonly id: string,
    private readonly ports: CopyPorts,
  ) {}

  /** It stands there so: as it was read, or not at all. */
  isThere(kept: Pick<Kept, "entry" | "savedText">): void {
    this.stored = this.counted = kept.entry.revision;
    this.keptAt = kept.entry.keptAt;
    this.savedText = kept.savedText;
    this.savedIsStored = true;
  }

  /** Its text in the file that it is in, or that it was begun with; null where that is nowhere. */
  isInFile(text: string | null): void {
    this.savedText = text;
    this.savedIsStored = false;
  }

  /** True where what was read is what this tab knows. */
  isKnown({ entry }: Pick<Kept, "entry">): boolean {
    return entry.revision === this.stored;
  }

  /** New results are there, of which the picture is one. */
  hasNewResults(): void {
    this.pictureIsOld = true;
  }

  /**
   * Puts the notebook there as it is now, with what is typed in it. For the last time it does not look first whether
   * another tab has written. @throws ShelfError
   */
  async put(isLast: boolean): Promise<void> {
    const { session, file, drafts, shelf, now } = this.ports;
    const notebook = drafts.appliedTo(session.notebook);
    const { savedText } = this;
    const revision = ++this.counted;
    const keptAt = now();
    const entry = {
      id: this.id,
      title: notebook.title,
      keptAt,
      revision,
      fileName: file.name,
      changed: notebook !== session.notebook || file.touched,
      picture: this.pictureNow(),
    };
    const kept = { entry, text: packNotebook(notebook), savedText, drafts: drafts.all };
    await shelf.put(kept, { after: isLast ? null : this.stored, withSaved: !this.savedIsStored });
    this.stored = Math.max(this.stored, revision);
    this.keptAt = keptAt;
    if (savedText === this.savedText) this.savedIsStored = true;
  }

  /** Made at most once for each wave of results, and only when it is kept. */
  private pictureNow(): PictureData | null {
    if (this.pictureIsOld) this.picture = takePicture(this.ports.session);
    this.pictureIsOld = false;
    return this.picture;
  }
}
