import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import type { Cell, CellError, Result } from "../cells/index.ts";
import { commonItems, offerKinds } from "./cell-actions.ts";
import { detailsOf } from "./cell-details.ts";
import type { Desk } from "./desk.ts";
import { detailsForm } from "./details.ts";
import { goTo } from "./go-to.ts";
import { type MenuItem, openMenu } from "./menu.ts";
import { words } from "./words.ts";

/**
 * What every cell on the page has: a group with a name, drawn again on its own whenever its own result or text changes.
 * Drawn into the page itself, so that one style sheet and one order of focus hold everywhere.
 */
export abstract class CellView<C extends Cell> extends LitElement {
  static override properties = { desk: { attribute: false }, cell: { attribute: false }, entered: { state: true } };
  declare desk: Desk;
  declare cell: C;
  /** The part that is being entered, null at rest. */
  declare entered: string | null;

  /** Set by the page: the cell is first drawn when it comes near the screen, or when nothing else is to do. */
  isPatient = false;

  private stops: (() => void)[] = [];
  private isAway = false;

  constructor() {
    super();
    this.entered = null;
  }

  /** Told by the page: a cell far from the screen follows its results only once nothing moves any more. */
  set away(away: boolean) {
    if (!away) this.drawFirst();
    if (this.isAway && !away) this.requestUpdate();
    this.isAway = away;
  }

  /** Draws a cell that has been waiting to be drawn at all. */
  drawFirst(): void {
    this.isPatient = false;
    if (!this.hasUpdated && this.isConnected) this.performUpdate();
  }

  /** Drawn once for an edit and for what follows from it: the results are there within the same task. */
  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated && this.isPatient) return this.desk.idle.add(() => this.drawFirst());
    if (this.hasUpdated) await this.desk.session.settled();
    this.performUpdate();
  }

  /** The accessible name of the group. */
  abstract get groupName(): string;
  abstract renderCell(): TemplateResult;

  /** The latest result of this cell; undefined while it is computed for the first time. */
  get result(): Result | undefined {
    return this.desk.session.result(this.cell.id);
  }

  /** True while the result is that of before, or not there, because it is computed elsewhere. */
  protected get isPending(): boolean {
    return this.desk.session.isPending(this.cell.id);
  }

  /** The hidden cell that this one would give away, by id; undefined where it shows its value. */
  protected get concealing(): string | undefined {
    return this.desk.session.concealed.get(this.cell.id);
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.role = "group";
    this.classList.add("cell");
    // A cell can be gone to before it is drawn.
    this.id = cellElementId(this.cell.id);
    const now = (): void => this.requestUpdate();
    const update = (): void => (this.isAway ? this.desk.idle.add(now) : now());
    const { session, baseline } = this.desk;
    this.stops = [session.onResult(this.cell.id, update), baseline.onCapture(update)];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const stop of this.stops) stop();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has("cell") && !changed.has("entered")) return;
    const { groupName } = this;
    if (this.ariaLabel !== groupName) this.ariaLabel = groupName;
    this.classList.toggle("entered", this.entered !== null);
    this.classList.toggle("naming", this.entered === "name");
    // The stretch that it stands in is not left out then.
    const isOver = typeof changed.get("entered") === "string";
    if (this.entered !== null || isOver) this.parentElement?.classList.toggle("holds", this.entered !== null);
  }

  protected override render(): TemplateResult {
    return html`${this.renderCell()} ${this.entered === "details" ? this.renderDetails() : nothing}
      <button type="button" class="more" aria-haspopup="menu" aria-label=${words.more(this.groupName)}
        @click=${this.openMenu}><span aria-hidden="true">⋯</span></button>
      <button type="button" class="insert" tabindex="-1" aria-haspopup="menu" aria-label=${words.insertAfter(this.groupName)}
        @click=${() => this.offerInsert()}><span aria-hidden="true">+</span></button>`;
  }

  /** Begins to enter what is entered first in a new cell of this kind. */
  begin(): void {
    void this.enterDetails("afresh");
  }

  /** Gives the focus to the first thing that can be done with the cell. */
  focusFirst(): void {
    const first =
      this.querySelector<HTMLElement>(
        ".formula-button, .entries .cover[tabindex='0'], .note-button, .asked textarea, .details-button",
      ) ?? this.querySelector<HTMLElement>("button");
    first?.focus({ preventScroll: true });
  }

  /** Offers the kinds of cells to put in after this one; afterwards the focus is where it was. */
  offerInsert(): void {
    const button = this.querySelector<HTMLElement>(".insert");
    const back = this.contains(document.activeElement) ? (document.activeElement as HTMLElement) : null;
    if (button) offerKinds(this.desk, button, this.index + 1, back ?? button);
  }

  /** What the menu offers for cells of this kind only. */
  protected get ownItems(): MenuItem[] {
    return this.details.length > 0 ? [{ label: words.detailsItem, act: () => this.enterDetails() }] : [];
  }

  /** Asks why the value of the cell is what it is; a cell without one asks nothing. */
  askWhy(): void {}

  private get index(): number {
    return this.desk.session.notebook.cells.findIndex(({ id }) => id === this.cell.id);
  }

  private readonly openMenu = (event: Event): void => {
    const anchor = event.currentTarget as HTMLElement;
    const items = [...this.ownItems, ...commonItems(this.desk, anchor, this.cell, this.groupName)];
    openMenu(anchor, words.more(this.groupName), items);
  };

  /** What is entered in a form below the cell. */
  protected get details() {
    return detailsOf(this.desk, this.cell);
  }

  /** Afresh: what stands in the first field is a proposal, and typing takes its place. */
  protected async enterDetails(how: "as it is" | "afresh" = "as it is"): Promise<void> {
    this.entered = "details";
    await this.updateComplete;
    const first = this.querySelector<HTMLElement>(".details :is(input, select, textarea)");
    first?.focus();
    if (how === "afresh" && first instanceof HTMLInputElement) first.select();
  }

  private renderDetails(): TemplateResult {
    return detailsForm({
      label: words.detailsOf(this.groupName),
      details: this.details,
      onPause: () => this.desk.session.endGesture(),
      onDone: (calledOff) => this.leaveDetails(calledOff),
    });
  }

  protected leaveDetails(_calledOff: boolean): void {
    this.desk.session.endGesture();
    this.rest(".details-button, .more");
  }

  /** Ends entering and gives the focus back to the button that began it, unless it has gone elsewhere. */
  protected async rest(giveFocusTo: string | null): Promise<void> {
    this.entered = null;
    await this.updateComplete;
    if (giveFocusTo !== null) this.querySelector<HTMLElement>(giveFocusTo)?.focus();
  }
}

