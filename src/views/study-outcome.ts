/** What a study comes to, as it stands in its cell or on the board: its chart, what can be done with a point, its numbers. */
import { html, nothing, render } from "lit";
import type { Outcome, SensitivityOutcome, StudyCell } from "../cells/index.ts";
import { bandOfResult } from "./charts/studies/sensitivity.ts";
import type { StudyOptions } from "./charts/studies/study-chart.ts";
import { studyTables } from "./charts/studies/study-tables.ts";
import { allowedBy } from "./check-limits.ts";
import type { Desk } from "./desk.ts";
import type { LiveDrawing } from "./drawings/sketch.ts";
import { canvasMeasure, estimateWidth, type Measure } from "./drawings/text-size.ts";
import { makeTrial, settingsOf, settingsText, takeValues } from "./new-trial.ts";
import { paperWidth } from "./paper-width.ts";
import type { ShownFigure } from "./shown-figure.ts";
import { liveStudyChart } from "./study-charts.ts";
import { numbersTables } from "./study-numbers.ts";
import { words } from "./study-words.ts";

/** What is shown, and how. */
export interface ShownStudy {
  readonly desk: Desk;
  readonly cell: StudyCell;
  readonly outcome: Outcome;
  /** It is that of before an edit. */
  readonly isOld: boolean;
  /** It is still being computed. */
  readonly isBusy: boolean;
  /** How far its results are known, where that is told. */
  readonly known?: SensitivityOutcome | null;
  /** How high it may be to stand on the screen as a whole, px; null where there is room. */
  readonly height?: number | null;
}

/** Draws outcomes one after the other in place; it keeps the point that was chosen and whether its numbers are open. */
export class StudyPicture {
  readonly element = document.createElement("div");
  private readonly place = document.createElement("div");
  private readonly below = document.createElement("div");
  private drawing: LiveDrawing<Outcome, StudyOptions> | null = null;
  private drawn: Outcome["study"] | null = null;
  private shown: ShownStudy | null = null;
  private chosen: readonly number[] | null = null;
  private isOpen = false;
  private width = 0;
  private measure: Measure = estimateWidth;

  constructor() {
    this.element.className = "study-picture";
    this.place.className = "figure-place";
    this.element.append(this.place, this.below);
    const sizes = new ResizeObserver(([entry]) => {
      const most = matchMedia("print").matches ? paperWidth : Number.POSITIVE_INFINITY;
      const width = Math.min(most, Math.floor(entry?.contentRect.width ?? 0));
      if (width === this.width || width === 0) return;
      this.width = width;
      this.draw();
    });
    sizes.observe(this.place);
    document.fonts.ready.then(() => {
      this.measure = canvasMeasure(document, getComputedStyle(document.body).fontFamily);
      this.draw();
    });
  }

  /** The chart as it stands, to copy or save it; null where none is drawn. */
  get figure(): Pick<ShownFigure, "element" | "numbers"> | null {
    const { drawing, shown } = this;
    return drawing && shown ? { element: drawing.element, numbers: { sort: "study", data: shown.outcome } } : null;
  }

  show(shown: ShownStudy): void {
    this.shown = shown;
    this.draw();
  }

  private draw(): void {
    const { shown, width, measure } = this;
    if (!shown || width === 0) return;
    const { desk, cell, outcome, isOld, isBusy, known = null, height = null } = shown;
    const results = "result" in outcome ? [outcome.result] : outcome.results;
    const options: StudyOptions = {
      title: cell.title,
      width,
      measure,
      chosen: this.chosen,
      allowed: allowedBy(
        desk.session.program,
        results.map(({ text }) => text.trim()),
      ),
      ...(known && { bands: results.map(({ text }) => bandOf(known, text)) }),
      onChoose: (inputs) => this.choose(inputs),
      ...(height !== null && { panelHeight: Math.max(56, height - 110) }),
    };
    this.element.classList.toggle("busy", isOld);
    this.element.ariaBusy = String(isBusy);
    try {
      if (this.drawing && this.drawn === outcome.study)
        this.drawing.update(outcome, options, (act) => desk.idle.add(act));
      else {
        this.drawing = liveStudyChart(outcome, options, { document });
        this.drawn = outcome.study;
        this.chosen = null;
        this.place.replaceChildren(this.drawing.element);
      }
    } catch (error) {
      console.error(error);
      this.drawing = null;
      this.place.replaceChildren(words.cannotDraw);
    }
    this.renderBelow(shown);
  }

  private choose(inputs: readonly number[]): void {
    this.chosen = inputs;
    this.draw();
    this.below.querySelector<HTMLElement>(".make-trial")?.scrollIntoView({ block: "nearest" });
  }

  private renderBelow({ desk, cell, outcome }: ShownStudy): void {
    const settings = this.chosen && settingsOf(outcome, this.chosen);
    const toggle = (event: Event): void => {
      this.isOpen = (event.currentTarget as HTMLDetailsElement).open;
      if (this.shown) this.renderBelow(this.shown);
    };
    render(
      html`<p class="study-chosen">${
        settings
          ? html`<span>${settingsText(settings)}</span>
            ${
              desk.session.readOnly
                ? nothing
                : html`<button type="button" class="make-trial" @click=${() => makeTrial(desk, settings)}>${words.makeTrial}</button>
                  <button type="button" class="make-trial" @click=${() => takeValues(desk, settings)}>${words.take}</button>`
            }`
          : nothing
      }</p>
      <details class="study-numbers" @toggle=${toggle}>
        <summary>${words.numbers}</summary>
        ${this.isOpen ? html`<div class="tables" tabindex="0" role="group" aria-label=${words.numbersOf(cell.name)}>${numbersTables(studyTables(outcome))}</div>` : nothing}
      </details>`,
      this.below,
    );
  }
}

function bandOf(known: SensitivityOutcome, text: string): number | null {
  const result = known.results.find((each) => each.text === text);
  return result ? bandOfResult(known, result) : null;
}
