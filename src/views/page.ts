import { html, LitElement, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { Cell } from "../cells/index.ts";
import { type CellView, cellElementId } from "./cell-view.ts";
import type { Desk } from "./desk.ts";

/** The notebook's text: its cells in order. A cell draws itself again on its own; the page only when the cells change. */
export class Page extends LitElement {
  static override properties = { desk: { attribute: false } };
  declare desk: Desk;
  private stop: () => void = () => undefined;
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
    this.addEventListener("go-to-cell", this.goTo as EventListener);
    this.stop = this.desk.session.onNotebook(() => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener("go-to-cell", this.goTo as EventListener);
    this.stop();
    this.nearness.disconnect();
  }

  /** Watching what is watched already changes nothing. */
  protected override updated(): void {
    for (const cell of this.children) this.nearness.observe(cell);
  }

  protected override render(): TemplateResult {
    const { session, serial } = this.desk;
    return html`${repeat(
      session.notebook.cells,
      ({ id }) => `${serial} ${id}`,
      (cell) => this.renderCell(cell),
    )}`;
  }

  private renderCell(cell: Cell): TemplateResult {
    const { desk } = this;
    switch (cell.kind) {
      case "given":
      case "derived":
      case "check":
        return html`<spanwise-formula-cell .desk=${desk} .cell=${cell}></spanwise-formula-cell>`;
      case "table":
        return html`<spanwise-table-cell .desk=${desk} .cell=${cell}></spanwise-table-cell>`;
      case "note":
        return html`<spanwise-note-cell .desk=${desk} .cell=${cell}></spanwise-note-cell>`;
      case "decision":
        return html`<spanwise-decision-cell .desk=${desk} .cell=${cell}></spanwise-decision-cell>`;
      case "question":
        return html`<spanwise-question-cell .desk=${desk} .cell=${cell}></spanwise-question-cell>`;
      case "drawing":
      case "chart":
        return html`<spanwise-figure-cell .desk=${desk} .cell=${cell}></spanwise-figure-cell>`;
    }
  }

  /** Brings a cell into view and gives it the focus, by name or id. */
  private readonly goTo = ({ detail }: CustomEvent<string>): void => {
    const { program, notebook } = this.desk.session;
    const id = program.byName.get(detail)?.id ?? notebook.cells.find((cell) => cell.id === detail)?.id;
    const element = id === undefined ? null : document.getElementById(cellElementId(id));
    element?.scrollIntoView({ block: "center" });
    const place =
      element?.querySelector<HTMLElement>(".formula-button") ?? element?.querySelector<HTMLElement>("button");
    place?.focus({ preventScroll: true });
  };
}