export const cellElementId = (id: string): string => `cell-${id}`;

/** What is wrong with a cell, in words; the cell it waits for is a link there. */
export function errorLine(error: Pick<CellError, "code" | "message" | "root">): TemplateResult {
  const { code, message, root } = error;
  if (code !== "waits") return html`<p class="fault"><span class="sign" aria-hidden="true">✕</span> ${message}</p>`;
  const at = message.lastIndexOf(root);
  const go = (event: Event): void => {
    event.preventDefault();
    goTo(event.currentTarget as HTMLElement, root);
  };
  return html`<p class="waits"><span class="sign" aria-hidden="true">…</span>
    ${message.slice(0, at)}<a href="#" @click=${go}>${root}</a>${message.slice(at + root.length)}</p>`;
}

/** The value place of a cell that a question hides: a way to the question. */
export function hiddenValue({ session }: Desk, hidden: string): TemplateResult {
  const question = session.notebook.cells.find(
    (cell) =>
      cell.kind === "question" &&
      cell.answer === null &&
      session.program.byName.get(askedName(cell.about))?.id === hidden,
  );
  const go = (event: Event): void => {
    event.preventDefault();
    if (question) goTo(event.currentTarget as HTMLElement, question.id);
  };
  return html`<span class="none"><span class="unseen">${words.hiddenValue}: </span><a href="#" @click=${go}>${words.hiddenBy}</a></span>`;
}

/** The cell that a question is about, whatever part of it. */
export const askedName = (about: string): string => /^\s*(\w+)/.exec(about)?.[1] ?? "";

/** The value place of a cell that has none. */
export const noValue = (waits: boolean): TemplateResult =>
  html`<span class="none"><span aria-hidden="true">—</span><span class="unseen">${waits ? words.waiting : words.noValue}</span></span>`;

/** Said, not shown, after a value that is computed anew; shown it is dimmed. */
export const busyNote = (isPending: boolean): TemplateResult | typeof nothing =>
  isPending ? html`<span class="unseen">, ${words.beingComputed}</span>` : nothing;

/** The button in the margin that begins to enter what a cell says. */
export const detailsButton = (label: string, enter: () => void): TemplateResult =>
  html`<button type="button" class="quiet details-button" @click=${enter}>${label}</button>`;
