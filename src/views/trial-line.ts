import { html, nothing, type TemplateResult } from "lit";
import { type GivenCell, type TableCell, textAt } from "../cells/index.ts";
import type { Desk } from "./desk.ts";
import { words } from "./trial-words.ts";

/** Under a given or a table that the trial which is on sets: that it does so alone, and what the baseline has. */
export function trialLine(desk: Desk, cell: GivenCell | TableCell): TemplateResult | typeof nothing {
  const { trial, own } = desk.session;
  if (!trial) return nothing;
  const before = cell.kind === "given" ? (textAt(own, cell.name) ?? "") : entriesBefore(desk, cell);
  if (cell.kind === "given" ? before === cell.formula : before === "") return nothing;
  return html`<p class="trial-line"><strong>${words.onlyHere(trial.name)}</strong>; ${words.baselineHas(before)}</p>`;
}

/** Beside a check while a trial is on: whether it holds in the baseline and in each other trial, as far as that is known. */
export function passesLine({ session, ghosts }: Desk, id: string): TemplateResult | typeof nothing {
  if (!session.trial || ghosts.all.length === 0) return nothing;
  const told = ghosts.all.map(({ trial, result }) => {
    const own = result(id);
    const name = trial ?? words.baseline;
    if (!own?.ok) return html`<span class="passes-one">… ${name}</span>`;
    const holds = own.value === true;
    return html`<span class="passes-one ${holds ? "holds" : "fails"}"><span aria-hidden="true">${holds ? "✓" : "✕"}</span> ${name}<span class="unseen"> ${holds ? words.holds : words.fails},</span></span>`;
  });
  return html`<p class="passes">${told}</p>`;
}

/** How far a value moved from the baseline, or what it was; nothing where it did not move. */
export const renderMoved = (moved: string | null): TemplateResult | typeof nothing =>
  moved === null
    ? nothing
    : html`<p class="change"><span aria-hidden="true">${moved}</span> <span class="unseen">${words.movedBy(moved)}</span></p>`;

/** Said while something is entered that no trial can hold. */
export const trialWarning = ({ session }: Desk): TemplateResult | typeof nothing =>
  session.trial ? html`<p class="trial-line">${words.changesAll}</p>` : nothing;

/** What an entry says in the notebook's own, where the trial that is on has it say something else; else null. */
export function entryBefore({ session }: Desk, cell: TableCell, row: number, column: number): string | null {
  if (!session.trial) return null;
  const own = session.own.cells.find(({ id }) => id === cell.id);
  const before = own?.kind === "table" ? own.rows[row]?.[column] : undefined;
  return before === undefined || before === cell.rows[row]?.[column] ? null : before;
}

function entriesBefore(desk: Desk, cell: TableCell): string {
  const told = cell.rows.flatMap((entries, row) =>
    entries.flatMap((_, column) => {
      const before = entryBefore(desk, cell, row, column);
      return before === null ? [] : [words.entryHas(row + 1, cell.columns[column]?.name ?? "", before)];
    }),
  );
  return told.join(", ");
}
