import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import { type Explanation, explain, type Subject } from "../../cells/index.ts";
import { busyNote, errorLine, hiddenValue, noValue } from "../cell-view.ts";
import { checkValue } from "../check-value.ts";
import type { Desk } from "../desk.ts";
import { jointOf } from "../format.ts";
import { formulaLine } from "../formula-line.ts";
import { goTo } from "../go-to.ts";
import { leadAndRest } from "../value-text.ts";
import { words } from "../words.ts";
import { callsList } from "./calls.ts";
import { mathsElement } from "./maths.ts";
import { entriesTable, type Steps, stepsList } from "./steps.ts";
import { reasonOf, sameSubject, subjectKind, subjectTitle, tellingOf } from "./subject-words.ts";
import { workingOf } from "./working.ts";
import "../reference/function-sheet.css";
import "./why.css";

/**
 * Why a value is what it is, beside page and board: it follows every edit, and leads from cell to cell. It takes the focus
 * when something is asked; Escape, or its button, asks for its end by the event `end-why`.
 */
export class WhyPanel extends LitElement {
  static override properties = { desk: { attribute: false }, asked: { attribute: false } };
  declare desk: Desk;
  /** What was asked about on the page; another object for each time that it is asked. */
  declare asked: Subject;
  /** The way from what was asked to what is shown, which is its last. */
  private way: readonly Subject[] = [];
  private hasMoved = false;
  private stops: (() => void)[] = [];

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener("keydown", this.key);
    const update = (): void => this.requestUpdate();
    const { session } = this.desk;
    this.stops = [session.onSettled(update), session.onNotebook(update)];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener("keydown", this.key);
    for (const stop of this.stops) stop();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("asked")) this.move([this.asked]);
  }

  protected override updated(): void {
    if (!this.hasMoved) return;
    this.hasMoved = false;
    this.querySelector(".why-body")?.scrollTo(0, 0);
    this.querySelector<HTMLElement>("h2")?.focus();
  }

  protected override render(): TemplateResult | typeof nothing {
    const here = this.explained();
    if (!here) return nothing;
    const { subject, explanation } = here;
    const { step } = explanation;
    const title = subjectTitle(step, subject);
    const isPending = this.desk.session.isPending(step.id);
    return html`<section class="why" role="dialog" aria-labelledby="why-heading">
      <header>
        <h2 id="why-heading" tabindex="-1">${words.why.heading(title)} <span class="kind">${subjectKind(step, subject)}</span></h2>
        <output class="value${isPending ? " busy" : ""}" aria-label=${words.why.resultOf(title)} aria-live="off" aria-busy=${isPending ? "true" : "false"}>${this.renderValue(explanation)}</output>
        <button type="button" class="quiet" @click=${(event: Event) => goTo(event.currentTarget as HTMLElement, step.id)}>${words.why.onPage}</button>
        <button type="button" class="sign-button" aria-label=${words.why.close} title="${words.why.close} (Esc)" @click=${this.end}><span aria-hidden="true">✕</span></button>
      </header>
      ${this.renderWay()}
      <div class="why-body">${this.renderBody(explanation, subject)}</div>
    </section>`;
  }

  /** What is shown last on the way; what has been deleted meanwhile is left out of it. */
  private explained(): { readonly subject: Subject; readonly explanation: Explanation } | null {
    const { session } = this.desk;
    for (let length = this.way.length; length > 0; length--) {
      const subject = this.way[length - 1] as Subject;
      const explanation = explain(session.program, (id) => session.result(id), subject, session.concealed);
      if (!explanation) continue;
      this.way = this.way.slice(0, length);
      return { subject, explanation };
    }
    return null;
  }

  private renderWay(): TemplateResult | typeof nothing {
    if (this.way.length < 2) return nothing;
    const { program } = this.desk.session;
    return html`<nav class="way" aria-label=${words.why.trail}><ol>${this.way.map((subject, place) => {
      const step = program.byId.get(subject.id);
      const title = step ? subjectTitle(step, subject) : "";
      if (place === this.way.length - 1) return html`<li aria-current="step">${title}</li>`;
      return html`<li><button type="button" class="quiet" @click=${() => this.move(this.way.slice(0, place + 1))}>${title}</button></li>`;
    })}</ol></nav>`;
  }

  private renderValue({ step, result }: Explanation): TemplateResult | string {
    const hidden = this.desk.session.concealed.get(step.id);
    if (hidden !== undefined) return hiddenValue(this.desk, hidden);
    if (step.definition || step.name === null) return "";
    if (!result) return words.pending;
    if (!result.ok) return noValue(result.error.code === "waits");
    const busy = busyNote(this.desk.session.isPending(step.id));
    if (step.cell.kind === "check") return html`${checkValue(result)}${busy}`;
    const { number, unit } = leadAndRest(result, tellingOf(step.cell));
    return html`<span class="lead">${number}</span>${jointOf(unit)}<span class="rest">${unit}</span>${busy}`;
  }

  private renderBody(explanation: Explanation, subject: Subject): TemplateResult {
    const { step, result, takes, feeds, ground, origin } = explanation;
    const { session } = this.desk;
    const isHidden = session.concealed.has(step.id);
    const reason = reasonOf(step.cell);
    const deeper = ground.filter((each) => !takes.includes(each));
    const { takes: made, ground: rests, feeds: into } = words.why;
    return html`
      ${reason === undefined ? nothing : html`<p class=${reason === "" ? "hint" : "reason"}>${reason || words.why.noReason}</p>`}
      ${isHidden ? html`<p class="hint">${words.why.hidden}</p>` : this.renderWorking(explanation, subject)}
      ${step.definition ? html`<p class="hint">${words.why.isFunction(step.definition.parameters)}</p>` : nothing}
      ${result && !result.ok && !isHidden ? this.renderError(explanation) : nothing}
      ${origin && !isHidden ? stepsList(words.why.beganIn, [origin], this.steps) : nothing}
      ${!subject.entry && !isHidden ? entriesTable(step, result, this.steps) : nothing}
      ${takes.length > 0 ? stepsList(made, takes, this.steps) : nothing}
      ${isHidden ? nothing : callsList(explanation, this.desk.session.functions)}
      ${deeper.length > 0 ? stepsList(rests, deeper, this.steps) : nothing}
      ${feeds.length > 0 ? stepsList(into, feeds, this.steps) : step.name === null ? nothing : html`<h3>${into}</h3><p class="hint">${words.why.feedsNothing}</p>`}`;
  }

  private renderWorking(explanation: Explanation, subject: Subject): TemplateResult | typeof nothing {
    const { written } = explanation;
    if (!written) return nothing;
    const { program } = this.desk.session;
    const lines = workingOf(explanation, subject, (name) => {
      const cell = program.byName.get(name)?.cell;
      return cell ? tellingOf(cell) : {};
    });
    if (lines.length === 0) return html`<p class="working">${formulaLine(written.text, null, false)}</p>`;
    return html`<div class="working" role="group" tabindex="0" aria-label=${words.why.formula}>${lines.map((line) => mathsElement(line, document))}</div>`;
  }

  private renderError({ result }: Explanation): TemplateResult | typeof nothing {
    return result && !result.ok ? html`<div class="messages">${errorLine(result.error)}</div>` : nothing;
  }

  /** What lists of cells need to tell them and to lead to them. */
  private get steps(): Steps {
    return { desk: this.desk, step: (subject) => this.step(subject) };
  }

  private step(subject: Subject): void {
    const known = this.way.findIndex((each) => sameSubject(each, subject));
    this.move(known < 0 ? [...this.way, subject] : this.way.slice(0, known + 1));
  }

  private move(way: readonly Subject[]): void {
    this.way = way;
    this.hasMoved = true;
    this.requestUpdate();
  }

  private readonly key = (event: KeyboardEvent): void => {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.shiftKey) return;
    if (event.key === "Escape" && !event.altKey) this.end();
    else if (event.key === "Enter" && event.altKey) goTo(this, this.way.at(-1)?.id ?? this.asked.id);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  private readonly end = (): void => {
    this.dispatchEvent(new CustomEvent("end-why", { bubbles: true }));
  };
}
