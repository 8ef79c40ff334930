import { html, nothing, type TemplateResult } from "lit";
import { type Column, type Notebook, setEntry, type TableCell, type Value } from "../cells/index.ts";
import { busyNote, errorLine, hiddenValue } from "./cell-view.ts";
import type { Caret, Fault, Leaving } from "./entering.ts";
import { EntryFaults, isNumber } from "./entry-faults.ts";
import { formatNumber } from "./format.ts";
import { formulaLine } from "./formula-line.ts";
import { heldBack } from "./held-text.ts";
import { openMenu } from "./menu.ts";
import { ReasonedCell } from "./reasoned-cell.ts";
import { TableChoice } from "./table-choice.ts";
import { addColumn, addRow, columnDetails, columnItems, dropRow, rowItems } from "./table-menus.ts";
import { entryAsked, type Place, placeByKey, sizeOf } from "./table-places.ts";
import { entryBefore, trialLine } from "./trial-line.ts";
import { oneLine } from "./value-text.ts";
import { words } from "./words.ts";

/**
 * A table, entered entry by entry. At rest its entries are one stop for the Tab key, and the arrow keys move between
 * them; Enter, F2 or typing enters one.
 */
export class TableCellView extends ReasonedCell<TableCell> {
  private readonly choice = new TableChoice(this);
  /** The column whose name and unit are entered. */
  private column = 0;
  private columnRefusal: string | null = null;
  private textBefore = "";
  private textAtFirst = "";
  private caret: Caret = "all";
  private held: Fault | null = null;
  private readonly faults = new EntryFaults();

  override renderCell(): TemplateResult {
    const { result, cell, isPending } = this;
    const error = result && !result.ok ? result.error : undefined;
    const { concealing } = this;
    if (concealing !== undefined) {
      return html`${this.renderName()}
        <div class="body line"><div></div>
          <output class="value value-place" aria-label=${words.valueOf(this.bareName)}>${hiddenValue(this.desk, concealing)}</output>
          ${this.renderReason()}</div>`;
    }
    return html`${this.renderName()}
      <div class="body">
        <div class="entries-place">
          <table class="entries${isPending ? " busy" : ""}" aria-label=${this.bareName}>
            <thead>${this.renderHead()}</thead>
            <tbody>${cell.rows.map((row, index) => this.renderRow(row, index))}</tbody>
          </table>
        </div>
        <output class="unseen" aria-label=${words.valueOf(this.bareName)} aria-live="off" aria-busy=${isPending ? "true" : "false"}
          >${result?.ok ? oneLine(result) : isPending && !result ? words.pending : words.noValue}${busyNote(isPending && result !== undefined)}</output>
        <div class="messages" aria-live=${this.entered === "entry" ? "polite" : "off"}>
          ${cell.rows.length === 0 ? html`<p class="hint">${words.noRows}</p>` : nothing}
          ${this.held ? errorLine({ code: "syntax", message: this.held.message, root: "" }) : error ? errorLine(error) : nothing}
        </div>
        ${trialLine(this.desk, cell)}
        ${this.renderReason()}
        <p class="unseen" role="status">${this.choice.isBlock ? words.chosenBlock(...sizeOf(this.choice.block)) : ""}</p>
      </div>
      ${this.renderTools(this.rowTools())}`;
  }

  private renderHead(): TemplateResult {
    return html`<tr>
      <td></td>
      ${this.cell.columns.map(
        (
          { name, unit, text },
          index,
        ) => html`<th scope="col" class=${text ? "text" : "number"}>${words.columnHead(name)}
          <span class="unit">${unit === undefined || unit === "1" ? "" : unit}</span>
          ${this.renderHandle({ row: -1, column: index }, words.columnMenu(this.bareName, name))}</th>`,
      )}
    </tr>`;
  }

  private renderRow(entries: readonly string[], row: number): TemplateResult {
    return html`<tr>
      <th scope="row">${row + 1}${this.renderHandle({ row, column: -1 }, words.rowMenu(this.bareName, row + 1))}</th>
      ${this.cell.columns.map((column, index) => this.renderEntry(column, entries[index] ?? "", { row, column: index }))}
    </tr>`;
  }

  /** Opens the menu of a row or column; the arrow keys lead to it as to an entry. */
  private renderHandle(place: Place, label: string): TemplateResult {
    const isFirst = this.cell.rows.length === 0 && place.column === 0;
    const open = (event: Event): void => {
      const { focus } = this.choice;
      const items =
        place.row < 0
          ? columnItems(this.desk, this.cell, place.column, focus, (column) => void this.enterColumn(column))
          : rowItems(this.desk, this.cell, place.row, focus);
      openMenu(event.currentTarget as HTMLElement, label, items);
    };
    return html`<button type="button" class="cover" data-place="${place.row}:${place.column}" aria-haspopup="menu"
      tabindex=${isFirst || this.choice.isHere(place) ? 0 : -1} aria-label=${label} @click=${open} @focus=${() => this.choice.stand(place)}
      @keydown=${(event: KeyboardEvent) => this.walk(event, place)}></button>`;
  }

