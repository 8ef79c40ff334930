import { html, nothing, type TemplateResult } from "lit";
import {
  type Column,
  insertRow,
  type Notebook,
  removeRow,
  setEntry,
  type TableCell,
  type Value,
} from "../cells/index.ts";
import { errorLine, hiddenValue } from "./cell-view.ts";
import type { Caret, Fault, Leaving } from "./entering.ts";
import { formatNumber } from "./format.ts";
import { formulaLine } from "./formula-line.ts";
import { heldBack } from "./held-text.ts";
import { ReasonedCell } from "./reasoned-cell.ts";
import { syntaxFault } from "./syntax-fault.ts";
import { oneLine } from "./value-text.ts";
import { words } from "./words.ts";

interface Place {
  readonly row: number;
  readonly column: number;
}

/**
 * A table, entered entry by entry. At rest its entries are one stop for the Tab key, and the arrow keys move between
 * them; Enter, F2 or typing enters one.
 */
export class TableCellView extends ReasonedCell<TableCell> {
  /** The entry that has or had the focus. */
  private place: Place = { row: 0, column: 0 };
  private textBefore = "";
  private textAtFirst = "";
  private caret: Caret = "all";
  private held: Fault | null = null;
  private readonly faults = new Map<string, Fault | null>();

  override renderCell(): TemplateResult {
    const { result, cell } = this;
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
          <table class="entries" aria-label=${this.bareName}>
            <thead>${this.renderHead()}</thead>
            <tbody>${cell.rows.map((row, index) => this.renderRow(row, index))}</tbody>
          </table>
        </div>
        <output class="unseen" aria-label=${words.valueOf(this.bareName)} aria-live="off">${result?.ok ? oneLine(result) : words.noValue}</output>
        <div class="messages" aria-live=${this.entered === "entry" ? "polite" : "off"}>
          ${this.held ? errorLine({ code: "syntax", message: this.held.message, root: "" }) : error ? errorLine(error) : nothing}
        </div>
        ${this.renderReason()}
      </div>
      ${this.renderTools(this.rowTools())}`;
  }

  private renderHead(): TemplateResult {
    return html`<tr>
      <td></td>
      ${this.cell.columns.map(
        ({ name, unit, text }) => html`<th scope="col" class=${text ? "text" : "number"}>${words.columnHead(name)}
          <span class="unit">${unit === undefined || unit === "1" ? "" : unit}</span></th>`,
      )}
    </tr>`;
  }

  private renderRow(entries: readonly string[], row: number): TemplateResult {
    return html`<tr>
      <th scope="row">${row + 1}</th>
      ${this.cell.columns.map((column, index) => this.renderEntry(column, entries[index] ?? "", { row, column: index }))}
    </tr>`;
  }

  private renderEntry(column: Column, text: string, place: Place): TemplateResult {
    const isHere = place.row === this.place.row && place.column === this.place.column;
    const fault = column.text ? null : (this.faultAt(place) ?? this.entryFault(text));
    const atRest =
      column.text || (isNumber(text) && !fault)
        ? html`<span class="plain">${text}</span>`
        : this.renderFormula(text, column, place.row, fault);
    if (isHere && this.entered === "entry") return this.renderEntered(column, place, atRest);
    return html`<td class="${column.text ? "text" : "number"}${fault && !fault.waits ? " wrong" : ""}">
      ${atRest}
      <button type="button" class="cover" data-place="${place.row}:${place.column}" tabindex=${isHere ? 0 : -1}
        aria-label=${words.editEntry(this.bareName, place.row + 1, column.name)} aria-description=${text}
        @click=${() => this.enter(place, "all")} @focus=${() => this.stand(place)}
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
    const value = fault ? null : this.computed(column, row);
    return html`${value === null ? nothing : html`<span class="computed">${value}</span>`}
      ${formulaLine(text, fault?.at ?? null, fault?.waits ?? false)}`;
  }

  private computed({ name, unit = "1" }: Column, row: number): string | null {
    const { result } = this;
    if (!result?.ok) return null;
    const value = (result.value as Readonly<Record<string, readonly Value[]>>)[name]?.[row];
    return typeof value === "number" ? formatNumber(value, unit).number : null;
  }

  /** What can be done with rows shows beside a table that has the focus. */
  private rowTools(): TemplateResult[] {
    const { rows } = this.cell;
    const { session } = this.desk;
    const { id } = this.cell;
    const row = Math.min(this.place.row, rows.length - 1);
    const add = (): void => {
      session.edit((notebook) => insertRow(notebook, id, row + 1));
      this.focusEntry({ row: row + 1, column: 0 });
    };
    const remove = (): void => {
      session.edit((notebook) => removeRow(notebook, id, row));
      this.focusEntry({ row: Math.max(0, Math.min(row, rows.length - 2)), column: this.place.column });
    };
    const tools = [html`<button type="button" class="quiet" @click=${add}>${words.addRow}</button>`];
    if (rows.length > 0) {
      tools.push(html`<button type="button" class="quiet" @click=${remove}>${words.removeRow(row + 1)}</button>`);
    }
    return tools;
  }

