import { html, nothing, type TemplateResult } from "lit";
import type { Outcome, StudyCell, StudyNews } from "../cells/index.ts";
import { isOnBoard, pin, unpin } from "./board-actions.ts";
import { CellView, errorLine, hiddenValue } from "./cell-view.ts";
import { exportItem } from "./export-item.ts";
import type { MenuItem } from "./menu.ts";
import { bandStudyId } from "./study-bands.ts";
import { watchStudy } from "./study-watch.ts";
import { words } from "./study-words.ts";
import { words as commonWords } from "./words.ts";

/** How an outcome is shown: a piece of its own, which comes with the first one. */
const loadOutcome = () => import("./study-outcome.ts");
type StudyPicture = InstanceType<Awaited<ReturnType<typeof loadOutcome>>["StudyPicture"]>;

/** A study: what it is called and of which sort it is, how it goes, and what it comes to as far as it is done. */
export class StudyCellView extends CellView<StudyCell> {
  private picture: StudyPicture | null = null;
  private isNear = false;
  private unwatch: (() => void) | null = null;

  override get groupName(): string {
    return this.cell.name;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.isNear = false;
    this.look();
  }

  /** It runs while it is looked at. */
  override set away(away: boolean) {
    super.away = away;
    this.isNear = !away;
    this.look();
  }

  override renderCell(): TemplateResult {
    const { result, concealing } = this;
    const { name, study, title, reason } = this.cell;
    const error = result && !result.ok ? result.error : null;
    this.look();
    const news = error ? undefined : this.desk.studies.news(this.cell.id);
    return html`<div class="margin"><span class="name">${name}</span></div>
      <div class="body free">
        <p><strong>${title ?? commonWords.studies[study]}</strong> ${title ? study : nothing}</p>
        ${reason ? html`<p class="reason">${reason}</p>` : nothing}
        ${concealing === undefined ? news && this.renderNews(news) : hiddenValue(this.desk, concealing)}
        <div class="messages">${error ? errorLine(error) : nothing}</div>
      </div>`;
  }

  protected override get ownItems(): MenuItem[] {
    const { desk, cell } = this;
    const anchor = this.querySelector<HTMLElement>(":scope > .more");
    const figure = this.concealing === undefined ? this.picture?.figure : null;
    const title = cell.title ?? commonWords.studies[cell.study];
    return [
      ...super.ownItems,
      isOnBoard(desk, cell)
        ? { label: commonWords.unpin, act: () => unpin(desk, cell) }
        : { label: commonWords.pin, act: () => this.show() },
      ...(anchor && figure ? [exportItem(anchor, { ...figure, desk, title, shows: cell.name })] : []),
    ];
  }

  private show(): void {
    pin(this.desk, this.cell);
    this.dispatchEvent(new CustomEvent("show-sheet", { detail: this.cell.id, bubbles: true }));
  }

  private renderNews(news: StudyNews): TemplateResult {
    const { status, progress, outcome, isOld, message } = news;
    const isUnderWay = status === "running" || status === "waiting";
    return html`<div class="study-state${isUnderWay || status === "stopped" || status === "long" || message ? "" : " at-rest"}">
        ${isUnderWay ? html`<progress max="1" .value=${progress} aria-label=${words.progress(this.cell.name)}></progress>` : nothing}
        <p role="status">${message ?? words.told(news)}</p>
        ${this.renderButton(status)}
      </div>
      ${outcome ? this.renderOutcome(outcome, isOld, isUnderWay) : nothing}`;
  }

  private renderOutcome(outcome: Outcome, isOld: boolean, isBusy: boolean): TemplateResult | typeof nothing {
    const { picture, desk, cell } = this;
    if (!picture) {
      void loadOutcome().then(({ StudyPicture }) => {
        this.picture ??= new StudyPicture();
        this.requestUpdate();
      });
      return nothing;
    }
    const known = desk.studies.news(bandStudyId(cell.id))?.outcome;
    picture.show({ desk, cell, outcome, isOld, isBusy, known: known?.study === "sensitivity" ? known : null });
    return html`<div role="group" aria-label=${words.outcome(cell.name)}>${picture.element}</div>`;
  }

  private renderButton(status: StudyNews["status"]): TemplateResult | typeof nothing {
    const { studies } = this.desk;
    const { id, name } = this.cell;
    if (status === "running") {
      return html`<button type="button" aria-label=${words.stopOf(name)} @click=${() => studies.stop(id)}>${words.stop}</button>`;
    }
    if (status !== "stopped" && status !== "long") return nothing;
    return html`<button type="button" aria-label=${words.runOf(name)} @click=${() => studies.run(id)}>${words.run}</button>`;
  }

  private look(): void {
    const wanted = this.isNear && this.concealing === undefined;
    if (wanted === (this.unwatch !== null)) return;
    this.unwatch?.();
    this.unwatch = null;
    if (!wanted) return;
    this.unwatch = watchStudy(this.desk, this.cell.id, () => this.requestUpdate());
  }
}
