import { html, nothing, type TemplateResult } from "lit";
import { editCell, type QuestionCell } from "../cells/index.ts";
import { askFirst } from "./ask-first.ts";
import { joinBecause, splitBecause } from "./because.ts";
import { askedName, busyNote, CellView, detailsButton, errorLine, noValue } from "./cell-view.ts";
import { checkValue } from "./check-value.ts";
import type { Leaving } from "./entering.ts";
import type { MenuItem } from "./menu.ts";
import { focusTextEntry, textEntry } from "./text-entry.ts";
import { oneLine } from "./value-text.ts";
import { words } from "./words.ts";

/**
 * A prediction that is asked for. Until it is answered the cell asked about stays hidden; then prediction and value
 * stand side by side, and why they differ can be said. All of it is kept in the notebook.
 */
export class QuestionCellView extends CellView<QuestionCell> {
  private lacksAnswer = false;
  private becauseBefore = "";

  override get groupName(): string {
    return words.question(this.cell.about);
  }

  override renderCell(): TemplateResult {
    const { result } = this;
    const { prompt, answer, about } = this.cell;
    return html`<div class="margin"></div>
      <div class="body free">
        <div class="asked">
          <p><strong>${prompt.trim() || words.noPromptYet(about)}</strong></p>
          ${answer === null ? this.renderForm() : this.renderAnswered(answer)}
        </div>
        <div class="messages">${result && !result.ok ? errorLine(result.error) : nothing}</div>
      </div>
      <div class="tools">${this.entered ? nothing : detailsButton(words.editQuestion, () => this.enterDetails())}</div>`;
  }

  private renderForm(): TemplateResult {
    const { drafts } = this.desk;
    const draft = drafts.answer(this.cell.id);
    const write = (part: "answer" | "reason") => (event: Event) =>
      drafts.setAnswer(this.cell.id, {
        ...drafts.answer(this.cell.id),
        [part]: (event.target as HTMLTextAreaElement).value,
      });
    const key = (event: KeyboardEvent): void => {
      if (event.key !== "Enter" || !(event.ctrlKey || event.metaKey)) return;
      event.preventDefault();
      event.stopPropagation();
      this.keep();
    };
    return html`<div class="answering" @keydown=${key}>
      <label><span>${words.yourPrediction}</span>
        <textarea class="text-entry answer" rows="1" aria-invalid=${this.lacksAnswer ? "true" : "false"} .value=${draft.answer}
          @input=${write("answer")}></textarea></label>
      <p class="unfinished" role="status">${this.lacksAnswer ? words.predictFirst : ""}</p>
      <label><span>${words.because}</span>
        <textarea class="text-entry" rows="2" .value=${draft.reason}
          @input=${write("reason")}></textarea></label>
      <button type="button" class="keep" @click=${this.keep}>${words.keepAnswer}</button>
    </div>`;
  }

  private renderAnswered(answer: string): TemplateResult {
    const { reason, difference } = splitBecause(this.cell.because);
    return html`<dl class="answers">
        <div><dt>${words.predicted}</dt><dd>${answer}</dd></div>
        <div><dt>${words.itIs}</dt><dd><output class=${this.isPending ? "busy" : ""} aria-label=${words.valueOf(this.groupName)} aria-busy=${this.isPending ? "true" : "false"}>${this.askedValue()}${busyNote(this.isPending && this.result !== undefined)}</output></dd></div>
        ${reason === "" ? nothing : html`<div class="wide"><dt>${words.because}</dt><dd>${reason}</dd></div>`}
        ${difference === "" || this.entered === "difference" ? nothing : html`<div class="wide"><dt>${words.whyDifferent}</dt><dd>${difference}</dd></div>`}
      </dl>
      ${this.entered === "difference" ? this.renderDifference(difference) : html`<button type="button" class="quiet difference" @click=${this.enterDifference}>${words.sayWhyDifferent}</button>`}`;
  }

  private renderDifference(difference: string): TemplateResult {
    return textEntry({
      label: words.whyDifferent,
      text: difference,
      oneParagraph: false,
      onText: (text) => this.setDifference(text),
      onLeave: (by) => this.leaveDifference(by),
    });
  }

  /** The value asked about; another open question may hide it still. */
  private askedValue(): TemplateResult | string {
    const { session } = this.desk;
    const result = this.result?.parts?.[0] ?? this.result;
    const step = session.program.byName.get(askedName(this.cell.about));
    if (step && session.concealed.has(step.id)) return words.hiddenValue;
    if (!result) return words.pending;
    if (!result.ok) return noValue(result.error.code === "waits");
    const isWhole = step?.name === this.cell.about.trim();
    if (isWhole && step.cell.kind === "check") {
      const own = session.result(step.id);
      return own?.ok ? checkValue(own) : noValue(false);
    }
    const telling = isWhole && (step.cell.kind === "given" || step.cell.kind === "derived") ? step.cell : {};
    return html`<b>${oneLine(result, telling)}</b>`;
  }

  private readonly keep = async (): Promise<void> => {
    const { drafts } = this.desk;
    const draft = drafts.answer(this.cell.id);
    const answer = draft.answer.trim();
    this.lacksAnswer = answer === "";
    if (this.lacksAnswer) {
      this.requestUpdate();
      this.querySelector<HTMLElement>(".answer")?.focus();
      return;
    }
    const because = joinBecause({ reason: draft.reason, difference: "" });
    this.desk.session.edit((notebook) => editCell(notebook, this.cell.id, { answer, because }));
    drafts.setAnswer(this.cell.id, { answer: "", reason: "" });
    await this.updateComplete;
    await new Promise(requestAnimationFrame);
    this.querySelector<HTMLElement>(".difference")?.focus();
  };

  protected override get ownItems(): MenuItem[] {
    const answered = this.desk.session.notebook.cells.filter(
      (cell) => cell.kind === "question" && cell.answer !== null,
    );
    const again = { label: words.askAgain, act: () => void this.askAgain([this.cell.id]) };
    const all = { label: words.askAllAgain, act: () => void this.askAgain(answered.map(({ id }) => id)) };
    return [...super.ownItems, ...(this.cell.answer === null ? [] : [again]), ...(answered.length > 1 ? [all] : [])];
  }

  /** For a teacher: the questions stand open again. */
  private async askAgain(ids: readonly string[]): Promise<void> {
    const [heading, text, yes] =
      ids.length === 1
        ? [words.askAgainHeading, words.askAgainText, words.askAgain]
        : [words.askAllAgainHeading(ids.length), words.askAllAgainText, words.askAllAgain];
    if (!(await askFirst({ heading, text, yes }))) return;
    this.desk.session.edit((notebook) =>
      ids.reduce((now, id) => editCell(now, id, { answer: null, because: "" }), notebook),
    );
  }

  private readonly enterDifference = async (): Promise<void> => {
    this.becauseBefore = this.cell.because;
    this.entered = "difference";
    await this.updateComplete;
    focusTextEntry(this);
  };

  private setDifference(difference: string): void {
    const { reason } = splitBecause(this.cell.because);
    this.setBecause(difference === "" ? reason : `${reason}\n\n${difference}`);
  }

  private setBecause(because: string): void {
    this.desk.session.edit((notebook) => editCell(notebook, this.cell.id, { because }), `because ${this.cell.id}`);
  }

  private leaveDifference(by: Leaving): void {
    if (this.entered !== "difference") return;
    this.setBecause(by === "escape" ? this.becauseBefore : joinBecause(splitBecause(this.cell.because)));
    this.desk.session.endGesture();
    this.rest(by === "away" ? null : ".difference");
  }
}
