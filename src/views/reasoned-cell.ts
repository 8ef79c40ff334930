import { html, type TemplateResult } from "lit";
import {
  type CheckCell,
  type DerivedCell,
  editCell,
  type GivenCell,
  readSignature,
  type TableCell,
} from "../cells/index.ts";
import { CellView } from "./cell-view.ts";
import type { Leaving } from "./entering.ts";
import { nameCodes } from "./formula-line.ts";
import { focusTextEntry, textEntry } from "./text-entry.ts";
import { words } from "./words.ts";

/** A cell with a name in the margin and a reason under it. */
export abstract class ReasonedCell<C extends GivenCell | DerivedCell | CheckCell | TableCell> extends CellView<C> {
  private reasonBefore: string | undefined;

  /** The bare name, by which the parts of this cell are named too. */
  get bareName(): string {
    return readSignature(this.cell.name).name || words.kinds.cell;
  }

  override get groupName(): string {
    return this.bareName;
  }

  protected renderName(): TemplateResult {
    const { result } = this;
    const isFaulty = result && !result.ok && nameCodes.has(result.error.code);
    return html`<div class="margin"><span class="name${isFaulty ? " faulty" : ""}">${this.cell.name}</span></div>`;
  }

  /** What can be done beside entering: it stands in the margin, and shows where the pointer or the focus is. */
  protected renderTools(tools: readonly TemplateResult[] = []): TemplateResult {
    const why = this.cell.reason === undefined && this.entered !== "reason" ? [this.renderAddReason()] : [];
    return html`<div class="tools">${[...tools, ...why]}</div>`;
  }

  protected renderReason(): TemplateResult | undefined {
    if (this.entered === "reason") {
      return textEntry({
        label: words.reasonOf(this.bareName),
        text: this.cell.reason ?? "",
        oneParagraph: true,
        onText: (text) => this.setReason(text),
        onLeave: (by) => this.leaveReason(by),
      });
    }
    const { reason } = this.cell;
    if (reason === undefined) return undefined;
    return html`<div class="reason covered">
      <span>${reason}</span>
      <button type="button" class="cover reason-button" aria-label=${words.editReason(this.bareName)}
        @click=${this.enterReason}></button>
    </div>`;
  }

  private renderAddReason(): TemplateResult {
    return html`<button type="button" class="quiet reason-button"
      aria-label="${words.addReason}: ${words.editReason(this.bareName)}" @click=${this.enterReason}>${words.addReason}</button>`;
  }

  private readonly enterReason = async (): Promise<void> => {
    this.reasonBefore = this.cell.reason;
    this.entered = "reason";
    await this.updateComplete;
    focusTextEntry(this);
  };

  private setReason(text: string | undefined): void {
    const reason = text?.trim() ? text : undefined;
    this.desk.session.edit((notebook) => editCell(notebook, this.cell.id, { reason }), `reason ${this.cell.id}`);
  }

  private leaveReason(by: Leaving): void {
    if (this.entered !== "reason") return;
    if (by === "escape") this.setReason(this.reasonBefore);
    this.desk.session.endGesture();
    this.rest(by === "away" ? null : ".reason-button");
  }
}
