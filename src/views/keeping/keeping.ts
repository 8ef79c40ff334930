import { type Notebook, NotebookError, readNotebook, type Session } from "../../cells/index.ts";
import type { FileHandle, OpenedFile } from "../files.ts";
import type { OpenFile } from "../open-file.ts";
import { copyOf, newId, withSameCells } from "./copies.ts";
import { Drafts } from "./drafts.ts";
import { Keeper } from "./keeper.ts";
import { idOfSame, idsKept, readKept } from "./kept-notebooks.ts";
import { openHere, setOpenHere } from "./open-here.ts";
import { Pen, type Phase } from "./pen.ts";
import { type Hindrance, type Kept, Shelf, ShelfError } from "./shelf.ts";
import { Tabs } from "./tabs.ts";
import { words } from "./words.ts";

/** The notebooks that come with the app. */
export interface Shipped {
  /** The text of each, by name. */
  readonly texts: Readonly<Record<string, () => Promise<string>>>;
  /** The one that a person sees first. */
  readonly first: string;
}

/** What keeping asks of the app around it. */
export interface KeptApp {
  readonly session: Session;
  readonly file: OpenFile;
  readonly shipped: Shipped;
  /** Resolves when all that a notebook needs to be computed is there. */
  ready(notebook: Notebook): Promise<void>;
  /** Shows another notebook, at once; `saved` is it as it stands in its file. Resolves when it is computed. */
  take(notebook: Notebook, saved: Notebook, file: InFile): Promise<void>;
  /** Goes on at once, or when the person has said what becomes of changes that would be lost. */
  unlessLost(goOn: () => Promise<unknown>): Promise<void>;
  /** Ends what is being entered, so that it is part of the notebook. */
  leaveEntry(): void;
  /** Says what went wrong, until it is dismissed. */
  alarm(text: string): void;
  /** What was said is no longer so. */
  alarmIsOver(text: string): void;
  /** Says what has been done. */
  tell(text: string): void;
}

/** The file that a notebook is in. */
export interface InFile {
  readonly name: string | null;
  readonly handle: FileHandle | null;
}

const noFile: InFile = { name: null, handle: null };
/** Stands for what a file says where that is no longer known: so that the notebook counts as changed. */
const unknown: Notebook = { title: "", cells: [], trials: [] };
/** Keeps the open notebook in the browser's storage, and opens others: from there, from files, from those that ship. */
export class Keeping {
  readonly shelf = new Shelf();
  readonly tabs = new Tabs();
  readonly drafts = new Drafts();
  private keeper: Keeper | null = null;
  private pen: Pen | null = null;
  private isLost = false;
  private wasGiven = false;
  /** What opens or deletes waits for what was begun before. */
  private turn: Promise<unknown> = Promise.resolve();
  private readonly listeners = new Set<() => void>();

  constructor(readonly app: KeptApp) {}

  /** The id of the open notebook, and whether this tab may edit it; null until the first is open. */
  get open(): { readonly id: string; readonly phase: Phase } | null {
    return this.keeper && this.pen && { id: this.keeper.id, phase: this.pen.phase };
  }

  /** Whether the last edits are kept, or will be in a moment; null where nothing was kept yet. */
  get isKept(): boolean | null {
    if (this.isLost || this.keeper?.trouble) return false;
    return this.keeper?.isThere ? true : null;
  }

  /** True where leaving the page now loses nothing. */
  get holds(): boolean {
    return !this.isLost && (this.keeper?.holds ?? true);
  }

  /** True where another tab took the pen before the last edits of this one were kept: they stand only here. */
  get hasLostEdits(): boolean {
    return this.isLost;
  }

  /** True where this tab had the pen before. */
  get hasGiven(): boolean {
    return this.wasGiven;
  }

