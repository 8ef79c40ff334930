import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import { type Crew, type Notebook, NotebookError, Session, type Subject, writeNotebook } from "../cells/index.ts";
import type { FunctionTable } from "../library/index.ts";
import { loadWhy } from "./ask-why.ts";
import type { Board } from "./board.ts";
import { cellElementId } from "./cell-view.ts";
import { type Desk, newDesk } from "./desk.ts";
import { isEntry, leaveEntry } from "./entering.ts";
import { chooseFile, fileNameOf, type OpenedFile, readFile, saveFile } from "./files.ts";
import type { Find } from "./find.ts";
import { type FormulaEntry, loadEditor } from "./formula-entry.ts";
import { goTo } from "./go-to.ts";
import { whenIdle } from "./idle-queue.ts";
import { type InFile, Keeping, type KeptApp, type Shipped } from "./keeping/keeping.ts";
import { loadFind, loadTrials } from "./late-elements.ts";
import { LateFunctions } from "./late-functions.ts";
import { loadMarkdown } from "./note-cell.ts";
import { tell } from "./notice.ts";
import { OpenFile } from "./open-file.ts";
import { openReference } from "./open-reference.ts";
import type { Page } from "./page.ts";
import { sheetElementId } from "./sheet.ts";
import { unsavedDialog } from "./unsaved-dialog.ts";
import { words } from "./words.ts";

/** The whole screen: the bar, the page, the board, and the way of notebooks into and out of files. */
export class App extends LitElement {
  static override properties = {
    desk: { state: true },
    alarm: { state: true },
    news: { state: true },
    saving: { state: true },
    dropping: { state: true },
    waiting: { state: true },
    asked: { state: true },
  };
  declare private desk: Desk;
  /** What went wrong, until it is dismissed. */
  declare private alarm: string | null;
  /** What is said to those who do not see it happen. */
  declare private news: string;
  declare private saving: string;
  declare private dropping: boolean;
  /** A file that waits for an answer about unsaved changes. */
  declare private waiting: { readonly open: () => Promise<unknown> } | null;

  /** What "why" is asked of, while that is shown. */
  declare private asked: Subject | null;
  /** Where the focus goes back to when it is shown no more. */
  private askedFrom: HTMLElement | null = null;

  private readonly session: Session;
  private readonly lateFunctions: LateFunctions;
  private readonly file: OpenFile;
  private readonly keeping: Keeping;
  private comparing = 0;