  private faultAt({ row, column }: Place): Fault | null {
    const { result, cell } = this;
    if (!result || result.ok) return null;
    const { place, at, message, code } = result.error;
    if (place?.row !== row || place.column !== cell.columns[column]?.name) return null;
    return { at, message, waits: code === "waits" };
  }

  /** What is wrong with an entry as a text; each text is looked at once. */
  private entryFault(text: string): Fault | null {
    if (isNumber(text)) return null;
    let fault = this.faults.get(text);
    if (fault === undefined) {
      if (this.faults.size > 5000) this.faults.clear();
      fault = syntaxFault(text);
      this.faults.set(text, fault);
    }
    return fault;
  }

  private scopeOf({ unit }: Column) {
    const { session, functions } = this.desk;
    const program = () => session.program;
    return { cell: this.cell.id, program, functions, namesCells: true, unit: unit ?? null };
  }

  private stand(place: Place): void {
    if (place.row === this.place.row && place.column === this.place.column) return;
    this.place = place;
    this.requestUpdate();
  }

  private async enter(place: Place, caret: Caret, first?: string): Promise<void> {
    this.place = place;
    this.textBefore = this.textOf(place);
    this.textAtFirst = first ?? this.textBefore;
    this.caret = caret;
    this.held = null;
    this.entered = "entry";
    if (first !== undefined) this.type(first);
  }

  private key(event: KeyboardEvent, place: Place): void {
    const { key, ctrlKey, metaKey, altKey } = event;
    if (ctrlKey || metaKey || altKey || event.isComposing) return;
    const to = this.target(key, place);
    if (to) this.focusEntry(to);
    else if (key === "F2") this.enter(place, Number.POSITIVE_INFINITY);
    else if (key === "Delete" || key === "Backspace") this.enter(place, 0, "");
    else if (key.length === 1 && key !== " ") this.enter(place, 1, key);
    else return;
    event.preventDefault();
  }

  private target(key: string, { row, column }: Place): Place | null {
    const [lastRow, lastColumn] = [this.cell.rows.length - 1, this.cell.columns.length - 1];
    switch (key) {
      case "ArrowUp":
        return { row: Math.max(0, row - 1), column };
      case "ArrowDown":
        return { row: Math.min(lastRow, row + 1), column };
      case "ArrowLeft":
        return { row, column: Math.max(0, column - 1) };
      case "ArrowRight":
        return { row, column: Math.min(lastColumn, column + 1) };
      case "Home":
        return { row, column: 0 };
      case "End":
        return { row, column: lastColumn };
      default:
        return null;
    }
  }

  private readonly type = (text: string): void => {
    const { row, column } = this.place;
    const { name = "", text: isText } = this.cell.columns[column] ?? {};
    this.held = isText ? null : heldBack(this.desk, this.cell.id, text, this.edit(text), { row, column: name });
    if (this.held === null) this.set(text);
    this.requestUpdate();
  };

  private readonly leave = (by: Leaving, text: string): void => {
    if (!this.close(by === "escape" ? this.textBefore : text) || by === "away") return;
    const { row, column } = this.place;
    this.focusEntry(by === "enter" ? (this.target("ArrowDown", { row, column }) ?? { row, column }) : { row, column });
  };

  private readonly step = (direction: -1 | 1, text: string): boolean => {
    const to = this.target(direction < 0 ? "ArrowUp" : "ArrowDown", this.place);
    if (!to || !this.close(text)) return false;
    this.focusEntry(to);
    return true;
  };

  /** Tab goes to the next entry, row by row; past the last, or before the first, it leaves the table. */
  private readonly tab = (direction: -1 | 1, text: string): boolean => {
    const width = this.cell.columns.length;
    const next = this.place.row * width + this.place.column + direction;
    if (next < 0 || next >= width * this.cell.rows.length || !this.close(text)) return false;
    this.focusEntry({ row: Math.floor(next / width), column: next % width });
    return true;
  };

  /** Ends entering with a text; false where it has ended already. */
  private close(text: string): boolean {
    if (this.entered !== "entry") return false;
    this.set(text);
    this.desk.session.endGesture();
    this.held = null;
    this.entered = null;
    return true;
  }

  private set(text: string): void {
    const { row, column } = this.place;
    this.desk.session.edit(this.edit(text), `type ${this.cell.id} ${row} ${column}`);
  }

  private edit(text: string): (notebook: Notebook) => Notebook {
    const { row, column } = this.place;
    return (notebook) => setEntry(notebook, this.cell.id, row, column, text);
  }

  private textOf({ row, column }: Place): string {
    return this.cell.rows[row]?.[column] ?? "";
  }

  private async focusEntry(place: Place): Promise<void> {
    this.place = place;
    this.requestUpdate();
    await this.updateComplete;
    this.querySelector<HTMLElement>(`[data-place="${place.row}:${place.column}"]`)?.focus();
  }
}

const isNumber = (text: string): boolean => /^-?(\d+\.?\d*|\.\d+)$/.test(text);