  /** Calls back when anything that is shown of it changes. Gives what ends it. */
  onChange(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Opens what was open last, in this tab or in any, else the first that ships. @throws where that cannot be loaded */
  start(): Promise<void> {
    this.tabs.onSaying((says, of) => {
      if (says === "kept" && of === this.keeper?.id && this.pen?.phase === "reading") void this.catchUp();
    });
    document.addEventListener("visibilitychange", () => document.hidden && this.flush());
    window.addEventListener("pagehide", () => {
      this.app.leaveEntry();
      if (this.pen?.phase === "writing") this.keeper?.keepLast();
    });
    // A page that comes back from rest has laid its pen down, and may be out of date.
    window.addEventListener("pageshow", ({ persisted }) => persisted && location.reload());
    return this.inTurn(() => this.openLast());
  }

  /** Opens a file. @throws NotebookError where it is no notebook */
  async openFile(file: OpenedFile): Promise<void> {
    const notebook = readNotebook(file.text);
    await this.inTurn(() => this.openNew(notebook, file));
  }

  /** Opens one that ships, by its name; what comes with the app stays as it is. */
  openShipped(name: string): Promise<void> {
    return this.inTurn(async () => this.openNew(await this.shipped(name), noFile));
  }

  /** Opens a kept notebook; gives true where it is open now, else a message says why not. */
  openKept(id: string): Promise<boolean> {
    return this.inTurn(() => this.showKept(id));
  }

  /** Goes on with a copy, which this tab alone has. */
  openCopy(): Promise<void> {
    return this.inTurn(async () => {
      const notebook = copyOf(this.app.session.own);
      await this.showNew(notebook, unknown, noFile, this.drafts.answers);
      this.app.tell(words.copied(notebook.title));
    });
  }

  /** Deletes a notebook. Where it is the open one, the one open before opens. @throws ShelfError */
  remove(id: string): Promise<void> {
    return this.inTurn(async () => {
      const isOpen = this.keeper?.id === id;
      if (isOpen) await this.leave();
      await this.shelf.remove(id);
      if (isOpen) await this.close();
      this.tabs.say("deleted", id);
      if (isOpen) await this.openLast();
      // There may be room again.
      else if (this.keeper?.trouble === "full") this.keeper.touch();
    });
  }

  /** The open notebook was saved to a file. */
  wasSaved(): void {
    this.keeper?.touch();
  }

  /** Keeps at once what is not kept yet; gives true where all is. */
  async flush(): Promise<boolean> {
    return (await this.keeper?.flush()) ?? true;
  }

  /** Another tab is to stop editing, so that this one can. */
  takeOver(): void {
    void this.pen?.takeOver();
  }

  private inTurn<T>(act: () => Promise<T>): Promise<T> {
    const done = this.turn.then(act);
    this.turn = done.catch(() => undefined);
    return done;
  }

  private async openLast(): Promise<void> {
    const ids = await idsKept(this.shelf);
    const here = openHere();
    for (const id of [...ids.filter((each) => each === here), ...ids]) {
      if (await this.showKept(id)) return;
    }
    const first = await this.shipped(this.app.shipped.first);
    await this.showNew(first, first, noFile);
  }

  private async shipped(name: string): Promise<Notebook> {
    const load = Object.hasOwn(this.app.shipped.texts, name) ? this.app.shipped.texts[name] : undefined;
    if (!load) throw new Error(`got no notebook ${name}, expected it beside the others`);
    return readNotebook(await load());
  }

  /** Opens a notebook from elsewhere: kept from now on, in its own place where just the same is kept already. */
  private async openNew(notebook: Notebook, file: InFile): Promise<void> {
    await this.leave();
    const same = await idOfSame(this.shelf, notebook);
    if (same !== null && (await this.showKept(same))) {
      this.app.file.isSaved(this.app.session.own, file.name, file.handle);
    } else await this.showNew(notebook, notebook, file);
    this.keeper?.touch();
    this.tell();
  }

  private async showKept(id: string): Promise<boolean> {
    if (this.keeper?.id === id) return true;
    await this.leave();
    const pen = this.newPen(id);
    await pen.begin();
    try {
      const { kept, notebook } = await readKept(this.shelf, id);
      await this.app.ready(notebook);
      const { fileName, changed } = kept.entry;
      const file = { name: fileName, handle: null };
      await this.show(pen, id, kept, () => this.app.take(notebook, changed ? unknown : notebook, file));
      return true;
    } catch (error) {
      pen.close();
      if (!(error instanceof ShelfError || error instanceof NotebookError)) throw error;
      this.app.alarm(error instanceof ShelfError ? words.unreadable : error.message);
      return false;
    }
  }

  private async showNew(notebook: Notebook, saved: Notebook, file: InFile, drafts: Kept["drafts"] = {}): Promise<void> {
    await this.app.ready(notebook);
    await this.leave();
    const id = newId();
    const pen = this.newPen(id);
    await pen.begin();
    await this.show(pen, id, null, () => {
      this.drafts.reset(drafts);
      return this.app.take(notebook, saved, file);
    });
    if (saved === unknown) this.keeper?.touch();
  }

  /** Shows a notebook in place of the open one. */
  private async show(pen: Pen, id: string, kept: Kept | null, take: () => Promise<void>): Promise<void> {
    const { session, file } = this.app;
    await this.close();
    this.pen = pen;
    this.keeper = new Keeper(
      id,
      { session, file, drafts: this.drafts, shelf: this.shelf },
      { onKept: (after) => this.wasKept(id, after), onTrouble: (why, isNews) => this.hasTrouble(why, isNews) },
    );
    this.isLost = false;
    this.wasGiven = false;
    this.drafts.reset(kept?.drafts);
    const taken = take();
    session.readOnly = pen.phase !== "writing";
    if (kept) this.keeper.wasRead(kept.entry);
    if (kept) {
      setOpenHere(id);
      // Where that cannot be noted, another may come up first another time; no more is lost.
      this.shelf.wasOpened(id, Date.now()).catch(() => undefined);
    }
    this.keeper.begin();
    this.tell();
    await taken;
  }

  /** Keeps the last edits of the open notebook. */
  private async leave(): Promise<void> {
    this.app.leaveEntry();
    await this.keeper?.flush();
  }

  private async close(): Promise<void> {
    const { keeper, pen } = this;
    this.keeper = null;
    this.pen = null;
    await keeper?.close();
    pen?.close();
  }

  private wasKept(id: string, after: Hindrance | null): void {
    setOpenHere(id);
    if (after !== null && after !== "overwritten") {
      this.app.alarmIsOver(words.trouble[after]);
      this.app.tell(words.keptAgain);
    }
    this.tabs.say("kept", id);
    this.tell();
  }

  private hasTrouble(why: Hindrance, isNews: boolean): void {
    if (why === "overwritten") this.pen?.lose();
    else if (isNews) this.app.alarm(words.trouble[why]);
    this.tell();
  }

  private newPen(id: string): Pen {
    return new Pen(id, this.tabs, {
      onPhase: (phase, before) => void this.follow(phase, before),
      yield: () => this.yield(),
      onRefused: () => this.app.tell(words.refused),
    });
  }

  private async yield(): Promise<boolean> {
    const { session } = this.app;
    this.app.leaveEntry();
    session.readOnly = true;
    const isKept = (await this.keeper?.flush()) ?? true;
    session.readOnly = isKept;
    return isKept;
  }

  /** Who has the pen decides who may edit; what another tab has written is read before anything can be edited. */
  private async follow(phase: Phase, before: Phase): Promise<void> {
    const { session } = this.app;
    const { keeper } = this;
    if (before === "writing") {
      this.app.leaveEntry();
      this.wasGiven = true;
      this.isLost = keeper?.isKept === false;
      if (this.isLost) void keeper?.close();
    }
    session.readOnly = true;
    this.tell();
    if (phase !== "writing") return;
    await this.catchUp();
    if (this.keeper !== keeper || this.open?.phase !== "writing") return;
    session.readOnly = false;
    this.tell();
  }

  /** Shows what another tab has kept; what cannot be read is passed over. What stands only here is not written over. */
  private async catchUp(): Promise<void> {
    const { keeper } = this;
    const { session, file } = this.app;
    if (!keeper || this.isLost) return;
    const found = await readKept(this.shelf, keeper.id).catch(() => null);
    if (!found || this.keeper !== keeper || keeper.knows(found.kept.entry)) return;
    const { kept } = found;
    const notebook = withSameCells(found.notebook, session.own);
    keeper.wasRead(kept.entry);
    this.drafts.reset(kept.drafts);
    file.isSaved(kept.entry.changed ? unknown : notebook, kept.entry.fileName, null);
    session.open(notebook);
    this.tell();
  }

  private tell(): void {
    for (const listener of this.listeners) listener();
  }
}
