import { packNotebook, type Session } from "../../cells/index.ts";
import type { OpenFile } from "../open-file.ts";
import type { Drafts } from "./drafts.ts";
import { type Entry, type Hindrance, type Kept, type Shelf, ShelfError } from "./shelf.ts";
import { type PictureData, takePicture } from "./small-picture.ts";

/** What is kept, and where. */
export interface KeeperPorts {
  readonly session: Session;
  readonly file: OpenFile;
  readonly drafts: Drafts;
  readonly shelf: Pick<Shelf, "put" | "putLast">;
}

/** Who wants to know how it goes. */
export interface KeeperEvents {
  /** It was kept; `after` is what had been in the way at the try before, null where nothing was. */
  onKept(after: Hindrance | null): void;
  /** Nothing could be kept; `isNews` unless it is as it was at the try before. */
  onTrouble(why: Hindrance, isNews: boolean): void;
}

/**
 * How long the first edit that is not kept yet waits for others to come, in ms. Not renewed by later ones: a drag of a
 * minute is kept all along.
 */
const gathering = 350;

/**
 * Keeps one notebook as long as it is open: soon after an edit, the edits of a moment together, and never two at once.
 * What failed is tried again at the next edit.
 */
export class Keeper {
  /** The revision that stands on the shelf as far as this tab knows; 0 where none does. */
  private stored = 0;
  private counted = 0;
  private dirty = false;
  /** When the first edit came that waits to be kept, in ms; null where none waits. */
  private since: number | null = null;
  private running: Promise<void> | null = null;
  private timer: ReturnType<typeof setTimeout> | null = null;
  private why: Hindrance | null = null;
  private works = false;
  private picture: PictureData | null = null;
  private pictureIsOld = true;
  private stops: (() => void)[] = [];
  private isClosed = false;

  constructor(
    readonly id: string,
    private readonly ports: KeeperPorts,
    private readonly events: KeeperEvents,
  ) {}

  /** True where everything is kept. */
  get isKept(): boolean {
    return !this.dirty && this.running === null;
  }

  /** True where it stands on the shelf at all. */
  get isThere(): boolean {
    return this.stored > 0;
  }

  /** Why the last edits could not be kept; null where they are, or will be in a moment. */
  get trouble(): Hindrance | null {
    return this.why;
  }

  /** True where leaving the page now loses nothing: all is kept, or will be, as the last time. */
  get holds(): boolean {
    return this.why === null && (this.isKept || this.works);
  }

  /** True where what stands on the shelf is what this tab knows. */
  knows({ revision }: Entry): boolean {
    return revision === this.stored;
  }

  /** It stands on the shelf so, as it was read just now. */
  wasRead({ revision }: Entry): void {
    this.stored = revision;
    this.counted = revision;
    this.works = true;
  }

  /** Begins to keep what is edited in the session. */
  begin(): void {
    const { session, drafts } = this.ports;
    const edited = (): void => this.touch();
    const computed = (): void => {
      this.pictureIsOld = true;
    };
    this.stops = [session.onNotebook(edited), drafts.onChange(edited), session.onSettled(computed)];
  }

  /** Something is to be kept. */
  touch(): void {
    if (this.ports.session.readOnly || this.isClosed) return;
    this.dirty = true;
    this.since ??= performance.now();
    this.schedule();
  }

  /** Keeps now what is not kept yet; gives true where all of it is kept afterwards. */
  async flush(): Promise<boolean> {
    await this.running;
    if (this.dirty && !this.isClosed) await this.run();
    return this.isKept;
  }

  /** Keeps at once, for the last time perhaps: the page may be gone before it hears of it. */
  keepLast(): void {
    if (!this.isKept) this.put((kept) => this.ports.shelf.putLast(kept)).catch(() => undefined);
  }

  /** Ends it; what is not kept by now stays unkept. */
  async close(): Promise<void> {
    this.isClosed = true;
    this.rest();
    for (const stop of this.stops) stop();
    this.stops = [];
    await this.running;
  }

  /** What came while the last keeping took its time has waited already. */
  private schedule(): void {
    if (this.since === null || this.running !== null || this.isClosed) return;
    const waited = performance.now() - this.since;
    this.timer ??= setTimeout(() => this.run(), Math.max(0, gathering - waited));
  }

  private rest(): void {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
  }

  private run(): Promise<void> {
    this.rest();
    this.running ??= this.keep();
    return this.running;
  }

  private async keep(): Promise<void> {
    this.dirty = false;
    this.since = null;
    const before = this.why;
    try {
      const after = this.stored;
      await this.put((kept) => this.ports.shelf.put(kept, after));
      this.why = null;
      this.works = true;
    } catch (error) {
      this.why = error instanceof ShelfError ? error.hindrance : "refused";
      this.works = false;
    }
    this.running = null;
    // One that came meanwhile is a further edit.
    this.schedule();
    this.dirty ||= this.why !== null;
    if (this.why === null) this.events.onKept(before);
    else this.events.onTrouble(this.why, this.why !== before);
  }

  private async put(onto: (kept: Kept) => Promise<void>): Promise<void> {
    const { session, file, drafts } = this.ports;
    const notebook = drafts.appliedTo(session);
    this.counted += 1;
    const revision = this.counted;
    const now = Date.now();
    const entry: Entry = {
      id: this.id,
      title: notebook.title,
      keptAt: now,
      openedAt: now,
      revision,
      fileName: file.name,
      changed: notebook !== session.own || file.touched,
      picture: this.pictureNow(),
    };
    await onto({ entry, text: packNotebook(notebook), drafts: drafts.answers });
    this.stored = Math.max(this.stored, revision);
  }

  /** Made at most once for each wave of results, and only when it is kept. */
  private pictureNow(): PictureData | null {
    if (this.pictureIsOld) this.picture = takePicture(this.ports.session);
    this.pictureIsOld = false;
    return this.picture;
  }
}
