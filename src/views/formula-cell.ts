import { html, nothing, type TemplateResult } from "lit";
import {
  type CheckCell,
  type DerivedCell,
  editCell,
  type GivenCell,
  type Notebook,
  readSignature,
  turnInto,
} from "../cells/index.ts";
import { busyNote, errorLine, hiddenValue, noValue } from "./cell-view.ts";
import { checkValue } from "./check-value.ts";
import type { Caret, Fault, Leaving } from "./entering.ts";
import { jointOf } from "./format.ts";
import { characterAt } from "./formula-entry.ts";
import { formulaLine, markOf } from "./formula-line.ts";
import { heldBack } from "./held-text.ts";
import { isTable } from "./is-table.ts";
import { formulaAt, positionOf, type Track, trackOf, writtenPosition } from "./literal.ts";
import type { MenuItem } from "./menu.ts";
import { ReasonedCell } from "./reasoned-cell.ts";
import { slider } from "./slider.ts";
import { passesLine, renderMoved, trialLine, trialWarning } from "./trial-line.ts";
import { changeText, leadAndRest, movedText } from "./value-text.ts";
import { words } from "./words.ts";

/** Tables of records load with the first that is opened. */
const loadTables = () => import("./record-tables.ts");

/** From so many letters on a formula has no room for words beside it, on a narrow page and on any. */
const longFormula = { narrow: 22, wide: 64 } as const;

/** A given, derived or check: name in the margin, formula on the line, value at its right end, reason below. */
export class FormulaCell extends ReasonedCell<GivenCell | DerivedCell | CheckCell> {
  private formulaBefore = "";
  private caret: Caret = "all";
  /** What is wrong with the text in the editor; until that is mended, or the editor left, the notebook keeps what it had. */
  private held: Fault | null = null;
  private isUnfolded = false;
  private tables: Awaited<ReturnType<typeof loadTables>> | null = null;
  private dragged: { readonly track: Track; readonly position: number } | null = null;

  override renderCell(): TemplateResult {
    const { result, cell } = this;
    const error = result && !result.ok ? result.error : undefined;
    return html`${this.renderName()}
      <div class=${this.lineClass}>
        ${this.renderFormula()}
        <div class="value-place">
          ${cell.kind === "check" ? html`${this.renderValue()} ${this.renderVerdictChange()}` : html`${this.renderChange()} ${this.renderValue()}`}
        </div>
        ${this.renderSlider()}
        <div class="messages" aria-live=${this.entered === "formula" ? "polite" : "off"}>
          ${this.held ? errorLine({ code: "syntax", message: this.held.message, root: "" }) : error ? errorLine(error) : nothing}
        </div>
        ${cell.kind === "check" && this.concealing === undefined ? passesLine(this.desk, cell.id) : nothing}
        ${cell.kind === "given" ? trialLine(this.desk, cell) : this.entered === "formula" ? trialWarning(this.desk) : nothing}
        ${this.renderReason()}
        ${this.renderTables()}
      </div>
      ${this.renderTools()}`;
  }

  /** How formula and value share their line: words that a long formula would be squeezed by stand below it. */
  private get lineClass(): string {
    const { cell, result } = this;
    if (cell.kind === "check") return result?.ok && this.concealing === undefined ? "body line judged" : "body line";
    const shape = this.desk.session.program.byId.get(cell.id)?.shape;
    const { length } = this.entered === "formula" ? this.formulaBefore : cell.formula;
    if (!shape || shape.kind === "number" || length < longFormula.narrow) return "body line";
    return `body line ${length < longFormula.wide ? "longish" : "long"}`;
  }

