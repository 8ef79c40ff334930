import { type Notebook, readNotebook, type Session, setTitle } from "../../cells/index.ts";
import type { FileHandle, OpenedFile } from "../files.ts";
import type { OpenFile } from "../open-file.ts";
import { Address, newId, type Target } from "./address.ts";
import { Drafts } from "./drafts.ts";
import { Keeper } from "./keeper.ts";
import type { Draft, Kept } from "./kept.ts";
import { idOfFile, idsKept, readKept } from "./kept-reader.ts";
import { Shelf } from "./shelf.ts";
import { type Shipped, shippedText } from "./shipped.ts";
import { TabChannel } from "./tab-channel.ts";
import { words } from "./words.ts";

/** What keeping asks of the app around it. */
export interface KeptApp {
  readonly session: Session;
  readonly file: OpenFile;
  readonly shipped: Shipped;
  /** Shows another notebook, at once; `saved` is it as it stands in its file. Resolves when it is computed. */
  take(notebook: Notebook, saved: Notebook, name: string | null, handle: FileHandle | null): Promise<void>;
  /** Ends what is being entered, so that it is part of the notebook. */
  leaveEntry(): void;
  /** Goes on at once, or when the person has said what becomes of changes that would be lost. */
  unlessLost(goOn: () => Promise<void>): Promise<void>;
  /** Says what went wrong, until it is dismissed. */
  alarm(text: string): void;
  /** Says what has been done. */
  tell(text: string): void;
}

/** A notebook that is about to be shown, and what is known of it. */
interface Opening {
  readonly keeper: Keeper;
  readonly notebook: Notebook;
  readonly saved: Notebook;
  readonly file: { readonly name: string | null; readonly handle: FileHandle | null };
  readonly drafts: Readonly<Record<string, Draft>>;
  /** What stands on the shelf; where it is new, its text as it stands in its file, or null for nowhere. */
  readonly origin: Pick<Kept, "entry" | "savedText"> | string | null;
}

const noFile = { name: null, handle: null };
const nothing: Notebook = { title: "", cells: [], trials: [] };

/** Keeps the open notebook in the browser's storage, and opens others: from there, from files, from those that ship. */
export class Keeping {
  readonly shelf = new Shelf();
  readonly channel = new TabChannel();
  readonly drafts = new Drafts();
  private readonly address = new Address();
  private keeper: Keeper | null = null;
  /** Counts what was to be opened: where two openings overlap the later one counts. */
  private turn = 0;
  private readonly listeners = new Set<() => void>();

  constructor(readonly app: KeptApp) {}

  /** The keeper of the open notebook; null until the first is open. */
  get open(): Keeper | null {
    return this.keeper;
  }

  /** True where leaving loses nothing. */
  get holds(): boolean {
    return this.keeper?.holds ?? true;
  }