  constructor(
    functions: FunctionTable,
    loadFunctions: () => Promise<FunctionTable>,
    shipped: Shipped,
    private readonly crew: Crew,
  ) {
    super();
    this.session = new Session(functions, crew.compute);
    this.lateFunctions = new LateFunctions(loadFunctions, (all) => {
      crew.learn(all);
      this.session.learn(all);
    });
    this.file = new OpenFile(this.session);
    this.keeping = new Keeping(this.forKeeping(shipped));
    this.desk = newDesk(this.session, crew, this.keeping.drafts);
    this.alarm = null;
    this.news = "";
    this.saving = "";
    this.dropping = false;
    this.waiting = null;
    this.asked = null;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.session.onNotebook(() => this.tellSaving());
    this.addEventListener("open-notebook", () => this.ask());
    this.addEventListener("save-notebook", () => this.save());
    this.addEventListener("list-notebooks", () => this.list());
    this.addEventListener("find-cell", () => void this.find());
    this.addEventListener("open-reference", () => this.openReference(null));
    this.addEventListener("undo-step", () => this.step("undo"));
    this.addEventListener("redo-step", () => this.step("redo"));
    this.addEventListener("show-sheet", ((event: CustomEvent<string>) => {
      this.showSheet(event.detail);
    }) as EventListener);
    this.addEventListener(
      "ask-why",
      ((event: CustomEvent<Subject>) => void this.askWhy(event.detail)) as EventListener,
    );
    this.addEventListener("end-why", () => this.endWhy());
    window.addEventListener("keydown", this.key);
    window.addEventListener("beforeunload", (event) => {
      const isInFile = !this.file.changed && this.keeping.drafts.areEmpty;
      if (!this.keeping.holds && !isInFile) event.preventDefault();
    });
    for (const name of ["dragenter", "dragover", "dragleave", "drop"] as const) {
      window.addEventListener(name, this.drag);
    }
    this.openFirst();
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has("waiting") && this.waiting) this.querySelector("dialog")?.showModal();
  }

  protected override render(): TemplateResult {
    const { desk } = this;
    return html`
      <nav class="skips">
        <a href="#page">${words.skipToPage}</a>
        <a href="#board">${words.skipToBoard}</a>
      </nav>
      <header><spanwise-bar .desk=${desk} .saving=${this.saving} .keeping=${this.keeping}></spanwise-bar>
        <spanwise-reading .keeping=${this.keeping}></spanwise-reading></header>
      <div class="alarms" role="alert">${this.alarm === null ? nothing : this.renderAlarm(this.alarm)}</div>
      <div class="halves${this.asked ? " explaining" : ""}">
        <main id="page" tabindex="-1"><spanwise-page .desk=${desk}></spanwise-page></main>
        <section id="board" tabindex="0" aria-label=${words.board}><spanwise-board .desk=${desk}></spanwise-board></section>
        ${this.asked ? html`<spanwise-why .desk=${desk} .asked=${this.asked}></spanwise-why>` : nothing}
      </div>
      <input class="upload" type="file" accept=".json,application/json" hidden aria-label=${words.file} @change=${this.upload} />
      <p class="unseen" role="status">${this.news}</p>
      <spanwise-find .desk=${desk} .onChoose=${(id: string) => this.querySelector<Page>("spanwise-page")?.show(id)}></spanwise-find>
      <spanwise-notice></spanwise-notice>
      ${this.dropping ? html`<div class="drop"><p>${words.dropHere}</p></div>` : nothing}
      ${this.waiting ? this.renderQuestion() : nothing}`;
  }

  private renderAlarm(text: string): TemplateResult {
    return html`<p><span class="sign" aria-hidden="true">✕</span> ${text}</p>
      <button type="button" @click=${() => this.dismiss()}>${words.dismiss}</button>`;
  }

  private renderQuestion(): TemplateResult {
    const answer = (act: () => Promise<unknown>) => async (): Promise<void> => {
      const open = this.waiting?.open;
      const goesOn = await act();
      this.waiting = null;
      if (goesOn) await open?.();
    };
    return unsavedDialog(this.session.notebook.title, {
      onSave: answer(() => this.save()),
      onDrop: answer(async () => true),
      onStay: answer(async () => false),
    });
  }

  private forKeeping(shipped: Shipped): KeptApp {
    const { session, file } = this;
    return {
      session,
      file,
      shipped,
      ready: (notebook) => this.ready(notebook),
      take: (notebook, saved, inFile) => this.take(notebook, saved, inFile),
      unlessLost: (goOn) => this.unlessLost(goOn),
      leaveEntry,
      alarm: (text) => {
        this.alarm = text;
      },
      alarmIsOver: (text) => {
        if (this.alarm === text) this.alarm = null;
      },
      tell,
    };
  }

  private async openFirst(): Promise<void> {
    // On its way while the notebook is.
    void loadMarkdown();
    try {
      await this.keeping.start();
    } catch (error) {
      console.error(error);
      this.alarm = words.demoMissing;
    }
    whenIdle(() => this.loadRest(), 3000);
  }

  /** What was left out so that the page could be used sooner. */
  private async loadRest(): Promise<void> {
    await Promise.all([this.lateFunctions.all().catch(this.functionsMissing), loadEditor(), loadWhy(), loadTrials()]);
    this.crew.warm("flow");
  }

  private ready(notebook: Notebook): Promise<void> {
    return this.lateFunctions.calledIn(notebook, this.session.functions).catch(this.functionsMissing);
  }

  private readonly functionsMissing = (error: unknown): void => {
    console.error(error);
    this.alarm = words.functionsMissing;
  };

  private async ask(): Promise<void> {
    leaveEntry();
    await this.unlessLost(async () => {
      const file = await chooseFile();
      if (file === undefined) this.querySelector<HTMLInputElement>(".upload")?.click();
      else if (file) await this.open(file);
    });
  }

  private readonly upload = async (event: Event): Promise<void> => {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (file) await this.openRead(file);
    // The same file can be chosen again.
    input.value = "";
  };

  private async openRead(file: File): Promise<void> {
    try {
      await this.open(await readFile(file));
    } catch {
      this.alarm = words.cannotRead(file.name);
    }
  }

  /** Opens a file; where it is no notebook the open one stays and a message says why. */
  private async open(file: OpenedFile): Promise<void> {
    // What goes wrong from here on is told, and stays.
    this.alarm = null;
    try {
      await this.keeping.openFile(file);
      this.news = words.opened(this.session.notebook.title);
    } catch (error) {
      if (!(error instanceof NotebookError)) throw error;
      this.alarm = words.cannotOpen(file.name, error.message);
    }
  }

  private async take(notebook: Notebook, saved: Notebook, { name, handle }: InFile): Promise<void> {
    // First the desk: cells that are asked to draw by the session are then those of the new notebook.
    this.asked = null;
    this.desk = newDesk(this.session, this.crew, this.keeping.drafts, this.desk);
    const { baseline } = this.desk;
    this.session.open(notebook);
    this.file.isSaved(saved, name, handle);
    this.tellSaving();
    await this.session.settled();
    baseline.capture();
  }

  /** Gives true where the notebook has been saved. */
  private async save(): Promise<boolean> {
    leaveEntry();
    const notebook = this.session.own;
    try {
      const text = writeNotebook(notebook);
      const saved = await saveFile(this.file.name ?? fileNameOf(notebook.title), text, this.file.handle);
      if (!saved) return false;
      this.file.isSaved(notebook, saved.name, saved.handle);
      this.keeping.wasSaved();
      this.alarm = null;
      this.news = words.savedAs(saved.name);
      this.tellSaving();
      return true;
    } catch (error) {
      this.alarm = words.cannotSave(error instanceof NotebookError ? error.message : words.saveFailed);
      return false;
    }
  }

  /** Goes on at once, or when the person has said what becomes of changes that are neither kept nor in a file. */
  private async unlessLost(open: () => Promise<unknown>): Promise<void> {
    await this.keeping.flush();
    if (!this.keeping.holds && this.file.changed) this.waiting = { open };
    else await open();
  }

  /** The exact comparison waits for a pause. */
  private tellSaving(): void {
    this.saving = this.tellOf(this.file.touched);
    clearTimeout(this.comparing);
    this.comparing = window.setTimeout(() => {
      this.saving = this.tellOf(this.file.changed);
    }, 400);
    const title = `${this.file.touched ? "• " : ""}${this.session.notebook.title.trim() || words.untitled} – ${words.product}`;
    if (document.title !== title) document.title = title;
  }

  private tellOf(changed: boolean): string {
    return changed ? words.unsaved : this.file.name === null ? "" : words.saved;
  }

  private dismiss(): void {
    this.alarm = null;
    this.querySelector<HTMLElement>("spanwise-bar button")?.focus();
  }

  /** Shows why something is what it is; asked again about the same, it takes the focus again. */
  private async askWhy(subject: Subject): Promise<void> {
    const { serial } = this.desk;
    const from = document.activeElement;
    await loadWhy();
    if (serial !== this.desk.serial) return;
    if (from instanceof HTMLElement && !from.closest("spanwise-why")) this.askedFrom = from;
    this.asked = { ...subject };
    await this.updateComplete;
    // The page has less room now.
    document.getElementById(cellElementId(subject.id))?.scrollIntoView({ block: "nearest" });
  }

  private async endWhy(): Promise<void> {
    const asked = this.asked;
    this.asked = null;
    await this.updateComplete;
    if (this.askedFrom?.isConnected) this.askedFrom.focus({ preventScroll: true });
    else if (asked) goTo(this, asked.id);
  }

  private async showSheet(cell: string): Promise<void> {
    // It may just have been pinned.
    await this.querySelector<Board>("spanwise-board")?.updateComplete;
    const sheet = document.getElementById(sheetElementId(cell));
    sheet?.scrollIntoView({ block: "nearest", inline: "center" });
    sheet?.focus({ preventScroll: true });
  }

  private async openReference(name: string | null): Promise<void> {
    await this.lateFunctions.all().catch(this.functionsMissing);
    await openReference(this.session.functions, name);
  }

  private readonly key = (event: KeyboardEvent): void => {
    if (event.key === "F1" && !this.waiting) {
      event.preventDefault();
      this.openReference(this.querySelector<FormulaEntry>("spanwise-formula-entry")?.called ?? null);
      return;
    }
    if (!(event.ctrlKey || event.metaKey) || event.altKey || this.waiting) return;
    const act = this.shortcut(event.key.toLowerCase(), event.shiftKey);
    // What is being entered undoes its own steps.
    if (!act || (act.isHistory && isEntry(event.target))) return;
    event.preventDefault();
    act.run();
  };

  /** Undoes or redoes one step, and brings into view where it is seen. */
  private step(way: "undo" | "redo"): void {
    const step = this.session.steps[way];
    if (!step) return;
    this.session[way]();
    this.querySelector<Page>("spanwise-page")?.reveal(step);
  }

  private async list(): Promise<void> {
    leaveEntry();
    const { openList } = await import("./keeping/list-dialog.ts");
    openList(this.keeping);
  }

  private async find(): Promise<void> {
    await loadFind();
    this.querySelector<Find>("spanwise-find")?.open();
  }

  private shortcut(key: string, shift: boolean): { isHistory: boolean; run: () => void } | null {
    if (key === "s" && !shift) return { isHistory: false, run: () => this.save() };
    if (key === "o" && !shift) return { isHistory: false, run: () => this.ask() };
    if (key === "f" && shift) return { isHistory: false, run: () => void this.find() };
    if (key === "z" && !shift) return { isHistory: true, run: () => this.step("undo") };
    if (key === "y" || key === "z") return { isHistory: true, run: () => this.step("redo") };
    return null;
  }

  private readonly drag = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    if (event.type === "dragenter" || event.type === "dragover") this.dropping = true;
    // Leaving for a part of the page is not leaving the window.
    else if (event.type === "drop" || event.relatedTarget === null) this.dropping = false;
    const [file] = event.type === "drop" ? event.dataTransfer.files : [];
    if (file) this.unlessLost(() => this.openRead(file));
  };
}
