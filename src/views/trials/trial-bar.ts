import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import { changesSince, type Trial, withTrial } from "../../cells/index.ts";
import type { Desk } from "../desk.ts";
import { tell } from "../notice.ts";
import { Beside } from "./beside.ts";
import type { ComparisonPanel } from "./comparison-panel.ts";
import { settingsText } from "./settings-text.ts";
import { makeTrial, nameRefusal, openTrialMenu, renameIt } from "./trial-actions.ts";
import { words } from "./words.ts";

/** As many lines as can be told apart by their dashes. */
const mostLines = 3;

/** The trials as strips, of which one is on: the baseline, or a trial; each switches by a click, all by one key. */
export class TrialBar extends LitElement {
  static override properties = { desk: { attribute: false }, entered: { state: true }, refusal: { state: true } };
  declare desk: Desk;
  /** The trial whose name is entered, by its place. */
  declare entered: number | null;
  /** Why the name that is typed cannot be taken. */
  declare refusal: string | null;
  private stops: (() => void)[] = [];
  private panel: ComparisonPanel | null = null;
  /** Names of the trials that are drawn as thin lines, the last chosen last. */
  private lines: readonly string[] = [];
  private beside: { readonly of: Beside; readonly desk: Desk } | null = null;
  private looks: (() => void) | null = null;
  private drawn: readonly unknown[] = [];