  private renderEntry(column: Column, text: string, place: Place): TemplateResult {
    const isHere = this.choice.isHere(place);
    const fault = column.text ? null : (this.faultAt(place) ?? this.faults.of(text));
    const atRest =
      column.text || (isNumber(text) && !fault)
        ? html`<span class="plain">${text}</span>`
        : this.renderFormula(text, column, place.row, fault);
    if (isHere && this.entered === "entry") return this.renderEntered(column, place, atRest);
    const isChosen = this.choice.isInBlock(place);
    const isMoved = entryBefore(this.desk, this.cell, place.row, place.column) !== null;
    return html`<td class="${column.text ? "text" : "number"}${fault && !fault.waits ? " wrong" : ""}${isChosen ? " chosen" : ""}${isMoved ? " set-here" : ""}">
      ${atRest}
      <button type="button" class="cover" data-place="${place.row}:${place.column}" tabindex=${isHere ? 0 : -1}
        aria-label=${words.editEntry(this.bareName, place.row + 1, column.name)} aria-description=${text}
        @click=${(event: MouseEvent) => (event.shiftKey ? this.choice.extend(place) : this.enter(place, "all"))}
        @mousedown=${(event: MouseEvent) => event.shiftKey && event.preventDefault()} @focus=${() => this.choice.stand(place)}
        @keydown=${(event: KeyboardEvent) => this.key(event, place)}></button>
    </td>`;
  }

  /** The editor lies over the entry, which keeps its place under it, so that no column moves. */
  private renderEntered(column: Column, place: Place, atRest: unknown): TemplateResult {
    const isInner = place.column < this.cell.columns.length / 2;
    return html`<td class="${column.text ? "text" : "number"} open${isInner ? " inner" : ""}">
      <span class="under" aria-hidden="true">${atRest}</span>
      <spanwise-formula-entry
        .label=${words.entry(this.bareName, place.row + 1, column.name)} .text=${this.textAtFirst} .caret=${this.caret}
        .fault=${this.held ?? this.faultAt(place)} .scope=${column.text ? null : this.scopeOf(column)}
        .onText=${this.type} .onLeave=${this.leave} .onStep=${this.step} .onTab=${this.tab}
      ></spanwise-formula-entry>
    </td>`;
  }

  /** An entry that is more than a number: what it comes to, and below it the formula. */
  private renderFormula(text: string, column: Column, row: number, fault: Fault | null): TemplateResult {
    const value = fault || this.namesHidden(text) ? null : this.computed(column, row);
    return html`${value === null ? nothing : html`<span class="computed">${value}</span>`}
      ${formulaLine(text, fault?.at ?? null, fault?.waits ?? false)}`;
  }

  private namesHidden(text: string): boolean {
    const { concealed, program } = this.desk.session;
    return (
      concealed.size > 0 &&
      (text.match(/\p{L}\w*/gu) ?? []).some((each) => concealed.has(program.byName.get(each)?.id ?? ""))
    );
  }

  private computed({ name, unit = "1" }: Column, row: number): string | null {
    const { result } = this;
    if (!result?.ok) return null;
    const value = (result.value as Readonly<Record<string, readonly Value[]>>)[name]?.[row];
    return typeof value === "number" ? formatNumber(value, unit).number : null;
  }

  /** What can be done with rows shows beside a table that has the focus. */
  private rowTools(): TemplateResult[] {
    const { rows, columns } = this.cell;
    const row = Math.max(0, Math.min(this.choice.place.row, rows.length - 1));
    const { focus } = this.choice;
    const add = (): void => addRow(this.desk, this.cell, Math.min(row + 1, rows.length), focus);
    const remove = (): void => dropRow(this.desk, this.cell, { row, column: this.choice.place.column }, focus);
    const another = (): void => {
      addColumn(this.desk, this.cell, columns.length);
      this.enterColumn(columns.length);
    };
    const tools = [html`<button type="button" class="quiet" @click=${add}>${words.addRow}</button>`];
    if (rows.length > 0) {
      tools.push(html`<button type="button" class="quiet" @click=${remove}>${words.removeRow(row + 1)}</button>`);
    }
    tools.push(html`<button type="button" class="quiet" @click=${another}>${words.addColumn}</button>`);
    return tools;
  }

  /** What is entered in the form below is a column's. */
  protected override get details() {
    if (this.entered !== "details") return [];
    return columnDetails(this.desk, this.cell, this.column, this.columnRefusal, (refusal) => {
      this.columnRefusal = refusal;
      this.requestUpdate();
    });
  }

  private async enterColumn(column: number): Promise<void> {
    this.column = column;
    this.choice.take({ row: -1, column });
    this.columnRefusal = null;
    await this.enterDetails("afresh");
  }

