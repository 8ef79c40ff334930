import { html, nothing, type TemplateResult } from "lit";
import type { ChartCell, DrawingCell } from "../cells/index.ts";
import { isOnBoard, pin, unpin } from "./board-actions.ts";
import { CellView, errorLine } from "./cell-view.ts";
import { figureTitle, showsOf } from "./figure-words.ts";
import type { MenuItem } from "./menu.ts";
import { words } from "./words.ts";

/** A drawing or chart as it stands on the page: one line that leads to its sheet on the board, or puts it there. */
export class FigureCellView extends CellView<DrawingCell | ChartCell> {
  private isPinned = false;
  private unfollow: () => void = () => undefined;

  override get groupName(): string {
    const { cell } = this;
    return cell.kind === "drawing" ? words.drawingOf(cell.of) : words.chart(figureTitle(cell));
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.unfollow = this.desk.session.onNotebook(() => {
      if (isOnBoard(this.desk, this.cell) !== this.isPinned) this.requestUpdate();
    });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.unfollow();
  }

  override renderCell(): TemplateResult {
    const { result, cell, desk } = this;
    this.isPinned = isOnBoard(desk, cell);
    const title = figureTitle(cell);
    const lead = this.isPinned ? words.showOnBoard : words.putOnBoard;
    return html`<div class="margin"></div>
      <div class="body">
        <button type="button" class="to-sheet" aria-label="${title} ${showsOf(cell)}, ${lead}" @click=${() => this.show()}>
          <strong>${title}</strong> <span>${showsOf(cell)}</span> <span class="lead-over" aria-hidden="true">${lead}</span>
          ${this.isPinned ? html`<span class="on-paper" aria-hidden="true">${words.drawnAfter}</span>` : nothing}
        </button>
        <div class="messages">${result && !result.ok ? errorLine(result.error) : nothing}</div>
      </div>`;
  }

  protected override get ownItems(): MenuItem[] {
    const { desk, cell } = this;
    return [
      ...super.ownItems,
      isOnBoard(desk, cell)
        ? { label: words.unpin, act: () => unpin(desk, cell) }
        : { label: words.pin, act: () => this.show() },
    ];
  }

  private show(): void {
    if (!isOnBoard(this.desk, this.cell)) pin(this.desk, this.cell);
    this.dispatchEvent(new CustomEvent("show-sheet", { detail: this.cell.id, bubbles: true }));
  }
}