  constructor() {
    super();
    this.entered = null;
    this.refusal = null;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.stops = [this.desk.session.onNotebook(() => this.follow())];
    window.addEventListener("keydown", this.key);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const stop of this.stops) stop();
    window.removeEventListener("keydown", this.key);
    this.panel?.remove();
    this.leave();
  }

  /** Drawn again where something of it changed, and after a pause where that is only what a drag sets. */
  private follow(): void {
    const { session } = this.desk;
    const now = [session.trialIndex, session.readOnly, ...session.own.trials.map(({ name }) => name)];
    if (now.length === this.drawn.length && now.every((each, index) => each === this.drawn[index])) {
      this.desk.idle.add(this.draw);
    } else this.requestUpdate();
    this.drawn = now;
  }

  private readonly draw = (): void => this.requestUpdate();

  protected override updated(changed: PropertyValues): void {
    if (changed.has("desk")) {
      this.leave();
      [this.entered, this.lines] = [null, []];
    }
    this.look();
    const isGone = this.desk.session.own.trials.length === 0;
    this.classList.toggle("some", !isGone);
    if (this.panel && (isGone || this.panel.desk !== this.desk)) this.endComparison();
    // Always to be seen, also where there are more than the screen has room for.
    const strip = this.querySelector("[aria-pressed=true]");
    (strip?.closest(".strip-place") ?? strip)?.scrollIntoView({ block: "nearest", inline: "nearest" });
  }

  protected override render(): TemplateResult {
    const { session } = this.desk;
    const { trials } = session.own;
    const strips = [html`${this.renderStrip(null, words.baseline, words.baselineHint)}`];
    return html`<div class="strips" role="group" aria-label=${words.trials}>
      ${trials.length === 0 ? nothing : [...strips, ...trials.map((trial, index) => this.renderTrial(trial, index))]}
      ${session.readOnly ? nothing : html`<button type="button" class="new-trial" title=${this.makeHint} @click=${this.make}><span aria-hidden="true">+</span> ${words.make}</button>`}
      ${trials.length === 0 ? nothing : html`<button type="button" class="new-trial compare" title=${words.compareHint} aria-expanded=${this.panel ? "true" : "false"} @click=${this.compare}>${words.compare}</button>`}
    </div>
    <p class="unseen" role="status">${this.said}</p>
    <p class="on-paper">${session.trial ? words.onPaper(session.trial.name, settingsText(session.trial.set)) : ""}</p>`;
  }

  private renderTrial(trial: Trial, index: number): TemplateResult {
    if (this.entered === index) return this.renderName(trial, index);
    const isOn = this.desk.session.trialIndex === index;
    return html`<span class="strip-place ${isOn ? "on" : "off"}">${this.renderStrip(index, trial.name, words.changes(settingsText(trial.set)))}
      ${
        isOn
          ? html`<button type="button" class="strip-more" aria-haspopup="menu" aria-label=${words.more(trial.name)}
              @click=${this.openMenu}><span aria-hidden="true">⋯</span></button>`
          : this.renderLine(trial.name)
      }</span>`;
  }

  /** Draws a trial that is not on as a thin line behind the one that is, or no longer. */
  private renderLine(name: string): TemplateResult {
    const place = this.lines.indexOf(name);
    return html`<button type="button" class="strip-line" aria-pressed=${place < 0 ? "false" : "true"} aria-label=${words.line(name)}
      title=${words.line(name)} @click=${() => this.chooseLine(name)}><svg viewBox="0 0 22 10" aria-hidden="true" class="drawing"
      ><path class="ghost ${place < 0 ? "" : `further-${place + 1}`}" d="M1 5H21"></path></svg></button>`;
  }

  private chooseLine(name: string): void {
    const others = this.lines.filter((each) => each !== name);
    this.lines = others.length < this.lines.length ? others : [...others, name].slice(-mostLines);
    this.requestUpdate();
    this.tellGhosts();
  }

  /** While a trial is on, any is drawn as a line, or all stand side by side, all are computed: checks tell which pass. */
  private look(): void {
    const { desk, lines } = this;
    const { session } = desk;
    const names = session.own.trials.map(({ name }) => name);
    if (lines.some((name) => !names.includes(name))) this.lines = lines.filter((name) => names.includes(name));
    const isWanted = session.trialIndex !== null || this.lines.length > 0 || this.panel !== null;
    if (!isWanted) {
      this.stopLooking();
      return;
    }
    if (this.looks) return;
    this.looks = this.besideOf(desk).watch((isOnScreen) => isOnScreen || this.tellGhosts());
    this.tellGhosts();
  }

  private besideOf(desk: Desk): Beside {
    this.beside ??= { of: new Beside(desk.session, desk.another), desk };
    return this.beside.of;
  }

  private stopLooking(): void {
    this.looks?.();
    this.looks = null;
    this.beside?.desk.ghosts.take([]);
  }

  /** Lets go of what was computed. */
  private leave(): void {
    this.stopLooking();
    this.beside?.of.dispose();
    this.beside = null;
  }

  /** The others, in the order in which their lines were chosen. */
  private tellGhosts(): void {
    if (!this.beside) return;
    const { of, desk } = this.beside;
    const { trialIndex } = desk.session;
    const others = of.columns.filter((_, place) => place !== (trialIndex ?? -1) + 1);
    const ghosts = others.map(({ trial, program, result }) => ({
      trial,
      program,
      result,
      isLine: trial !== null && this.lines.includes(trial),
    }));
    const order = (trial: string | null): number => (trial === null ? -1 : this.lines.indexOf(trial));
    desk.ghosts.take(ghosts.toSorted((a, b) => order(a.trial) - order(b.trial)));
  }

  private renderStrip(index: number | null, name: string, hint: string): TemplateResult {
    const isOn = this.desk.session.trialIndex === index;
    return html`<button type="button" class="strip${index === null ? " own" : ""}" aria-pressed=${isOn ? "true" : "false"}
      title="${hint} (${words.nextKey})" @click=${() => this.turnOn(index)}>${name}</button>`;
  }

  private renderName(trial: Trial, index: number): TemplateResult {
    return html`<span class="strip-place naming"><input class="strip-name" type="text" spellcheck="false"
      aria-label=${words.nameOf(trial.name)} aria-invalid=${this.refusal === null ? "false" : "true"} .value=${trial.name}
      @input=${(event: Event) => this.judge(index, (event.target as HTMLInputElement).value)}
      @keydown=${this.nameKey} @blur=${() => document.hasFocus() && this.leaveName(true)} />
      <span class="strip-fault" role="status">${this.refusal ?? ""}</span></span>`;
  }

  private get makeHint(): string {
    const { session, baseline } = this.desk;
    if (session.trial) return words.makeOfTrial(session.trial.name);
    const isMoved = Object.keys(changesSince(baseline.notebook, session.own)).length > 0;
    return isMoved ? words.makeOfChanges : words.makeEmpty;
  }

  /** What is said to those who do not see it: which trial is on, and what of it cannot be set. */
  private get said(): string {
    const { session } = this.desk;
    if (session.own.trials.length === 0) return "";
    return session.trial ? words.isOn(session.trial.name) : words.baselineIsOn;
  }

  /** Turns a trial on, or the baseline; tells what of it cannot be set. */
  private turnOn(index: number | null): void {
    const { session } = this.desk;
    session.turnOn(index);
    const fault = session.trial && withTrial(session.own, session.trial).faults[0];
    if (fault) tell(words.notSet(fault.message));
  }

  /** F8 goes to the next strip, with Shift to the one before, also while something is entered. */
  private readonly key = (event: KeyboardEvent): void => {
    if (event.key !== "F8" || event.ctrlKey || event.altKey || event.metaKey || document.querySelector("dialog[open]"))
      return;
    event.preventDefault();
    const { session } = this.desk;
    const count = session.own.trials.length + 1;
    const place = ((session.trialIndex ?? -1) + 1 + (event.shiftKey ? count - 1 : 1)) % count;
    if (count > 1) this.turnOn(place === 0 ? null : place - 1);
  };

  private readonly make = (): void => {
    void this.enterName(makeTrial(this.desk));
  };

  /** Shows all trials side by side below page and board, or no longer. */
  private readonly compare = async (): Promise<void> => {
    if (this.panel) return this.endComparison();
    const { ComparisonPanel } = await import("./comparison-panel.ts");
    if (!customElements.get("spanwise-comparison")) customElements.define("spanwise-comparison", ComparisonPanel);
    const panel = document.createElement("spanwise-comparison") as ComparisonPanel;
    panel.desk = this.desk;
    panel.beside = this.besideOf(this.desk);
    panel.onClose = () => this.endComparison();
    this.panel = panel;
    const app = this.closest("spanwise-app");
    app?.append(panel);
    app?.classList.add("comparing");
    this.requestUpdate();
    await panel.begin();
  };

  private endComparison(): void {
    const hadFocus = this.panel?.contains(document.activeElement);
    this.panel?.remove();
    this.panel = null;
    document.querySelector("spanwise-app")?.classList.remove("comparing");
    this.requestUpdate();
    if (hadFocus) this.querySelector<HTMLElement>(".compare")?.focus();
  }

  private readonly openMenu = (event: Event): void => {
    const anchor = event.currentTarget as HTMLElement;
    openTrialMenu(this.desk, anchor, (index) => void this.enterName(index));
  };

  private async enterName(index: number | null): Promise<void> {
    this.refusal = null;
    this.entered = index;
    await this.updateComplete;
    this.querySelector<HTMLInputElement>(".strip-name")?.select();
  }

  /** Says at once what would be refused; the name is taken when it is left. */
  private judge(index: number, name: string): void {
    this.refusal = nameRefusal(this.desk, index, name);
  }

  private readonly nameKey = (event: KeyboardEvent): void => {
    if (event.isComposing || (event.key !== "Enter" && event.key !== "Escape")) return;
    event.preventDefault();
    event.stopPropagation();
    if (event.key === "Escape" || this.refusal === null) void this.leaveName(event.key === "Enter", true);
  };

  private async leaveName(takes: boolean, keepFocus = false): Promise<void> {
    const index = this.entered;
    const name = this.querySelector<HTMLInputElement>(".strip-name")?.value ?? "";
    if (index === null) return;
    this.entered = null;
    if (takes && this.refusal === null) {
      renameIt(this.desk, index, name);
    }
    this.refusal = null;
    await this.updateComplete;
    if (keepFocus) this.querySelector<HTMLElement>("[aria-pressed=true]")?.focus();
  }
}