  /** What stands in the tables of a record, such as steps of work, under its one line, for whoever opens it. */
  private renderTables(): TemplateResult | typeof nothing {
    const { result } = this;
    if (this.cell.kind !== "derived" || this.concealing !== undefined || !result?.ok) return nothing;
    if (result.shape.kind !== "record" || !Object.values(result.shape.fields).some(isTable)) return nothing;
    const toggle = (event: Event): void => {
      this.isUnfolded = (event.currentTarget as HTMLDetailsElement).open;
      this.requestUpdate();
    };
    if (this.isUnfolded && !this.tables) {
      void loadTables().then((tables) => {
        this.tables = tables;
        this.requestUpdate();
      });
    }
    const { tables } = this;
    return html`<details class="study-numbers record-tables" @toggle=${toggle}><summary>${words.allOfIt}<span class="unseen"> ${this.bareName}</span></summary>
      ${this.isUnfolded && tables ? html`<div class="tables">${tables.numbersTables(tables.tablesOfRecord(result))}</div>` : nothing}</details>`;
  }

  protected override get ownItems(): MenuItem[] {
    const { cell, desk } = this;
    if (cell.kind === "check" || readSignature(cell.name).parameters) return super.ownItems;
    const kind = cell.kind === "given" ? "derived" : "given";
    // Only what names no cell can be a given.
    const canTurn = kind === "derived" || desk.session.program.byId.get(cell.id)?.reading.names.length === 0;
    const act = (): void => desk.session.edit((notebook) => turnInto(notebook, cell.id, kind));
    return [...super.ownItems, ...(canTurn ? [{ label: words.turnInto[kind], act }] : [])];
  }

  private renderFormula(): TemplateResult {
    const { formula } = this.cell;
    const fault = this.held ?? this.fault;
    if (this.entered === "formula") {
      return html`<spanwise-formula-entry class="formula" .label=${words.formulaOf(this.bareName)} .text=${this.formulaBefore}
        .caret=${this.caret} .fault=${fault} .scope=${this.scope} .onText=${this.type} .onLeave=${this.leave}
      ></spanwise-formula-entry>`;
    }
    // What stands in a given is its value.
    if (this.cell.kind === "given" && this.concealing !== undefined) return html`<div class="formula-place"></div>`;
    return html`<div class="covered formula-place">
      ${formulaLine(formula, fault?.at ?? null, fault?.waits ?? false)}
      <button type="button" class="cover formula-button" aria-label=${words.editFormula(this.bareName)}
        @click=${this.enter}></button>
    </div>`;
  }

  private renderValue(): TemplateResult {
    const { result, cell, isPending } = this;
    const { parameters } = readSignature(cell.name);
    const stale = this.held !== null || (result === undefined && !parameters);
    return html`<output class="value${stale ? " stale" : ""}${isPending ? " busy" : ""}" aria-label=${words.valueOf(this.bareName)}
      aria-live="off" aria-busy=${isPending ? "true" : "false"}>${this.valueContent(parameters)}${busyNote(isPending && result !== undefined)}</output>`;
  }

  private valueContent(parameters: readonly string[] | null): TemplateResult | string {
    const { result, cell } = this;
    const { concealing } = this;
    if (concealing !== undefined && (!result || result.ok)) return hiddenValue(this.desk, concealing);
    if (result === undefined) return words.pending;
    if (!result.ok) return noValue(result.error.code === "waits");
    if (cell.kind === "check") return checkValue(result);
    if (parameters) return html`<span class="rest">${words.functionOf(parameters)}</span>`;
    const { number, unit } = leadAndRest(result, cell);
    return html`<span class="lead">${number}</span>${jointOf(unit)}<span class="rest">${unit}</span>`;
  }

  /** Stands before the value, so that nothing moves down when it appears. */
  private renderChange(): TemplateResult | typeof nothing {
    const { result, cell } = this;
    if (cell.kind === "check" || this.concealing !== undefined) return nothing;
    const before = this.desk.baseline.result(cell.id);
    if (this.desk.session.trial) return renderMoved(movedText(result, before, cell));
    const change = changeText(result, before, cell);
    if (change === null) return nothing;
    const { unit } = result?.ok ? leadAndRest(result, cell) : { unit: "" };
    return html`<p class="change"><span aria-hidden="true">${change}${cell.kind === "given" ? ` ${words.onBaseline}` : ""}</span>
      <span class="unseen">${words.changed(`${change} ${unit}`.trim())}</span></p>`;
  }

