import { html, nothing, type TemplateResult } from "lit";
import type { DecisionCell } from "../cells/index.ts";
import { CellView, detailsButton } from "./cell-view.ts";
import { words } from "./words.ts";

/** What was chosen, why, what else was considered, and when to look again. */
export class DecisionCellView extends CellView<DecisionCell> {
  override get groupName(): string {
    return words.decision;
  }

  override renderCell(): TemplateResult {
    const { question, chosen, why, alternatives = [], revisit } = this.cell;
    return html`<div class="margin"></div>
      <div class="body free">
        <div class="decided" @dblclick=${() => this.enterDetails()}>
          <p class="question"><strong>${question || html`<span class="hint">${words.noQuestionYet}</span>`}</strong> ${chosen}</p>
          ${why ? html`<p class="decided-why">${why}</p>` : nothing}
          <dl>
            ${alternatives.map(({ option, why_not }) => html`<dt>${words.insteadOf}</dt><dd>${option}${why_not ? `: ${why_not}` : ""}</dd>`)}
            ${revisit ? html`<dt>${words.lookAgain}</dt><dd>${revisit}</dd>` : nothing}
          </dl>
        </div>
      </div>
      <div class="tools">${this.entered ? nothing : detailsButton(words.editDecision, () => this.enterDetails())}</div>`;
  }
}
