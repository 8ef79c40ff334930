import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import type { PinnedCell } from "../cells/index.ts";
import { moveTo, sheetItems } from "./board-actions.ts";
import { errorLine } from "./cell-view.ts";
import type { Desk } from "./desk.ts";
import { canvasMeasure, estimateWidth, type Measure } from "./drawings/text-size.ts";
import { exportItem } from "./export-item.ts";
import type { Figure, FigureContext, Made } from "./figure.ts";
import { figureTitle, showsOf } from "./figure-words.ts";
import { makeFigure } from "./figures.ts";
import { type MenuItem, openMenu } from "./menu.ts";
import { paperWidth } from "./paper-width.ts";
import { dragSheet } from "./sheet-drag.ts";
import { slowSweepOf } from "./slow-sweep.ts";
import { watchStudy } from "./study-watch.ts";
import { words } from "./words.ts";

/** A sheet on the board: its title, what it shows, and the figure, which follows every change in place. */
export class Sheet extends LitElement {
  static override properties = {
    desk: { attribute: false },
    cell: { attribute: false },
    problem: { state: true },
  };
  declare desk: Desk;
  declare cell: PinnedCell;
  /** Why there is no figure; null where there is one. */
  declare private problem: string | null;

  /** How it stood when it was drawn last around its figure. */
  private state = "";
  private figure: Figure | null = null;
  /** What draws the figure is loaded. */
  private isComing = false;
  /** Something moved while it was. */
  private isMissed = false;
  private width = 0;
  private measure: Measure = estimateWidth;
  private stops: (() => void)[] = [];
  private unwatch: (() => void) | null = null;
  /** Off the screen; it then follows only once nothing moves any more. */
  private isAway = false;
  private readonly narrow = matchMedia("screen and (max-width: 899px)");

