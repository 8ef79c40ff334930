import { html, LitElement, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { Desk } from "./desk.ts";
import { words } from "./words.ts";

/** The drawings and charts of a notebook, in its order, each on a sheet. */
export class Board extends LitElement {
  static override properties = { desk: { attribute: false } };
  declare desk: Desk;
  private stop: () => void = () => undefined;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.stop = this.desk.session.onNotebook(() => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.stop();
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
