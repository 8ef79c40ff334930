import { html, LitElement, nothing, type TemplateResult } from "lit";
import { type HistoryStep, setTitle } from "../cells/index.ts";
import type { Desk } from "./desk.ts";
import type { Keeping } from "./keeping/keeping.ts";
import { words as keepingWords } from "./keeping/words.ts";
import { loadTrials } from "./late-elements.ts";
import { stepWords } from "./step-words.ts";
import { applyTheme, keptTheme, type Theme, themes } from "./theme-choice.ts";
import { words } from "./words.ts";

/** The bar above page and board: title, whether it is saved, how many checks hold, colours, Open and Save. */
export class Bar extends LitElement {
  static override properties = {
    desk: { attribute: false },
    saving: { attribute: false },
    keeping: { attribute: false },
    entered: { state: true },
  };
  declare desk: Desk;
  /** What is told beside the title: saved, changed, or nothing. */
  declare saving: string;
  declare keeping: Keeping;
  declare entered: boolean;
  private titleBefore = "";
  private stops: (() => void)[] = [];
  /** Values are being computed elsewhere: since a moment ago, and for longer than a moment. */
  private lasting: number | undefined = undefined;
  private lasts = false;

  constructor() {
    super();
    this.entered = false;
    this.saving = "";
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const { session } = this.desk;
    const update = (): void => this.requestUpdate();
    void customElements.whenDefined("spanwise-trials").then(update);
    this.stops = [session.onNotebook(update), session.onSettled(update), this.keeping.onChange(update)];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const stop of this.stops) stop();
  }

  protected override updated(): void {
    // Where there are none, their bar comes once nothing else is to do.
    if (this.desk.session.own.trials.length > 0) void loadTrials();
  }

  /** Drawn once for an edit and for what follows from it. */
  protected override async scheduleUpdate(): Promise<void> {
    await this.desk.session.settled();
    this.performUpdate();
  }

  protected override render(): TemplateResult {
    return html`
      ${this.renderTitle()}
      ${this.renderKept()}
      <p class="saving" role="status">${this.saving}</p>
      <p class="computing" role="status">${this.renderPending()}</p>
      ${customElements.get("spanwise-trials") ? html`<spanwise-trials .desk=${this.desk}></spanwise-trials>` : nothing}
      ${this.renderChecks()}
      <div class="actions">
        ${this.renderHistory()}
        <select class="colours" aria-label=${words.colours} @change=${(event: Event) => applyTheme((event.target as HTMLSelectElement).value as Theme)}>
          ${themes.map((theme) => html`<option value=${theme} ?selected=${theme === keptTheme()}>${words.colourChoices[theme]}</option>`)}
        </select>
        <button type="button" class="sign-button list-button" title=${keepingWords.notebooksHint} aria-label=${keepingWords.notebooks} @click=${() => this.ask("list-notebooks")}
          ><svg viewBox="0 0 16 16" aria-hidden="true"><path d="M2.5 5.5V14.5H10.5 M5.5 1.5H13.5V11.5H5.5Z M8 4.5H11 M8 7.5H11"></path></svg><span>${keepingWords.notebooks}</span></button>
        <button type="button" title=${words.openHint} @click=${() => this.ask("open-notebook")}>${words.open}</button>
        <button type="button" title=${words.saveHint} @click=${() => this.ask("save-notebook")}>${words.save}</button>
      </div>`;
  }

  /** It stays in its place when there is nothing to tell, as the one that is read out is told of what is new in it. */
  private renderKept(): TemplateResult {
    const { isKept } = this.keeping;
    if (isKept === false) {
      return html`<p class="kept not" title=${keepingWords.notKeptHint}><span aria-hidden="true">✕</span> ${keepingWords.notKept}</p>`;
    }
    return html`<p class="kept" title=${keepingWords.keptHint}>${isKept ? keepingWords.kept : ""}</p>`;
  }

  private renderTitle(): TemplateResult {
    const { title } = this.desk.session.notebook;
    if (this.entered) {
      return html`<h1 class="title"><input class="title-entry" type="text" aria-label=${words.title} .value=${title}
        @input=${(event: Event) => this.setTitle((event.target as HTMLInputElement).value)}
        @keydown=${this.key} @blur=${() => this.leave(false)} /></h1>`;
    }
    return html`<h1 class="title covered"><span>${title.trim() || words.untitled}</span>
      <button type="button" class="cover title-button" aria-label=${words.editTitle} @click=${this.enter}></button></h1>`;
  }

  /** They stay where they are when there is nothing to undo, so that the focus is not lost. */
  private renderHistory(): TemplateResult {
    const { steps } = this.desk.session;
    return html`<button type="button" class="sign-button" title=${words.findKey} aria-label=${words.find}
        @click=${() => this.ask("find-cell")}><svg viewBox="0 0 16 16" aria-hidden="true"><circle cx="6.5" cy="6.5" r="4.5"></circle><path d="M10 10 14.5 14.5"></path></svg></button>
      ${this.renderReference()}
      ${this.renderStep("↶", words.undo, words.undoKey, steps.undo, "undo-step")}
      ${this.renderStep("↷", words.redo, words.redoKey, steps.redo, "redo-step")}`;
  }

  /** An open book. */
  private renderReference(): TemplateResult {
    const { open, openHint } = words.reference;
    return html`<button type="button" class="sign-button" title=${openHint} aria-label=${open} aria-haspopup="dialog"
      @click=${() => this.ask("open-reference")}><svg viewBox="0 0 16 16" aria-hidden="true"><path d="M8 4C6.5 2.7 4 2.3 1.5 2.500V12.5C4 12.3 6.5 12.7 8 14 9.5 12.7 12 12.3 14.5 12.5V2.500C12 2.3 9.5 2.7 8 4ZM8 4V14"></path></svg></button>`;
  }

  private renderStep(
    sign: string,
    label: (step: string) => string,
    key: string,
    step: HistoryStep | undefined,
    event: string,
  ): TemplateResult {
    const name = label(step ? stepWords(step) : "");
    return html`<button type="button" class="sign-button" title="${name} (${key})" aria-label=${name}
      aria-disabled=${step ? "false" : "true"} @click=${() => this.ask(event)}><span aria-hidden="true">${sign}</span></button>`;
  }

  /** Told only where it lasts, so that a drag is not accompanied by it. */
  private renderPending(): string {
    const count = this.desk.session.pendingCount;
    if (count === 0) {
      clearTimeout(this.lasting);
      this.lasting = undefined;
      this.lasts = false;
      return "";
    }
    this.lasting ??= window.setTimeout(() => {
      this.lasts = true;
      this.requestUpdate();
    }, 700);
    return this.lasts ? words.computing(count) : "";
  }

  private renderChecks(): TemplateResult | typeof nothing {
    const { session } = this.desk;
    const checks = session.notebook.cells.filter((cell) => cell.kind === "check");
    if (checks.length === 0) return nothing;
    // What a question hides is not known, and fails nobody.
    const results = checks.map(({ id }) => (session.concealed.has(id) ? undefined : session.result(id)));
    const held = results.filter((result) => result?.ok && result.value === true).length;
    const unknown = results.filter((result) => !result?.ok).length;
    const all = held === checks.length - checks.filter(({ id }) => session.concealed.has(id)).length;
    // While some are still computed, or all are hidden, and none has failed, neither sign would be true.
    const fails = results.some((result) => result && !(result.ok && result.value === true));
    const [look, sign] = fails ? ["fails", "✕"] : all && held > 0 ? ["holds", "✓"] : ["", "…"];
    return html`<p class="checks ${look}"><span aria-hidden="true">${sign}</span>
      ${words.checks(held, checks.length, unknown)}</p>`;
  }

  private readonly enter = async (): Promise<void> => {
    this.titleBefore = this.desk.session.notebook.title;
    this.entered = true;
    await this.updateComplete;
    this.querySelector<HTMLInputElement>(".title-entry")?.select();
  };

  private readonly key = (event: KeyboardEvent): void => {
    if (event.isComposing || (event.key !== "Enter" && event.key !== "Escape")) return;
    event.preventDefault();
    if (event.key === "Escape") this.setTitle(this.titleBefore);
    this.leave(true);
  };

  private async leave(keepFocus: boolean): Promise<void> {
    if (!this.entered) return;
    this.entered = false;
    this.desk.session.endGesture();
    await this.updateComplete;
    if (keepFocus) this.querySelector<HTMLElement>(".title-button")?.focus();
  }

  private setTitle(title: string): void {
    this.desk.session.edit((notebook) => setTitle(notebook, title), "title");
  }

  private ask(what: string): void {
    this.dispatchEvent(new CustomEvent(what, { bubbles: true }));
  }
}
