import { html, LitElement, nothing, type TemplateResult } from "lit";
import type { Cell } from "../cells/index.ts";
import type { Desk } from "./desk.ts";
import type { Ok } from "./figure.ts";
import { type FindableCell, type FoundCell, findable, findCells } from "./find-cells.ts";
import { oneLine } from "./value-text.ts";
import { words } from "./words.ts";

/** How many cells are listed; whoever looks for one goes on typing. */
const most = 40;

/** A field, over everything else, that lists the cells in which its text stands, and goes to one. */
export class Find extends LitElement {
  static override properties = {
    desk: { attribute: false },
    onChoose: { attribute: false },
    query: { state: true },
    active: { state: true },
    shown: { state: true },
  };
  declare desk: Desk;
  /** Goes to the cell of this id. */
  declare onChoose: (id: string) => void;
  declare private query: string;
  /** The place of the cell, among those listed, that Enter goes to. */
  declare private active: number;
  declare private shown: boolean;
  private cells: readonly FindableCell[] = [];

  constructor() {
    super();
    this.query = "";
    this.active = 0;
    this.shown = false;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  /** Shows the field, empty; what is looked through is the notebook as it is now. */
  async open(): Promise<void> {
    if (this.shown) return;
    this.cells = this.desk.session.notebook.cells.map((cell) => this.read(cell));
    [this.query, this.active, this.shown] = ["", 0, true];
    await this.updateComplete;
    this.popup?.showPopover();
    this.querySelector("input")?.focus();
  }

  protected override render(): TemplateResult | typeof nothing {
    if (!this.shown) return nothing;
    const found = findCells(this.cells, this.query);
    const listed = found.slice(0, most);
    const active = listed.length > 0 ? `found-${this.active}` : nothing;
    return html`<div class="find" popover="auto" role="search" aria-label=${words.find} @toggle=${this.toggled}>
      <input type="text" role="combobox" aria-label=${words.find} placeholder=${words.findHint} autocomplete="off"
        autocapitalize="off" spellcheck="false" enterkeyhint="go" aria-autocomplete="list" aria-expanded="true"
        aria-controls="found" aria-activedescendant=${active}
        @input=${this.type} @keydown=${(event: KeyboardEvent) => this.key(event, listed)} />
      <ul id="found" role="listbox" aria-label=${words.cellsFound}>
        ${listed.map((each, index) => this.renderFound(each, index))}
      </ul>
      <p class="count" role="status">${words.found(found.length, listed.length)}</p>
    </div>`;
  }

  private renderFound({ cell, excerpt }: FoundCell, index: number): TemplateResult {
    const { before, match, after } = excerpt;
    const choose = (): void => this.choose(cell.id);
    return html`<li role="option" id="found-${index}" aria-selected=${index === this.active ? "true" : "false"}
      @click=${choose} @pointerdown=${(event: Event) => event.preventDefault()}>
      <span class="found-title ${isNamedKind(cell.kind) ? "name" : ""}">${cell.title}</span>
      <span class="kind">${words.kindNames[cell.kind].toLowerCase()}</span>
      <span class="excerpt">${before}${match ? html`<mark>${match}</mark>` : nothing}${after}</span>
    </li>`;
  }

  private read(cell: Cell): FindableCell {
    const { session } = this.desk;
    const result = session.result(cell.id);
    return findable(cell, result?.ok ? told(cell, result) : "", session.concealed.has(cell.id));
  }

  private get popup(): HTMLElement | null {
    return this.querySelector<HTMLElement>(".find");
  }

  private readonly type = (event: Event): void => {
    this.query = (event.target as HTMLInputElement).value;
    this.active = 0;
  };

  private key(event: KeyboardEvent, listed: readonly FoundCell[]): void {
    const { key, isComposing, ctrlKey, metaKey, altKey } = event;
    if (isComposing || ctrlKey || metaKey || altKey) return;
    const last = listed.length - 1;
    if (key === "ArrowDown") this.move(this.active < last ? this.active + 1 : 0);
    else if (key === "ArrowUp") this.move(this.active > 0 ? this.active - 1 : last);
    else if (key === "PageDown") this.move(Math.min(last, this.active + 8));
    else if (key === "PageUp") this.move(Math.max(0, this.active - 8));
    else if (key === "Enter") this.choose(listed[this.active]?.cell.id);
    else if (key === "Tab") this.popup?.hidePopover();
    else return;
    event.preventDefault();
  }

  private async move(to: number): Promise<void> {
    this.active = Math.max(0, to);
    await this.updateComplete;
    this.querySelector("[aria-selected=true]")?.scrollIntoView({ block: "nearest" });
  }

  private choose(id: string | undefined): void {
    if (id === undefined) return;
    this.popup?.hidePopover();
    this.onChoose(id);
  }

  private readonly toggled = (event: ToggleEvent): void => {
    if (event.newState === "closed") this.shown = false;
  };
}

function told(cell: Cell, result: Ok): string {
  switch (cell.kind) {
    case "given":
    case "derived":
      return oneLine(result, cell);
    case "table":
      return oneLine(result);
    case "check":
      return result.value === true ? words.holds : words.fails;
    default:
      return "";
  }
}

const isNamedKind = (kind: string): boolean => ["given", "derived", "table", "check"].includes(kind);
