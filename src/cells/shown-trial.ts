/** A notebook as it stands on the screen with one of its trials on, and what an edit made there means for the trial. */
import type { Cell, Notebook, TableCell, Trial } from "./cell.ts";
import { override, placeOfTarget } from "./override.ts";
import { entryTarget, readTarget } from "./target.ts";

/** What a trial sets that cannot be set, and why. */
export interface TrialFault {
  readonly target: string;
  readonly message: string;
}

/** The notebook with what a trial sets, as far as it can be set; the rest is left as it is and told. */
export function withTrial(own: Notebook, trial: Trial): { readonly notebook: Notebook; readonly faults: TrialFault[] } {
  const faults: TrialFault[] = [];
  let notebook = own;
  for (const [target, formula] of Object.entries(trial.set)) {
    try {
      notebook = override(notebook, target, formula);
    } catch (error) {
      if (!(error instanceof Error)) throw error;
      faults.push({ target, message: error.message });
    }
  }
  return { notebook, faults };
}

/**
 * The notebook as it is shown with a trial on. Its other trials are told against what is shown, so that each is the same
 * design as ever: what the one that is on sets, and they do not, they set to what it was. Cells that say what they said in
 * `before` are the very same objects.
 */
export function shownWith(own: Notebook, index: number, before: Notebook | null): Notebook {
  const trial = own.trials[index];
  if (!trial) throw new Error(`got the trial ${index}, expected one of 0 to ${own.trials.length - 1}`);
  const { cells } = withTrial(own, trial).notebook;
  const old = new Map(before?.cells.map((cell) => [cell.id, cell]));
  const same = cells.map((cell, at) => {
    const known = cell === own.cells[at] ? undefined : old.get(cell.id);
    return known && JSON.stringify(known) === JSON.stringify(cell) ? known : cell;
  });
  return { ...own, cells: same, trials: trialsAgainst(own, index) };
}

/** The trials of a notebook, told as changes of what is shown while one of them is on. */
export function trialsAgainst(own: Notebook, index: number): readonly Trial[] {
  const on = own.trials[index];
  const back = Object.fromEntries(
    Object.keys(on?.set ?? {}).flatMap((target) => {
      const text = textAt(own, target);
      return text === null ? [] : [[keyOf(target), text]];
    }),
  );
  return own.trials.map((trial) => {
    if (trial === on) return trial;
    const set = Object.entries(trial.set).map(([target, text]) => [keyOf(target), text] as const);
    return { ...trial, set: { ...back, ...Object.fromEntries(set) } };
  });
}

/**
 * What an edit of the shown notebook means where it did nothing but set givens and entries: the notebook with the trial
 * that has them. Null where it did anything else, which is then no matter of the trial. What is set to what the notebook
 * itself says is no change of the trial any more.
 */
export function editedTrial(own: Notebook, index: number, shown: Notebook, next: Notebook): Notebook | null {
  const trial = own.trials[index];
  if (!trial || !sameFrame(shown, next) || shown.cells.length !== next.cells.length) return null;
  const set = new Map(Object.entries(trial.set));
  for (const [at, cell] of next.cells.entries()) {
    const before = shown.cells[at];
    if (before === cell) continue;
    const texts = before && textsSet(before, cell);
    if (!texts) return null;
    for (const [target, text] of texts) {
      if (!isPlaceIn(own, target, cell.id)) return null;
      const key = [...set.keys()].find((each) => keyOf(each) === target) ?? target;
      if (textAt(own, target) === text) set.delete(key);
      else set.set(key, text);
    }
  }
  const edited = { ...trial, set: Object.fromEntries(set) };
  return { ...own, trials: own.trials.map((each, place) => (place === index ? edited : each)) };
}

/** The targets whose texts differ between two versions of a cell, with the later text; null where more differs. */
export function textsSet(before: Cell, after: Cell): [target: string, text: string][] | null {
  if (before.id !== after.id) return null;
  if (before.kind === "given" && after.kind === "given") {
    if (JSON.stringify({ ...before, formula: "" }) !== JSON.stringify({ ...after, formula: "" })) return null;
    return before.formula === after.formula ? [] : [[after.name, after.formula]];
  }
  return before.kind === "table" && after.kind === "table" ? entriesSet(before, after) : null;
}

function entriesSet(before: TableCell, after: TableCell): [string, string][] | null {
  if (JSON.stringify({ ...before, rows: [] }) !== JSON.stringify({ ...after, rows: [] })) return null;
  if (before.rows.length !== after.rows.length) return null;
  return after.rows.flatMap((row, at) =>
    row.flatMap((text, column): [string, string][] =>
      text === before.rows[at]?.[column]
        ? []
        : [[entryTarget(after.name, at + 1, after.columns[column]?.name ?? ""), text]],
    ),
  );
}

/** What a given or a table entry of a notebook says; null where a target names neither. */
export function textAt({ cells }: Pick<Notebook, "cells">, target: string): string | null {
  try {
    const { cell, entry } = placeOfTarget(cells, target);
    if (cell.kind === "given") return cell.formula;
    return cell.kind === "table" && entry ? (cell.rows[entry.row]?.[entry.column] ?? null) : null;
  } catch {
    return null;
  }
}

/** A name that two cells have names the first of them only. */
function isPlaceIn({ cells }: Notebook, target: string, id: string): boolean {
  try {
    return placeOfTarget(cells, target).cell.id === id;
  } catch {
    return false;
  }
}

const keyOf = (target: string): string => {
  const { name, entry } = readTarget(target);
  return entry ? entryTarget(name, entry.row, entry.column) : name;
};

const sameFrame = ({ cells: _, ...before }: Notebook, { cells: __, ...after }: Notebook): boolean =>
  JSON.stringify(Object.keys(before)) === JSON.stringify(Object.keys(after)) &&
  Object.entries(before).every(([key, value]) => after[key as keyof typeof after] === value);