  /** A name that is refused keeps the form open. */
  protected override leaveDetails(calledOff: boolean): void {
    if (this.columnRefusal !== null && !calledOff) {
      this.querySelector<HTMLElement>(".details input")?.focus();
      return;
    }
    this.columnRefusal = null;
    super.leaveDetails(calledOff);
    this.choice.focus(this.choice.place);
  }

  protected override askedEntry = () => entryAsked(this.cell, this.choice.place);

  private faultAt({ row, column }: Place): Fault | null {
    const { result, cell } = this;
    if (!result || result.ok) return null;
    const { place, at, message, code } = result.error;
    if (place?.row !== row || place.column !== cell.columns[column]?.name) return null;
    return { at, message, waits: code === "waits" };
  }

  private scopeOf({ unit }: Column) {
    const { session } = this.desk;
    const { functions } = session;
    const program = () => session.program;
    return { cell: this.cell.id, program, functions, namesCells: true, unit: unit ?? null };
  }

  private async enter(place: Place, caret: Caret, first?: string): Promise<void> {
    this.choice.take(place);
    this.textBefore = this.textOf(place);
    this.textAtFirst = first ?? this.textBefore;
    this.caret = caret;
    this.held = null;
    this.entered = "entry";
    if (first !== undefined) this.type(first);
  }

  private key(event: KeyboardEvent, place: Place): void {
    const { key, ctrlKey, metaKey, altKey } = event;
    if (altKey || event.isComposing) return;
    if ((ctrlKey || metaKey) && key.toLowerCase() === "a") {
      this.choice.all();
      event.preventDefault();
      return;
    }
    if (ctrlKey || metaKey || this.walk(event, place)) return;
    if (key === "F2") this.enter(place, Number.POSITIVE_INFINITY);
    else if (key === "Delete") this.choice.clear();
    else if (key === "Backspace") this.enter(place, 0, "");
    else if (key === "Escape" && this.choice.isBlock) this.choice.drop();
    else if (key.length === 1 && key !== " ") this.enter(place, 1, key);
    else return;
    event.preventDefault();
  }

  /** Arrow keys go from entry to entry, up to the head and out to the numbers; with Shift they choose a block. */
  private walk(event: KeyboardEvent, place: Place): boolean {
    const { key, shiftKey, ctrlKey, metaKey, altKey } = event;
    const to = ctrlKey || metaKey || altKey ? null : this.target(key, place);
    if (!to) return false;
    event.preventDefault();
    if (shiftKey) this.choice.extend(to);
    else this.choice.focus(to);
    return true;
  }

  private target(key: string, place: Place): Place | null {
    return placeByKey(key, place, { row: this.cell.rows.length - 1, column: this.cell.columns.length - 1 });
  }

  private readonly type = (text: string): void => {
    const { row, column } = this.choice.place;
    const { name = "", text: isText } = this.cell.columns[column] ?? {};
    this.held = isText ? null : heldBack(this.desk, this.cell.id, text, this.edit(text), { row, column: name });
    if (this.held === null) this.set(text);
    this.requestUpdate();
  };

  private readonly leave = (by: Leaving, text: string): void => {
    if (!this.close(by === "escape" ? this.textBefore : text) || by === "away") return;
    const { row, column } = this.choice.place;
    this.choice.focus(
      by === "enter" ? (this.target("ArrowDown", { row, column }) ?? { row, column }) : { row, column },
    );
  };

  private readonly step = (direction: -1 | 1, text: string): boolean => {
    const to = this.target(direction < 0 ? "ArrowUp" : "ArrowDown", this.choice.place);
    if (!to || to.row < 0 || !this.close(text)) return false;
    this.choice.focus(to);
    return true;
  };

  /** Tab goes to the next entry, row by row; past the last, or before the first, it leaves the table. */
  private readonly tab = (direction: -1 | 1, text: string): boolean => {
    const width = this.cell.columns.length;
    const next = this.choice.place.row * width + this.choice.place.column + direction;
    if (next < 0 || next >= width * this.cell.rows.length || !this.close(text)) return false;
    this.choice.focus({ row: Math.floor(next / width), column: next % width });
    return true;
  };

  /** Ends entering with a text; false where it has ended already. */
  private close(text: string): boolean {
    if (this.entered !== "entry") return false;
    this.set(text);
    this.desk.session.endGesture();
    this.desk.drafts.hold(null);
    [this.held, this.entered] = [null, null];
    return true;
  }

  private set(text: string): void {
    const { row, column } = this.choice.place;
    this.desk.session.edit(this.edit(text), `type ${this.cell.id} ${row} ${column}`);
  }

  private edit(text: string): (notebook: Notebook) => Notebook {
    const { row, column } = this.choice.place;
    return (notebook) => setEntry(notebook, this.cell.id, row, column, text);
  }

  private textOf({ row, column }: Place): string {
    return this.cell.rows[row]?.[column] ?? "";
  }
}
