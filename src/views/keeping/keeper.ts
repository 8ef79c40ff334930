import { type ClockPorts, KeepingClock } from "./keeping-clock.ts";
import type { Kept } from "./kept.ts";
import { readKept } from "./kept-reader.ts";
import type { Locks } from "./pen.ts";
import { withSameCells } from "./same-cells.ts";
import { type Hindrance, type Shelf, ShelfError } from "./shelf.ts";
import { type CopyPorts, ShelfCopy } from "./shelf-copy.ts";
import type { TabChannel } from "./tab-channel.ts";
import type { Phase } from "./tenancy.ts";
import { Tenant } from "./tenant.ts";

/** What keeping works on and with. */
export interface KeeperPorts extends ClockPorts, CopyPorts {
  readonly shelf: Pick<Shelf, "get" | "put">;
  readonly channel: Pick<TabChannel, "say" | "onSaying">;
  readonly locks: Locks | undefined;
  /** Ends what is being entered, so that it is part of the notebook. */
  leaveEntry(): void;
}

/** Who wants to know how it goes. */
export interface KeeperEvents {
  /** Anything that is shown of it has changed. */
  onChange(): void;
  /** Nothing could be kept; told at the first of several failures. */
  onTrouble(why: Hindrance): void;
  /** It was kept. */
  onKept(): void;
  /** The other tab was asked for the pen and goes on writing. */
  onUnwilling(): void;
}

/** Keeps one notebook as long as it is open in this tab, and follows it while another tab writes. */
export class Keeper {
  private readonly tenant: Tenant;
  private readonly copy: ShelfCopy;
  private clock = this.newClock();
  private why: Hindrance | null = null;
  private isLost = false;
  private wasWriting = false;
  private stops: (() => void)[] = [];

  constructor(
    readonly id: string,
    private readonly ports: KeeperPorts,
    private readonly events: KeeperEvents,
  ) {
    this.copy = new ShelfCopy(id, ports);
    this.tenant = new Tenant(id, ports, {
      onPhase: (phase, before) => this.follow(phase, before),
      keep: () => this.clock.flush(),
      onUnwilling: () => events.onUnwilling(),
    });
  }

  get phase(): Phase {
    return this.tenant.phase;
  }

  /** When it was kept last, in ms since 1970; null where it never was. */
  get keptAt(): number | null {
    return this.copy.keptAt;
  }

  /** Why the last edits could not be kept; null where they are, or will be in a moment. */
  get trouble(): Hindrance | null {
    return this.why;
  }

  /** True where this tab had the pen before. */
  get hasWritten(): boolean {
    return this.wasWriting;
  }

  /** True where another tab took the pen before the last edits of this one were kept: they stand only here. */
  get hasLostEdits(): boolean {
    return this.isLost;
  }

  /** True where closing the tab loses nothing. */
  get holds(): boolean {
    return this.why === null && !this.isLost;
  }

  /** Finds out whether this tab writes or reads; the notebook is read from the shelf after that. */
  settle(): Promise<void> {
    return this.tenant.begin();
  }

  /** Begins to keep what has just been opened in the session: as it was read, or new with the text of its file. */
  begin(origin: Pick<Kept, "entry" | "savedText"> | string | null): void {
    const { session, drafts, channel } = this.ports;
    if (typeof origin === "object" && origin !== null) this.copy.isThere(origin);
    else this.copy.isInFile(origin);
    session.readOnly = this.phase !== "writing";
    const edited = (): void => this.touch();
    this.stops = [
      session.onNotebook(edited),
      drafts.onChange(edited),
      session.onSettled(() => this.copy.hasNewResults()),
      channel.onSaying((says, of) => {
        if (says === "kept" && of === this.id && this.phase !== "writing") void this.catchUp();
      }),
    ];
    this.events.onChange();
  }

  /** Something is to be kept. */
  touch(): void {
    if (!this.ports.session.readOnly) this.clock.touch();
  }

  /** The notebook stands in a file now, with this text. */
  isInFile(text: string): void {
    this.copy.isInFile(text);
    this.touch();
  }

  /** Keeps at once; gives true where all is kept. */
  flush(): Promise<boolean> {
    return this.clock.flush();
  }

  /** Keeps at once, for the last time perhaps: the page may be gone before it hears of it. */
  keepLast(): void {
    if (this.phase === "writing" && !this.clock.isKept) this.copy.put(true).catch(() => undefined);
  }

  takeOver(): void {
    this.tenant.takeOver();
  }

  /** Ends it; what is not kept by now stays unkept. */
  async close(): Promise<void> {
    for (const stop of this.stops) stop();
    this.stops = [];
    await this.clock.stop();
    this.tenant.close();
  }

  private newClock(): KeepingClock {
    return new KeepingClock(() => this.keep(), { after: (ms, act) => this.ports.after(ms, act) });
  }

  private async keep(): Promise<void> {
    const hadTrouble = this.why !== null;
    try {
      if (this.phase !== "writing" && this.phase !== "giving") throw new ShelfError("overwritten");
      await this.copy.put(false);
      this.why = null;
      this.ports.channel.say("kept", this.id);
      this.events.onKept();
    } catch (error) {
      const why = error instanceof ShelfError ? error.hindrance : "refused";
      if (why !== "overwritten") this.why = why;
      if (why === "overwritten") this.tenant.isOverwritten();
      else if (!hadTrouble) this.events.onTrouble(why);
      throw error;
    } finally {
      this.events.onChange();
    }
  }

  /** The phase decides who may edit: here that takes effect, before anything else is done about it. */
  private follow(phase: Phase, before: Phase): void {
    const { session, leaveEntry } = this.ports;
    this.wasWriting ||= before === "writing";
    if (before === "writing" && phase !== "closed") {
      leaveEntry();
      session.readOnly = true;
    }
    if (phase === "reading" && (before === "writing" || before === "giving")) this.isLost = !this.clock.isKept;
    if (phase === "writing" && before === "giving") session.readOnly = false;
    if (phase === "writing" && before === "taking") void this.resume();
    this.events.onChange();
  }

  /** What the other tab left is read before anything can be edited. */
  private async resume(): Promise<void> {
    await this.catchUp();
    if (this.phase !== "writing") return;
    this.clock = this.newClock();
    this.ports.session.readOnly = false;
    this.events.onChange();
  }

  /** Shows what another tab has kept; what cannot be read is passed over. What stands only here is never written over. */
  private async catchUp(): Promise<void> {
    const found = await readKept(this.ports.shelf, this.id);
    if ("fault" in found || this.isLost || this.stops.length === 0 || this.copy.isKnown(found.kept)) return;
    const { session, file, drafts } = this.ports;
    const notebook = withSameCells(found.notebook, session.notebook);
    this.copy.isThere(found.kept);
    drafts.reset(found.kept.drafts);
    const isSaved = found.saved === found.notebook;
    file.isSaved(isSaved ? notebook : found.saved, found.kept.entry.fileName, null);
    session.open(notebook);
    this.events.onChange();
  }
}
