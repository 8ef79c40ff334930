import { html, nothing, type TemplateResult } from "lit";
import type { StudyCell } from "../cells/index.ts";
import { CellView, errorLine } from "./cell-view.ts";

/** A study: what it is called and of which sort it is. */
export class StudyCellView extends CellView<StudyCell> {
  override get groupName(): string {
    return this.cell.name;
  }

  override renderCell(): TemplateResult {
    const { result } = this;
    const { name, study, title, reason } = this.cell;
    return html`<div class="margin">${name}</div>
      <div class="body free">
        <p><strong>${title ?? name}</strong> ${study}</p>
        ${reason ? html`<p class="reason">${reason}</p>` : nothing}
        <div class="messages">${result && !result.ok ? errorLine(result.error) : nothing}</div>
      </div>`;
  }
}
