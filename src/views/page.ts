import { html, LitElement, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { repeat } from "lit/directives/repeat.js";
import type { Cell, HistoryStep } from "../cells/index.ts";
import { moveBy, offerKinds } from "./cell-actions.ts";
import { CellView, cellElementId } from "./cell-view.ts";
import type { Desk } from "./desk.ts";
import { isEntry } from "./entering.ts";
import { sameKeys } from "./same-keys.ts";
import { seenIn } from "./step-words.ts";
import { words } from "./words.ts";

/** As many cells as any screen shows at once. */
const firstScreen = 40;

/** The notebook's text: its cells in order. A cell draws itself again on its own; the page only when the cells change. */
export class Page extends LitElement {
  static override properties = { desk: { attribute: false } };
  declare desk: Desk;
  private concealed: ReadonlyMap<string, string> = new Map();
  private stop: () => void = () => undefined;
  /** The notebook that is drawn, and its cells as they were given to their elements. */
  private drawn: { readonly serial: number; readonly cells: readonly Cell[] } = { serial: -1, cells: [] };
  /** Where the focus was last. */
  private stood: { readonly at: HTMLElement; readonly cell: Element; readonly index: number } | null = null;
  private readonly nearness = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) (target as CellView<Cell>).away = !isIntersecting;
    },
    { rootMargin: "150px" },
  );

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
    this.stop = this.desk.session.onNotebook(() => this.follow());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("go-to-cell", this.goTo as EventListener);
    window.removeEventListener("beforeprint", this.drawAll);
    this.removeEventListener("begin-cell", this.begin as unknown as EventListener);
    this.removeEventListener("keydown", this.key);
    this.removeEventListener("focusin", this.stand);
    this.stop();
    this.nearness.disconnect();
  }

  /** A cell draws itself again; where a question hides others, or no longer does, they do too. */
  private follow(): void {
    if (!this.takeInPlace()) this.requestUpdate();
    const { concealed } = this.desk.session;
    if (sameKeys(concealed, this.concealed)) return;
    this.concealed = concealed;
    for (const cell of this.cells) cell.requestUpdate();
  }

  /** Gives cells that say something else to their elements; false where elements come, go or move. */
  private takeInPlace(): boolean {
    const { serial, session } = this.desk;
    const { cells } = session.notebook;
    const { drawn } = this;
    const isInPlace = (cell: Cell, index: number): boolean => {
      const before = drawn.cells[index];
      return cell === before || (cell.id === before?.id && cell.kind === before.kind);
    };
    const stays = !this.isUpdatePending && drawn.serial === serial && drawn.cells.length === cells.length;
    if (!stays || !cells.every(isInPlace)) return false;
    cells.forEach((cell, index) => {
      if (cell !== drawn.cells[index]) (this.children[index] as CellView<Cell>).cell = cell;
    });
    this.drawn = { serial, cells };
    return true;
  }

  /** Watching what is watched already changes nothing. */
  protected override updated(): void {
    this.drawn = { serial: this.desk.serial, cells: this.desk.session.notebook.cells };
    for (const cell of this.children) this.nearness.observe(cell);
    // While the focus goes from one place to another it is nowhere; where it stays so, it was lost.
    if (this.stood && document.activeElement === document.body) setTimeout(() => this.keepFocus());
  }

  protected override render(): TemplateResult {
    const { session, serial } = this.desk;
    if (session.notebook.cells.length === 0) return this.renderEmpty();
    const isOpened = this.drawn.serial !== serial;
    return html`${repeat(
      session.notebook.cells,
      ({ id }) => `${serial} ${id}`,
      (cell, index) => this.renderCell(cell, isOpened && index >= firstScreen),
    )}`;
  }

  /** Of a notebook that has just been opened, cells that stand further down than the first screen are patient. */
  private renderCell(cell: Cell, isPatient: boolean): TemplateResult {
    const { desk } = this;
    switch (cell.kind) {
      case "given":
      case "derived":
      case "check":
        return html`<spanwise-formula-cell .desk=${desk} .isPatient=${isPatient} .cell=${live(cell)}></spanwise-formula-cell>`;
      case "table":
        return html`<spanwise-table-cell .desk=${desk} .isPatient=${isPatient} .cell=${live(cell)}></spanwise-table-cell>`;
      case "note":
        return html`<spanwise-note-cell .desk=${desk} .isPatient=${isPatient} .cell=${live(cell)}></spanwise-note-cell>`;
      case "decision":
        return html`<spanwise-decision-cell .desk=${desk} .isPatient=${isPatient} .cell=${live(cell)}></spanwise-decision-cell>`;
      case "question":
        return html`<spanwise-question-cell .desk=${desk} .isPatient=${isPatient} .cell=${live(cell)}></spanwise-question-cell>`;
      case "study":
        return html`<spanwise-study-cell .desk=${desk} .isPatient=${isPatient} .cell=${live(cell)}></spanwise-study-cell>`;
      case "drawing":
      case "chart":
        return html`<spanwise-figure-cell .desk=${desk} .isPatient=${isPatient} .cell=${live(cell)}></spanwise-figure-cell>`;
    }
  }

  private renderEmpty(): TemplateResult {
    const add = (event: Event): void => offerKinds(this.desk, event.currentTarget as HTMLElement, 0);
    return html`<div class="empty-page"><p class="hint">${words.emptyPage}</p>
      <button type="button" class="add-cell" aria-haspopup="menu" @click=${add}>${words.addCell}</button></div>`;
  }

  private get cells(): CellView<Cell>[] {
    return [...this.children].filter((each): each is CellView<Cell> => each instanceof CellView);
  }

  private readonly drawAll = (): void => {
    for (const cell of this.cells) cell.drawFirst();
  };

  /** Remembers where the focus is, so that it can be kept when the cells change. */
  private readonly stand = ({ target }: FocusEvent): void => {
    const cell = target instanceof Element ? target.closest(".cell") : null;
    this.stood = cell && { at: target as HTMLElement, cell, index: this.cells.indexOf(cell as CellView<Cell>) };
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
    const { cells } = this;
    const next = cells[Math.min(stood.index, cells.length - 1)];
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
    const cell = document.getElementById(cellElementId(detail)) as CellView<Cell> | null;
    cell?.scrollIntoView({ block: "nearest" });
    cell?.drawFirst();
    await cell?.updateComplete;
    cell?.begin();
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
    const place = (id: string): HTMLElement | null => document.getElementById(cellElementId(id));
    const id = seenIn(step, (each) => place(each) !== null);
    if (id !== undefined) place(id)?.scrollIntoView({ block: "nearest" });
  }

  /** Brings the cell of this id into view and gives it the focus. */
  async show(id: string): Promise<void> {
    await this.updateComplete;
    const element = document.getElementById(cellElementId(id)) as CellView<Cell> | null;
    element?.drawFirst();
    element?.scrollIntoView({ block: "center" });
    element?.focusFirst();
  }
}