  constructor() {
    super();
    this.problem = null;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.tabIndex = -1;
    const { session, baseline, ghosts } = this.desk;
    const draw = (): void => this.draw();
    const follow = (): void => (this.isAway ? this.desk.idle.add(draw) : draw());
    const nearness = new IntersectionObserver(
      ([entry]) => {
        const wasAway = this.isAway;
        this.isAway = entry?.isIntersecting === false;
        this.look(!this.isAway);
        if (wasAway && !this.isAway) draw();
      },
      { rootMargin: "150px" },
    );
    nearness.observe(this);
    // Who prints wants it: it is begun, for the next print at the latest.
    const begin = (): void => this.look(true);
    window.addEventListener("beforeprint", begin);
    const sizes = new ResizeObserver(([entry]) => {
      // On paper a figure is drawn for the width of the paper.
      const most = matchMedia("print").matches ? paperWidth : Number.POSITIVE_INFINITY;
      const width = Math.min(most, Math.floor(entry?.contentRect.width ?? 0));
      if (width === this.width || width === 0) return;
      this.width = width;
      this.draw();
    });
    this.updateComplete.then(() => sizes.observe(this.place));
    document.fonts.ready.then(() => {
      this.measure = canvasMeasure(document, getComputedStyle(this).fontFamily);
      this.draw();
    });
    this.stops = [
      session.onSettled(follow),
      baseline.onCapture(follow),
      ghosts.onChange(follow),
      () => sizes.disconnect(),
      () => nearness.disconnect(),
      () => window.removeEventListener("beforeprint", begin),
      () => this.look(false),
    ];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const stop of this.stops) stop();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("cell")) this.id = sheetElementId(this.cell.id);
    this.state = this.stateNow;
  }

  protected override updated(changed: PropertyValues): void {
    if (!changed.has("cell")) return;
    const before = changed.get("cell") as PinnedCell | undefined;
    if (before && drawnAs(before) !== drawnAs(this.cell)) this.clear();
    this.draw();
  }

  protected override render(): TemplateResult {
    const { desk, cell } = this;
    const result = desk.session.result(cell.id);
    const error = result && !result.ok ? result.error : null;
    const isPending = desk.session.isPending(cell.id) || this.isSwept;
    // What a question hides says so first, computed or not.
    const isFirst = isPending && !result && !desk.session.concealed.has(cell.id);
    return html`<div class="sheet${this.problem !== null || error ? " halted" : ""}${isPending ? " busy" : ""}" aria-busy=${isPending ? "true" : "false"}>
      <header @pointerdown=${this.press}><h2>${figureTitle(cell)}</h2> <p>${showsOf(cell)}</p>
        <button type="button" class="more" aria-haspopup="menu" aria-label=${words.more(words.sheetOf(figureTitle(cell)))}
          @click=${this.openMenu}><span aria-hidden="true">⋯</span></button></header>
      <div class="problem">${error ? errorLine(error) : isFirst ? html`<p class="hint">${pendingLine}</p>` : this.problem === null ? nothing : html`<p>${this.problem === words.pending ? pendingLine : this.problem}</p>`}</div>
      <div class="figure-place"></div>
    </div>`;
  }

  /** A chart whose sweep is slow has it studied while it is looked at. */
  private look(looks: boolean): void {
    if (looks === (this.unwatch !== null)) return;
    this.unwatch?.();
    this.unwatch = null;
    const { desk, cell } = this;
    if (looks && cell.kind === "study") this.unwatch = watchStudy(desk, cell.id, () => this.draw());
    if (looks && cell.kind === "chart") {
      this.unwatch = desk.studies.watch(
        cell.id,
        (program) => slowSweepOf(program, cell.id),
        () => this.draw(),
      );
    }
  }

  /** True while the curve of a chart is that of before, or not there as a whole. */
  private get isSwept(): boolean {
    const status = this.desk.studies.news(this.cell.id)?.status;
    return status === "waiting" || status === "running";
  }

  /** All that is drawn around the figure and follows results. */
  private get stateNow(): string {
    const { session } = this.desk;
    const result = session.result(this.cell.id);
    return JSON.stringify([
      session.isPending(this.cell.id) || this.isSwept,
      result === undefined,
      result?.ok === false && result.error,
    ]);
  }

  private readonly openMenu = (event: Event): void => {
    const anchor = event.currentTarget as HTMLElement;
    openMenu(
      anchor,
      words.more(words.sheetOf(figureTitle(this.cell))),
      sheetItems(this.desk, anchor, this.cell, this.exportItems(anchor)),
    );
  };

  /** A figure that is there can be copied or saved. */
  private exportItems(anchor: HTMLElement): MenuItem[] {
    const { desk, cell, figure } = this;
    if (!figure?.picture) return [];
    const { picture, numbers } = figure;
    return [exportItem(anchor, { desk, element: picture, title: figureTitle(cell), shows: showsOf(cell), numbers })];
  }

  private readonly press = (event: PointerEvent): void => {
    if (event.target instanceof Element && event.target.closest("button")) return;
    dragSheet(event, this, (index) => moveTo(this.desk, this.cell, index));
  };

  private get place(): HTMLElement {
    return this.querySelector(".figure-place") as HTMLElement;
  }

  /** Draws what the figure shows now, or why it shows nothing. */
  draw(): void {
    if (!this.hasUpdated || this.width === 0) return;
    const { desk, cell, width, measure } = this;
    const hidden = desk.session.concealed.get(cell.id);
    if (hidden !== undefined) {
      this.problem = words.hiddenFigure(desk.session.program.byId.get(hidden)?.name ?? "");
      this.clear();
      return;
    }
    const result = desk.session.result(cell.id);
    if (!result?.ok) {
      // What was drawn last stays, dimmed, so that the board keeps its place while a formula is typed.
      this.requestUpdate();
      return;
    }
    const context = { desk, cell, result, width, height: this.room(), measure };
    try {
      this.problem = this.figure ? this.figure.draw(context) : this.make(context);
    } catch (error) {
      console.error(error);
      this.problem = words.cannotDraw;
    }
    if (this.problem !== null) this.clear();
    if (this.state !== this.stateNow) this.requestUpdate();
  }

  /** On a narrow screen the board is a strip above the page. */
  private room(): number | null {
    return this.narrow.matches ? Math.round(window.innerHeight * 0.34) - 80 : null;
  }

  private make(context: FigureContext): string | null {
    // Until it is there, what was said stays.
    if (this.isComing) {
      this.isMissed = true;
      return this.problem;
    }
    const made = makeFigure(context);
    if (!(made instanceof Promise)) return this.put(made);
    void this.putLater(made, drawnAs(context.cell));
    return this.problem;
  }

  /** Where it shows something else by then, that is made instead. */
  private async putLater(coming: Promise<Made>, view: string): Promise<void> {
    this.isComing = true;
    try {
      const made = await coming;
      if (this.isConnected && drawnAs(this.cell) === view) this.problem = this.put(made);
    } catch (error) {
      console.error(error);
      this.problem = words.cannotDraw;
      return;
    } finally {
      this.isComing = false;
    }
    const moved = this.isMissed || drawnAs(this.cell) !== view;
    this.isMissed = false;
    // What could not be drawn is not tried again before something moves.
    if (this.figure || moved) this.draw();
  }

  private put(made: Made): string | null {
    if (typeof made === "string") return made;
    this.figure = made;
    this.place.replaceChildren(made.element);
    return null;
  }

  private clear(): void {
    this.figure = null;
    this.place.replaceChildren();
  }
}

/** What makes its figure: cells of one sort are drawn in place of each other. */
const drawnAs = (cell: PinnedCell): string => (cell.kind === "study" ? cell.kind : cell.view);

export const sheetElementId = (cell: string): string => `sheet-${cell}`;

/** On paper nothing comes any more: what to do is said there. */
const pendingLine = html`<span class="on-screen">${words.pending}</span><span class="on-paper" aria-hidden="true">${words.notComputedYet}</span>`;