  private renderVerdictChange(): TemplateResult | typeof nothing {
    const { result } = this;
    const before = this.desk.baseline.result(this.cell.id);
    if (this.concealing !== undefined) return nothing;
    if (!result?.ok || !before?.ok || result.value === before.value) return nothing;
    return html`<p class="change">${before.value ? words.heldBefore : words.failedBefore}</p>`;
  }

  private renderSlider(): TemplateResult | typeof nothing {
    const { session, baseline } = this.desk;
    const { result } = this;
    const step = session.program.byId.get(this.cell.id);
    const track = trackOf(step);
    // A key may be pressed before the result of the one before is there, and the cell may be drawn before the notebook
    // has followed: the knob stands where it was set.
    const position = track && step?.cell.kind === "given" ? writtenPosition(track, step.cell.formula) : null;
    if (!track || position === null || !result?.ok || this.concealing !== undefined) return nothing;
    const before = baseline.result(this.cell.id);
    return slider({
      label: words.slide(this.bareName),
      track,
      position: this.dragged?.position ?? position,
      baseline: before?.ok ? positionOf(track, Number(before.value)) : null,
      onSlide: (position) => this.slide(track, position),
      onRelease: () => this.release(),
    });
  }

  /** The fault of the formula as the notebook has it. */
  private get fault(): Fault | null {
    const { result } = this;
    if (!result || result.ok) return null;
    const { error } = result;
    const at = markOf(error, this.cell.formula);
    return at && { at, message: error.message, waits: error.code === "waits" };
  }

  private get scope() {
    const { session } = this.desk;
    return {
      cell: this.cell.id,
      program: () => session.program,
      functions: session.functions,
      namesCells: this.cell.kind !== "given",
      unit: this.cell.kind === "check" ? null : (this.cell.unit ?? null),
    };
  }

  private readonly enter = (event: MouseEvent): void => {
    this.formulaBefore = this.cell.formula;
    this.caret = event.detail === 0 ? "all" : this.characterUnder(event);
    this.entered = "formula";
  };

  /** The button covers the formula: it steps aside for a moment, so that the place in the text can be found. */
  private characterUnder(event: MouseEvent): Caret {
    const button = event.currentTarget as HTMLElement;
    const formula = this.querySelector("code.formula");
    if (!formula || this.cell.formula === "") return "all";
    button.hidden = true;
    const caret = characterAt(formula, event);
    button.hidden = false;
    return caret;
  }

  private readonly type = (text: string): void => {
    this.held = heldBack(this.desk, this.cell.id, text, this.edit(text));
    if (this.held === null) this.setFormula(text);
    this.requestUpdate();
  };

  private readonly leave = (by: Leaving, text: string): void => {
    if (this.entered !== "formula") return;
    this.setFormula(by === "escape" ? this.formulaBefore : text);
    this.desk.session.endGesture();
    this.desk.drafts.hold(null);
    this.held = null;
    this.rest(by === "away" ? null : ".formula-button");
  };

  /** All that is typed from entering to leaving is one step to undo, and so is a drag. */
  private setFormula(formula: string, gesture: "type" | "slide" = "type"): void {
    this.desk.session.edit(this.edit(formula), `${gesture} ${this.cell.id}`);
  }

  private readonly edit =
    (formula: string) =>
    (notebook: Notebook): Notebook =>
      editCell(notebook, this.cell.id, { formula });

  /** The knob may move more often than the screen is drawn; the notebook follows once a frame. */
  private slide(track: Track, position: number): void {
    if (this.dragged === null) requestAnimationFrame(() => this.follow());
    this.dragged = { track, position };
  }

  private follow(): void {
    const { dragged } = this;
    this.dragged = null;
    if (dragged && this.isConnected) this.setFormula(formulaAt(dragged.track, dragged.position), "slide");
  }

  private release(): void {
    this.follow();
    this.desk.session.endGesture();
  }
}
