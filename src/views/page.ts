import { html, LitElement, type TemplateResult } from "lit";
import type { Cell, HistoryStep } from "../cells/index.ts";
import { bringIntoView } from "./bring-into-view.ts";
import { moveBy, offerKinds } from "./cell-actions.ts";
import { CellList } from "./cell-list.ts";
import type { CellView } from "./cell-view.ts";
import type { Desk } from "./desk.ts";
import { isEntry } from "./entering.ts";
import { sameKeys } from "./same-keys.ts";
import { seenIn } from "./step-words.ts";
import { words } from "./words.ts";

/** The notebook's text: its cells in order. A cell draws itself again on its own; the page only when the cells change. */
export class Page extends LitElement {
  static override properties = { desk: { attribute: false } };
  declare desk: Desk;
  private concealed: ReadonlyMap<string, string> = new Map();
  /** The trial that is on, as cells name it. */
  private trial: { readonly index: number | null; readonly name: string | undefined } = {
    index: null,
    name: undefined,
  };
  private stop: () => void = () => undefined;
  private readonly list = new CellList();
  /** Where the focus was last. */
  private stood: { readonly at: HTMLElement; readonly cell: Element; readonly index: number } | null = null;
  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("go-to-cell", this.goTo as EventListener);
    window.addEventListener("beforeprint", this.drawAll);
    this.addEventListener("begin-cell", this.begin as unknown as EventListener);
    this.addEventListener("keydown", this.key);
    this.addEventListener("focusin", this.stand);
    const stops = [
      this.desk.session.onNotebook(() => this.follow()),
      this.desk.ghosts.onChange(() => this.drawChecks()),
    ];
    this.stop = () => {
      for (const stop of stops) stop();
    };
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("go-to-cell", this.goTo as EventListener);
    window.removeEventListener("beforeprint", this.drawAll);
    this.removeEventListener("begin-cell", this.begin as unknown as EventListener);
    this.removeEventListener("keydown", this.key);
    this.removeEventListener("focusin", this.stand);
    this.stop();
    this.list.clear();
  }

  /** A cell draws itself again; where a question hides others, or no longer does, and where a trial is turned on, all do. */
  private follow(): void {
    const { desk, list } = this;
    if (this.isUpdatePending || !list.takeInPlace(desk)) this.requestUpdate();
    const { concealed, trialIndex, trial } = desk.session;
    const isSameTrial = trialIndex === this.trial.index && trial?.name === this.trial.name;
    if (isSameTrial && sameKeys(concealed, this.concealed)) return;
    this.concealed = concealed;
    this.trial = { index: trialIndex, name: trial?.name };
    for (const cell of list.all) cell.requestUpdate();
  }

  /** Checks tell which trials pass. */
  private drawChecks(): void {
    for (const view of this.list.all) if (view.cell.kind === "check") view.requestUpdate();
  }

  protected override updated(): void {
    this.list.take(this.desk);
    // While the focus goes from one place to another it is nowhere; where it stays so, it was lost.
    if (this.stood && document.activeElement === document.body) setTimeout(() => this.keepFocus());
  }

  protected override render(): TemplateResult {
    return html`${this.desk.session.notebook.cells.length === 0 ? this.renderEmpty() : this.list.element}`;
  }

  private renderEmpty(): TemplateResult {
    const add = (event: Event): void => offerKinds(this.desk, event.currentTarget as HTMLElement, 0);
    return html`<div class="empty-page"><p class="hint">${words.emptyPage}</p>
      <button type="button" class="add-cell" aria-haspopup="menu" @click=${add}>${words.addCell}</button></div>`;
  }

  private readonly drawAll = (): void => {
    for (const cell of this.list.all) cell.drawFirst();
  };

  /** Remembers where the focus is, so that it can be kept when the cells change. */
  private readonly stand = ({ target }: FocusEvent): void => {
    const cell = target instanceof Element ? target.closest<CellView<Cell>>(".cell") : null;
    this.stood = cell && { at: target as HTMLElement, cell, index: this.list.all.indexOf(cell) };
  };

  /** A moved cell takes the focus along; when the cell is gone, the one in its place gets it. */
  private keepFocus(): void {
    const { stood } = this;
    if (!stood || document.activeElement !== document.body) return;
    if (stood.at.isConnected) {
      stood.at.focus({ preventScroll: true });
      stood.cell.scrollIntoView({ block: "nearest" });
      return;
    }
    if (stood.cell.isConnected) return;
    const { all } = this.list;
    const next = all[Math.min(stood.index, all.length - 1)];
    next?.drawFirst();
    next?.scrollIntoView({ block: "nearest" });
    if (next) next.focusFirst();
    else this.querySelector<HTMLElement>(".add-cell")?.focus();
  }

  /**
   * Ctrl Enter puts a cell in below, Alt with an arrow moves the cell, Alt Enter asks why; not while a text is entered.
   */
  private readonly key = (event: KeyboardEvent): void => {
    const { target, key, ctrlKey, metaKey, altKey, shiftKey } = event;
    const cell = target instanceof Element ? target.closest<CellView<Cell>>(".cell") : null;
    if (!cell || event.defaultPrevented || isEntry(target) || shiftKey) return;
    if (key === "Enter" && (ctrlKey || metaKey) && !altKey) cell.offerInsert();
    else if (key === "Enter" && altKey && !ctrlKey && !metaKey) cell.askWhy();
    else if (altKey && !ctrlKey && !metaKey && (key === "ArrowUp" || key === "ArrowDown")) {
      moveBy(this.desk, cell.cell, cell.groupName, key === "ArrowUp" ? -1 : 1);
    } else return;
    event.preventDefault();
  };

  /** Begins to enter a cell that has just been put in. */
  private readonly begin = async ({ detail }: CustomEvent<string>): Promise<void> => {
    await this.updateComplete;
    const cell = this.list.get(detail);
    if (!cell) return;
    cell.drawFirst();
    bringIntoView(cell, "nearest");
    await cell.updateComplete;
    cell.begin();
  };

  /** Brings a cell into view and gives it the focus, by name or id. */
  private readonly goTo = ({ detail }: CustomEvent<string>): void => {
    const { program, notebook } = this.desk.session;
    const id = program.byName.get(detail)?.id ?? notebook.cells.find((cell) => cell.id === detail)?.id;
    if (id !== undefined) this.show(id);
  };

  /** Brings into view where it is seen what a step did or took back. */
  async reveal(step: HistoryStep): Promise<void> {
    await this.updateComplete;
    const { byName } = this.desk.session.program;
    const id = seenIn(
      step,
      (each) => this.list.get(each) !== undefined,
      (name) => byName.get(name)?.id,
    );
    const cell = id === undefined ? undefined : this.list.get(id);
    if (cell) bringIntoView(cell, "nearest");
  }

  /** Brings the cell of this id into view and gives it the focus. */
  async show(id: string): Promise<void> {
    await this.updateComplete;
    const cell = this.list.get(id);
    if (!cell) return;
    cell.drawFirst();
    bringIntoView(cell, "center");
    cell.focusFirst();
  }
}
