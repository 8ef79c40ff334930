import { html, LitElement, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { type Cell, figuresOnBoard, isFigure } from "../cells/index.ts";
import { moveAlong } from "./board-actions.ts";
import type { Desk } from "./desk.ts";
import { sameKeys } from "./same-keys.ts";
import { Sheet } from "./sheet.ts";
import { words } from "./words.ts";

/** The drawings and charts that are pinned to the board, in its order, each on a sheet. */
export class Board extends LitElement {
  static override properties = { desk: { attribute: false } };
  declare desk: Desk;
  private concealed: ReadonlyMap<string, string> = new Map();
  private stop: () => void = () => undefined;
  /** The figures that are on it. */
  private drawn: readonly Cell[] = [];
  /** Where the focus was last. */
  private stood: { readonly at: HTMLElement; readonly sheet: Sheet; readonly index: number } | null = null;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.stop = this.desk.session.onNotebook(() => this.follow());
    this.addEventListener("keydown", this.key);
    this.addEventListener("focusin", this.stand);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.stop();
    this.removeEventListener("keydown", this.key);
    this.removeEventListener("focusin", this.stand);
  }

  /** What a question hides, or no longer hides, is drawn anew; an edit elsewhere leaves the sheets alone. */
  private follow(): void {
    const { concealed, notebook } = this.desk.session;
    const figures = figuresOnBoard(notebook);
    const isSame = figures.length === this.drawn.length && figures.every((cell, index) => cell === this.drawn[index]);
    if (figures.length === 0 || !isSame) this.requestUpdate();
    if (sameKeys(concealed, this.concealed)) return;
    this.concealed = concealed;
    for (const sheet of this.sheets) sheet.draw();
  }

  protected override updated(): void {
    if (this.stood && document.activeElement === document.body) setTimeout(() => this.keepFocus());
  }

  protected override render(): TemplateResult {
    const { session, serial } = this.desk;
    const { notebook } = session;
    const figures = figuresOnBoard(notebook);
    this.drawn = figures;
    if (figures.length === 0) {
      return html`<p class="hint">${notebook.cells.some(isFigure) ? words.nothingPinned : words.emptyBoard}</p>`;
    }
    return html`${repeat(
      figures,
      ({ id }) => `${serial} ${id}`,
      (cell) => html`<spanwise-sheet .desk=${this.desk} .cell=${cell}></spanwise-sheet>`,
    )}`;
  }

  private get sheets(): Sheet[] {
    return [...this.children].filter((each) => each instanceof Sheet);
  }

  private readonly stand = ({ target }: FocusEvent): void => {
    const sheet = target instanceof Element ? target.closest<Sheet>("spanwise-sheet") : null;
    this.stood = sheet && { at: target as HTMLElement, sheet, index: this.sheets.indexOf(sheet) };
  };

  /** A moved sheet takes the focus along; when it was taken off, the one in its place gets it. */
  private keepFocus(): void {
    const { stood, sheets } = this;
    if (!stood || document.activeElement !== document.body) return;
    if (stood.at.isConnected) {
      stood.at.focus({ preventScroll: true });
      stood.sheet.scrollIntoView({ block: "nearest", inline: "nearest" });
      return;
    }
    const next = sheets[Math.min(stood.index, sheets.length - 1)];
    (next?.querySelector<HTMLElement>(".more") ?? this.closest<HTMLElement>("#board"))?.focus();
  }

  /** Alt with an arrow moves the sheet that has the focus. */
  private readonly key = (event: KeyboardEvent): void => {
    const { target, key, altKey, ctrlKey, metaKey, shiftKey } = event;
    const sheet = target instanceof Element ? target.closest<Sheet>("spanwise-sheet") : null;
    const by = steps[key];
    if (!sheet || by === undefined || !altKey || ctrlKey || metaKey || shiftKey || event.defaultPrevented) return;
    event.preventDefault();
    moveAlong(this.desk, sheet.cell, by);
  };
}

/** The board is a column, or on a narrow screen a strip. */
const steps: Readonly<Record<string, -1 | 1 | undefined>> = {
  ArrowUp: -1,
  ArrowLeft: -1,
  ArrowDown: 1,
  ArrowRight: 1,
};
