import { html, LitElement, nothing, type TemplateResult } from "lit";
import {
  bandOf,
  type Compared,
  type ComparedRow,
  type Comparison,
  comparisonOf,
  type Outcome,
} from "../../cells/index.ts";
import { checkValue } from "../check-value.ts";
import type { Desk } from "../desk.ts";
import { jointOf, joinUnit } from "../format.ts";
import { tell } from "../notice.ts";
import { changeText, leadAndRest, shareText } from "../value-text.ts";
import type { Beside, BesideColumn } from "./beside.ts";
import { comparisonText, firstRows, offeredRows, type RowChoice, setRows, tellingOf } from "./compared-rows.ts";
import { words } from "./words.ts";
import "./comparison.css";

/** Under what the band of what is compared is looked at, as a study of its own. */
const bandId = "comparison of trials";

/** Trials side by side: the baseline and each trial across; what they set, chosen cells and all checks down. */
export class ComparisonPanel extends LitElement {
  static override properties = { desk: { attribute: false }, beside: { attribute: false } };
  declare desk: Desk;
  declare beside: Beside;
  /** Called when it is to go. */
  onClose: () => void = () => undefined;
  private stops: (() => void)[] = [];
  /** Rows that a person added, and labels of those left out. */
  private added: string[] = [];
  private dropped = new Set<string>();
  private unwatch: (() => void) | null = null;
  private watched = "";
  private revision = 0;
  private frame = 0;
  private comparison: Comparison | null = null;
  private choices: readonly RowChoice[] = [];

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const later = (): void => {
      if (this.frame === 0) this.frame = requestAnimationFrame(() => this.draw());
    };
    this.stops = [this.beside.watch(later), () => this.unwatch?.()];
    this.addEventListener("keydown", this.key);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const stop of this.stops) stop();
    cancelAnimationFrame(this.frame);
  }

  /** Gives the focus to its heading. */
  async begin(): Promise<void> {
    await this.updateComplete;
    this.querySelector<HTMLElement>("h2")?.focus();
  }

  private draw(): void {
    this.frame = 0;
    this.requestUpdate();
  }

  protected override render(): TemplateResult {
    const { session } = this.desk;
    const { columns } = this.beside;
    const [baseline] = columns;
    const program = baseline?.program ?? session.program;
    this.choices = this.rowsOf(program);
    const band = this.bands();
    this.comparison = comparisonOf(
      program,
      columns,
      this.choices.map(({ text }) => text),
      (text) => band.get(text) ?? null,
    );
    const { rows } = this.comparison;
    return html`<section class="comparison" aria-labelledby="comparison-heading">
      <header><h2 id="comparison-heading" tabindex="-1">${words.comparison}</h2>
        ${this.renderAdd(program)}
        <button type="button" @click=${this.copy}>${words.copy}</button>
        <button type="button" class="sign-button" aria-label=${words.close} title="${words.close} (Esc)" @click=${() => this.onClose()}><span aria-hidden="true">✕</span></button></header>
      <div class="compared" tabindex="0" role="region" aria-labelledby="comparison-heading"><table>
        <thead><tr><td></td>${columns.map((column, place) => this.renderHead(column, place - 1, rows))}</tr></thead>
        <tbody>${rows.map((row, index) => this.renderRow(row, row.kind === "value" ? this.choices[index] : undefined, columns))}</tbody>
      </table></div>
    </section>`;
  }

  private rowsOf(program: Desk["session"]["program"]): readonly RowChoice[] {
    const first = firstRows(this.desk.session.own, program);
    const all = [...first, ...this.added.map((text) => ({ label: text, text, isSet: false }))];
    return all.filter(({ label }) => !this.dropped.has(label));
  }

  private renderHead({ trial, error }: BesideColumn, index: number, rows: readonly ComparedRow[]): TemplateResult {
    const { session } = this.desk;
    const isOn = (session.trialIndex ?? -1) === index;
    const checks = rows.filter(({ kind }) => kind === "check").map(({ values }) => values[index + 1]);
    const held = checks.filter((each) => each?.result?.ok && !each.isFailing).length;
    return html`<th scope="col" class=${isOn ? "on" : ""}><button type="button" class="column-name" aria-pressed=${isOn ? "true" : "false"}
        @click=${() => session.turnOn(index < 0 ? null : index)}>${trial ?? words.baseline}</button>
      ${isOn ? html`<span class="on-mark">${words.on}</span>` : nothing}
      ${error === null ? nothing : html`<p class="fault"><span aria-hidden="true">✕</span> ${words.cannotBeMade(error)}</p>`}
      ${checks.length === 0 || checks.some((each) => !each?.result) ? nothing : html`<p class="passed">${words.passed(held, checks.length)}</p>`}</th>`;
  }

  private renderRow(row: ComparedRow, choice: RowChoice | undefined, columns: readonly BesideColumn[]): TemplateResult {
    const label = choice?.label ?? row.text;
    const { concealed, program } = this.desk.session;
    const isHidden = (row.text.match(/[A-Za-z]\w*/g) ?? []).some((name) =>
      concealed.has(program.byName.get(name)?.id ?? ""),
    );
    return html`<tr class="row-${row.kind}"><th scope="row"><code>${label}</code>
        ${choice ? html`<button type="button" class="drop-row" aria-label=${words.dropRow(label)} title=${words.dropRow(label)} @click=${() => this.drop(label)}><span aria-hidden="true">×</span></button>` : nothing}</th>
      ${columns.map((column, place) =>
        isHidden
          ? html`<td class="none">${words.hidden}</td>`
          : this.renderValue(
              row,
              row.values[place] as Compared,
              column,
              row.values[0] as Compared,
              choice?.isSet ?? false,
            ),
      )}</tr>`;
  }

  private renderValue(
    row: ComparedRow,
    compared: Compared,
    column: BesideColumn,
    baseline: Compared,
    isSet: boolean,
  ): TemplateResult {
    const { result, isBest, isFailing } = compared;
    if (column.error !== null) return html`<td class="none">—</td>`;
    const isPending = this.isPendingIn(column, row.text);
    if (!result) return html`<td class="none">${words.pending}</td>`;
    const marks = `${isBest ? " best" : ""}${isFailing ? " failing" : ""}${isPending ? " busy" : ""}`;
    const best = isBest ? html` <span class="best-mark">${words.best}</span>` : nothing;
    const busy = isPending ? html`<span class="unseen">, ${words.beingComputed}</span>` : nothing;
    if (!result.ok)
      return html`<td class=${marks}><span title=${result.error.message}><span aria-hidden="true">✕</span> ${words.noValue}</span>${busy}</td>`;
    if (row.kind === "check") return html`<td class=${marks}>${checkValue(result)}${best}${busy}</td>`;
    const telling = column.program ? tellingOf(column.program, row.text) : {};
    const { number, unit } = leadAndRest(result, telling);
    return html`<td class=${marks}><span class="lead">${number}</span>${jointOf(unit)}<span class="rest">${unit}</span>${best}${busy}
      ${compared === baseline ? nothing : this.renderMoved(compared, baseline, unit, telling, isSet)}</td>`;
  }

  private renderMoved(
    { result, isSeen }: Compared,
    { result: before }: Compared,
    unit: string,
    telling: object,
    isSet: boolean,
  ): TemplateResult | typeof nothing {
    if (!result?.ok || !before?.ok || typeof result.value !== "number" || typeof before.value !== "number")
      return nothing;
    const change = changeText(result, before, telling);
    if (change === null) return html`<p class="same">${words.same}</p>`;
    if (!isSeen && !isSet) return html`<p class="same">${words.notSeen}</p>`;
    const share = shareText(result.value, before.value, unit);
    return html`<p class="change">${joinUnit({ number: change, unit })}${share === null ? "" : `, ${share}`}</p>`;
  }

  private isPendingIn({ program, isPending }: BesideColumn, text: string): boolean {
    const names = text.match(/[A-Za-z]\w*/g) ?? [];
    return names.some((name) => {
      const id = program?.byName.get(name)?.id;
      return id !== undefined && isPending(id);
    });
  }

  private renderAdd(program: Desk["session"]["program"]): TemplateResult {
    const add = (event: Event): void => {
      const select = event.target as HTMLSelectElement;
      this.added = [...this.added.filter((each) => each !== select.value), select.value];
      this.dropped.delete(select.value);
      select.value = "";
      this.requestUpdate();
    };
    return html`<select aria-label=${words.addRow} @change=${add}><option value="">+ ${words.addRow}</option>
      ${offeredRows(program, this.choices).map((name) => html`<option value=${name}>${name}</option>`)}</select>`;
  }

  private drop(label: string): void {
    this.added = this.added.filter((each) => each !== label);
    this.dropped.add(label);
    this.requestUpdate();
  }

  /** How far each row is known, by what the givens state; looked at anew where rows come or a trial is turned on. */
  private bands(): ReadonlyMap<string, number | null> {
    const { session, studies } = this.desk;
    const set = new Set(setRows(session.own).map(({ text }) => text));
    const results = this.choices.flatMap(({ text, isSet }) => {
      const shape = session.program.byName.get(text)?.shape;
      return isSet || set.has(text) || (shape && shape.kind !== "number") ? [] : [text];
    });
    const inputs = session.program.steps.flatMap(({ plusMinus, name }) => (plusMinus && name ? [{ input: name }] : []));
    const wanted = JSON.stringify([results, inputs, session.trialIndex]);
    if (wanted !== this.watched && results.length > 0 && inputs.length > 0) {
      this.watched = wanted;
      this.unwatch?.();
      this.revision++;
      const named = { id: bandId, kind: "study", name: `comparison ${this.revision}` } as const;
      const study = { ...named, study: "sensitivity", inputs, results, checks: [] } as const;
      this.unwatch = studies.watch(
        `${bandId} ${this.revision}`,
        () => ({ study }),
        () => this.requestUpdate(),
      );
    }
    const outcome = studies.news(`${bandId} ${this.revision}`)?.outcome;
    return outcome?.study === "sensitivity" ? bandsOf(outcome) : new Map();
  }

  private readonly copy = async (): Promise<void> => {
    const { comparison, desk } = this;
    if (!comparison) return;
    try {
      await navigator.clipboard.writeText(comparisonText(comparison, this.choices, desk.session.program));
      tell(words.copied);
    } catch {
      tell(words.cannotCopy);
    }
  };

  private readonly key = (event: KeyboardEvent): void => {
    if (event.key !== "Escape" || event.defaultPrevented) return;
    event.preventDefault();
    this.onClose();
  };
}

/** How far each result of a sensitivity is known, ±, in SI. */
function bandsOf({ results, inputs }: Extract<Outcome, { readonly study: "sensitivity" }>): Map<string, number | null> {
  const amounts = new Map(inputs.map(({ target, amount, isAssumed }) => [target, isAssumed ? null : amount]));
  return new Map(
    results.map(({ text, ranked }) => {
      const shares = ranked.map(({ target, derivative }) => ({ derivative, plusMinus: amounts.get(target) ?? null }));
      return [text, bandOf(shares)];
    }),
  );
}
