import { html, LitElement, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { Desk } from "./desk.ts";
import { sameKeys } from "./same-keys.ts";
import type { Sheet } from "./sheet.ts";
import { words } from "./words.ts";

/** The drawings and charts of a notebook, in its order, each on a sheet. */
export class Board extends LitElement {
  static override properties = { desk: { attribute: false } };
  declare desk: Desk;
  private concealed: ReadonlyMap<string, string> = new Map();
  private stop: () => void = () => undefined;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.stop = this.desk.session.onNotebook(() => this.follow());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.stop();
  }

  /** What a question hides, or no longer hides, is drawn anew. */
  private follow(): void {
    this.requestUpdate();
    const { concealed } = this.desk.session;
    if (sameKeys(concealed, this.concealed)) return;
    this.concealed = concealed;
    for (const sheet of this.querySelectorAll<Sheet>("spanwise-sheet")) sheet.draw();
  }

  protected override render(): TemplateResult {
    const { session, serial } = this.desk;
    const figures = session.notebook.cells.filter((cell) => cell.kind === "drawing" || cell.kind === "chart");
    if (figures.length === 0) return html`<p class="hint">${words.emptyBoard}</p>`;
    return html`${repeat(
      figures,
      ({ id }) => `${serial} ${id}`,
      (cell) => html`<spanwise-sheet .desk=${this.desk} .cell=${cell}></spanwise-sheet>`,
    )}`;
  }
}
