/** Lists of cells that can be stepped to, each with its value, its kind and its reason. */
import { html, nothing, type TemplateResult } from "lit";
import type { Result, Step, Subject, TableCell, Value } from "../../cells/index.ts";
import { busyNote, noValue } from "../cell-view.ts";
import type { Desk } from "../desk.ts";
import { formatNumber } from "../format.ts";
import { oneLine } from "../value-text.ts";
import { words } from "../words.ts";
import { kindWord, reasonOf, stepTitle, tellingOf } from "./subject-words.ts";

export interface Steps {
  readonly desk: Desk;
  step(subject: Subject): void;
}

/** A heading and the cells under it. */
export function stepsList(heading: string, all: readonly Step[], steps: Steps): TemplateResult {
  return html`<h3>${heading}</h3>
    <ul class="steps">${all.map((each) => stepItem(each, steps))}</ul>`;
}

function stepItem(step: Step, { desk, step: go }: Steps): TemplateResult {
  const reason = reasonOf(step.cell);
  return html`<li>
    <button type="button" class="step" @click=${() => go({ id: step.id })}>${stepTitle(step)}</button>
    <span class="told">${told(step, desk)}</span>
    <span class="reason">${reason || nothing}</span>
  </li>`;
}

/** The value of a cell in a few words; what has none says what it is. */
function told(step: Step, { session }: Desk): TemplateResult | string {
  const { cell, definition } = step;
  if (definition) return words.functionOf(definition.parameters);
  if (step.name === null) return kindWord(cell);
  if (session.concealed.has(step.id)) return words.hiddenValue;
  const result = session.result(step.id);
  if (!result) return words.pending;
  if (!result.ok) return noValue(result.error.code === "waits");
  const busy = busyNote(session.isPending(step.id));
  if (cell.kind !== "check") return html`${oneLine(result, tellingOf(cell))}${busy}`;
  return result.value === true
    ? html`<span class="holds"><span aria-hidden="true">✓</span> ${words.holds}</span>`
    : html`<span class="fails"><span aria-hidden="true">✕</span> ${words.fails}</span>`;
}

const longestTable = 40;

/** The entries of a table, each of which can be stepped to; nothing for other cells. */
export function entriesTable(step: Step, result: Result | undefined, steps: Steps): TemplateResult | typeof nothing {
  const { cell } = step;
  if (cell.kind !== "table" || cell.rows.length === 0) return nothing;
  const more = cell.rows.length - longestTable;
  return html`<h3>${words.why.entries}</h3>
    <div class="wide-place" tabindex="0" role="group" aria-label=${words.why.entries}><table class="why-entries">
      <thead><tr><td></td>${cell.columns.map(
        ({ name, unit = "1" }) =>
          html`<th scope="col">${words.columnHead(name)}${unit === "1" ? nothing : html` <span class="unit">${unit}</span>`}</th>`,
      )}</tr></thead>
      <tbody>${cell.rows
        .slice(0, longestTable)
        .map(
          (_, row) =>
            html`<tr><th scope="row">${row + 1}</th>${cell.columns.map((__, column) => html`<td>${entry(cell, row, column, result, steps)}</td>`)}</tr>`,
        )}</tbody>
    </table></div>
    ${more > 0 ? html`<p class="hint">${words.why.moreRows(more)}</p>` : nothing}`;
}

function entry(table: TableCell, row: number, index: number, result: Result | undefined, { step }: Steps): unknown {
  const column = table.columns[index];
  const text = table.rows[row]?.[index] ?? "";
  if (!column || column.text) return text;
  const values = result?.ok ? (result.value as Readonly<Record<string, readonly Value[]>>)[column.name] : undefined;
  const value = values?.[row];
  const shown = typeof value === "number" ? formatNumber(value, column.unit ?? "1").number : text;
  if (/^\s*[-−]?[\d.]+\s*$/.test(text)) return shown;
  const label = words.why.ask(words.why.entry(table.name, row + 1, column.name));
  return html`<button type="button" class="step" aria-label="${shown}, ${label}" @click=${() => step({ id: table.id, entry: { row, column: index } })}>${shown || "—"}</button>`;
}
