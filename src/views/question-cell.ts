import { html, nothing, type TemplateResult } from "lit";
import type { QuestionCell } from "../cells/index.ts";
import { CellView, errorLine } from "./cell-view.ts";
import { words } from "./words.ts";

/** A prediction that is asked for. */
export class QuestionCellView extends CellView<QuestionCell> {
  override get groupName(): string {
    return words.question(this.cell.about);
  }

  override renderCell(): TemplateResult {
    const { result } = this;
    const { prompt, answer, because } = this.cell;
    return html`<div class="margin"></div>
      <div class="body free">
        <div class="asked">
          <p><strong>${prompt}</strong></p>
          ${answer === null ? nothing : html`<p>${answer}</p>`}
          ${because === "" ? nothing : html`<p class="why">${because}</p>`}
        </div>
        <div class="messages">${result && !result.ok ? errorLine(result.error) : nothing}</div>
      </div>`;
  }
}