  /** Calls back when anything that is shown of it changes. Gives what ends it. */
  onChange(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Opens what the address names, else what was kept last, else the demo. @throws where the demo cannot be loaded */
  async start(): Promise<void> {
    this.listen();
    const { target } = this.address;
    if (target && (await this.openTarget(target))) return;
    if (this.keeper === null) await this.openLatest();
  }

  /** Opens a file: kept from now on, under the entry that it has where that is unchanged. @throws NotebookError */
  async openFile(file: OpenedFile): Promise<void> {
    const notebook = readNotebook(file.text);
    const turn = ++this.turn;
    await this.keeper?.flush();
    const known = await idOfFile(this.shelf, file);
    if (turn !== this.turn) return;
    const isOpen = known !== null && (known === this.keeper?.id || (await this.openKept(known)));
    if (isOpen) this.app.file.isSaved(this.app.session.notebook, file.name, file.handle);
    else await this.openAsNew({ notebook, saved: notebook, origin: file.text, file, drafts: {} });
  }

  /** Goes on with a copy, which this tab alone has. */
  async copy(): Promise<void> {
    const { notebook: original } = this.app.session;
    const title = words.copyOf(original.title.trim() || words.untitled);
    const notebook = setTitle(original, title);
    const drafts = this.drafts.all;
    await this.openAsNew({ notebook, saved: nothing, origin: null, file: noFile, drafts });
    this.app.tell(words.copied(title));
  }

  /** Closes the open notebook, has it deleted, and opens another. */
  async replace(remove: () => Promise<void>): Promise<void> {
    await this.keeper?.close();
    this.keeper = null;
    await remove();
    await this.openLatest();
  }

  private listen(): void {
    this.address.onTarget((target) => this.goTo(target));
    document.addEventListener("visibilitychange", () => document.hidden && this.keeper?.flush());
    window.addEventListener("pagehide", () => {
      this.app.leaveEntry();
      this.keeper?.keepLast();
    });
    // A page that comes back from rest has laid its pen down, and may be out of date.
    window.addEventListener("pageshow", ({ persisted }) => persisted && location.reload());
  }

  private async goTo(target: Target): Promise<void> {
    this.app.leaveEntry();
    await this.keeper?.flush();
    await this.app.unlessLost(async () => {
      await this.openTarget(target);
    });
  }

  /** True where it is open now; else a message says why not. */
  private openTarget(target: Target): Promise<boolean> {
    return target.kind === "kept" ? this.openKept(target.id) : this.openShipped(target.name);
  }

  private async openLatest(): Promise<void> {
    for (const id of await idsKept(this.shelf)) {
      if (this.keeper !== null || (await this.openKept(id))) return;
    }
    if (this.keeper === null) await this.openShipped(this.app.shipped.demo, null);
  }

  /** Opens a copy of one that ships. It is kept once something in it is changed. */
  private async openShipped(name: string, at: Target | null = { kind: "shipped", name }): Promise<boolean> {
    const turn = ++this.turn;
    const text = await shippedText(this.app.shipped, name);
    if (text === null) {
      this.app.alarm(words.noSuchStart);
      return false;
    }
    const notebook = readNotebook(text);
    const keeper = this.newKeeper(newId());
    await keeper.settle();
    if (turn !== this.turn) return true;
    await this.show({ keeper, notebook, saved: notebook, origin: text, file: noFile, drafts: {} });
    this.address.set(at);
    return true;
  }

  private async openKept(id: string): Promise<boolean> {
    const turn = ++this.turn;
    const keeper = this.newKeeper(id);
    await keeper.settle();
    const found = await readKept(this.shelf, id);
    if ("fault" in found || turn !== this.turn) {
      await keeper.close();
      if ("fault" in found) this.app.alarm(found.sentence);
      return turn !== this.turn;
    }
    const { kept, notebook, saved } = found;
    const file = { name: kept.entry.fileName, handle: null };
    await this.show({ keeper, notebook, saved, origin: kept, file, drafts: kept.drafts });
    this.address.set({ kind: "kept", id });
    return true;
  }

  private async openAsNew(opening: Omit<Opening, "keeper">): Promise<void> {
    const turn = ++this.turn;
    const keeper = this.newKeeper(newId());
    await keeper.settle();
    if (turn !== this.turn) return keeper.close();
    await this.show({ ...opening, keeper });
    keeper.touch();
    this.address.push({ kind: "kept", id: keeper.id });
  }

  /** Shows a notebook in place of the open one, which is kept to its last edit. */
  private async show({ keeper, notebook, saved, origin, file, drafts }: Opening): Promise<void> {
    const { app } = this;
    await this.keeper?.flush();
    await this.keeper?.close();
    this.keeper = keeper;
    this.drafts.reset(drafts);
    const shown = app.take(notebook, saved, file.name, file.handle);
    keeper.begin(origin);
    await shown;
  }

  private newKeeper(id: string): Keeper {
    const { app, drafts, shelf, channel } = this;
    const ports = {
      session: app.session,
      file: app.file,
      drafts,
      shelf,
      channel,
      locks: navigator.locks as LockManager | undefined,
      now: () => Date.now(),
      after(ms: number, act: () => void) {
        const timer = setTimeout(act, ms);
        return () => clearTimeout(timer);
      },
      leaveEntry: () => app.leaveEntry(),
    };
    return new Keeper(id, ports, {
      onChange: () => this.tell(),
      onTrouble: (why) => app.alarm(words.trouble[why]),
      onKept: () => this.address.set({ kind: "kept", id }),
      onUnwilling: () => app.tell(words.unwilling),
    });
  }

  private tell(): void {
    for (const listener of this.listeners) listener();
  }
}
