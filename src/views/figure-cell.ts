import { html, nothing, type TemplateResult } from "lit";
import type { ChartCell, DrawingCell } from "../cells/index.ts";
import { CellView, errorLine } from "./cell-view.ts";
import { figureTitle, showsOf } from "./figure-words.ts";
import { words } from "./words.ts";

/** A drawing or chart as it stands on the page: one line that leads to its sheet on the board. */
export class FigureCellView extends CellView<DrawingCell | ChartCell> {
  override get groupName(): string {
    const { cell } = this;
    return cell.kind === "drawing" ? words.drawingOf(cell.of) : words.chart(figureTitle(cell));
  }

  override renderCell(): TemplateResult {
    const { result, cell } = this;
    const title = figureTitle(cell);
    const show = (): void => {
      this.dispatchEvent(new CustomEvent("show-sheet", { detail: cell.id, bubbles: true }));
    };
    return html`<div class="margin"></div>
      <div class="body">
        <button type="button" class="to-sheet" aria-label="${title} ${showsOf(cell)}, ${words.showOnBoard}" @click=${show}>
          <strong>${title}</strong> <span>${showsOf(cell)}</span> <span class="lead-over" aria-hidden="true">${words.showOnBoard}</span>
        </button>
        <div class="messages">${result && !result.ok ? errorLine(result.error) : nothing}</div>
      </div>`;
  }
}
