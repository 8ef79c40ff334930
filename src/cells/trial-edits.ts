/** Edits of a notebook's trials: each is pure, and names stay such that each means one trial only. */
import type { Cell, DecisionCell, Notebook, StudyCell, Trial } from "./cell.ts";
import { messages } from "./messages.ts";
import { insertCell } from "./notebook.ts";
import { textAt, textsSet, withTrial } from "./shown-trial.ts";

/** The name, or with a number after it where another trial has it. */
export function freeTrialName({ trials }: Pick<Notebook, "trials">, name: string): string {
  const taken = new Set(trials.map((trial) => trial.name));
  let free = name;
  for (let number = 2; taken.has(free); number++) free = `${name} (${number})`;
  return free;
}

/** The notebook with a trial put in so that it stands at `index`, counted from 0; after all others where that is left out. */
export function insertTrial(notebook: Notebook, trial: Trial, index = notebook.trials.length): Notebook {
  const { trials } = notebook;
  return { ...notebook, trials: [...trials.slice(0, index), trial, ...trials.slice(index)] };
}

/** What givens and table entries say in a notebook that they did not in an earlier state of it, as a trial's set. */
export function changesSince(before: Notebook, now: Notebook): Trial["set"] {
  const old = new Map(before.cells.map((cell) => [cell.id, cell]));
  const changes = now.cells.flatMap((cell) => {
    const was = old.get(cell.id);
    return was && was !== cell ? (settableChanges(was, cell) ?? []) : [];
  });
  // Where two cells have a name only the first is meant by it.
  return Object.fromEntries(changes.filter(([target, text]) => textAt(now, target) === text));
}

/** A trial of what was changed since an earlier state, put in last, with the notebook's own values given back. */
export function trialOfChanges(before: Notebook, now: Notebook, name: string): Notebook {
  const set = changesSince(before, now);
  const back = Object.fromEntries(Object.keys(set).map((target) => [target, textAt(before, target) ?? ""]));
  return insertTrial(withTrial(now, { name, set: back }).notebook, { name, set });
}

/** Also where a cell says otherwise than before in other ways. */
function settableChanges(was: Cell, cell: Cell): [string, string][] | null {
  if (was.kind === "given" && cell.kind === "given")
    return (
      textsSet(was, { ...was, formula: cell.formula, name: was.name })?.map(([, text]) => [cell.name, text]) ?? null
    );
  if (was.kind !== "table" || cell.kind !== "table") return null;
  const sameColumns = JSON.stringify(was.columns) === JSON.stringify(cell.columns);
  return sameColumns ? textsSet({ ...was, name: cell.name }, { ...was, name: cell.name, rows: cell.rows }) : null;
}

/** The trial under another name, also where studies name it. Throws an Error with the reason where it cannot have it. */
export function renameTrial(notebook: Notebook, index: number, name: string): Notebook {
  const trial = trialAt(notebook, index);
  const next = name.trim();
  if (next === trial.name) return notebook;
  if (next === "") throw new Error(messages.trialWithoutName);
  if (notebook.trials.some((each) => each.name === next)) throw new Error(messages.trialNameTaken(next));
  const trials = notebook.trials.map((each) => (each === trial ? { ...each, name: next } : each));
  return { ...inStudies(notebook, trial, (names) => names.map((each) => (each === trial.name ? next : each))), trials };
}

/** The same trial once more, after it, under a name of its own. */
export function duplicateTrial(notebook: Notebook, index: number): Notebook {
  const trial = trialAt(notebook, index);
  return insertTrial(notebook, { ...trial, name: freeTrialName(notebook, trial.name) }, index + 1);
}

/** Without the trial; studies that name it tell of the others. */
export function removeTrial(notebook: Notebook, index: number): Notebook {
  const trial = trialAt(notebook, index);
  const trials = notebook.trials.filter((each) => each !== trial);
  return { ...inStudies(notebook, trial, (names) => names.filter((each) => each !== trial.name)), trials };
}

/** The trial taken out and put in again so that it stands at `to`. */
export function moveTrial(notebook: Notebook, index: number, to: number): Notebook {
  const trial = trialAt(notebook, index);
  if (to === index || !notebook.trials[to]) return notebook;
  const others = notebook.trials.filter((each) => each !== trial);
  return { ...notebook, trials: [...others.slice(0, to), trial, ...others.slice(to)] };
}

/**
 * What a trial sets made the notebook's own, and the trial taken out; the decision that says why is put in after the last
 * cell that it changed. What cannot be set is passed over. Other trials go on setting what they set.
 */
export function adoptTrial(notebook: Notebook, index: number, decision: DecisionCell): Notebook {
  const { notebook: adopted } = withTrial(notebook, trialAt(notebook, index));
  const last = adopted.cells.findLastIndex((cell, at) => cell !== notebook.cells[at]);
  const place = last < 0 ? adopted.cells.length : last + 1;
  return insertCell(removeTrial(adopted, index), place, decision);
}

function trialAt({ trials }: Notebook, index: number): Trial {
  const trial = trials[index];
  if (!trial) throw new Error(`got the trial ${index}, expected one of 0 to ${trials.length - 1}`);
  return trial;
}

/** The notebook with the names of trials in its studies changed, unless another trial has the name too. */
function inStudies(
  notebook: Notebook,
  trial: Trial,
  change: (names: readonly string[]) => readonly string[],
): Notebook {
  if (notebook.trials.some((each) => each !== trial && each.name === trial.name)) return notebook;
  const cells = notebook.cells.map((cell): Cell => {
    if (cell.kind !== "study" || !cell.trials?.includes(trial.name)) return cell;
    const { trials, ...rest } = cell;
    const names = change(trials);
    return names.length === 0 ? (rest as StudyCell) : { ...cell, trials: names };
  });
  return cells.every((cell, at) => cell === notebook.cells[at]) ? notebook : { ...notebook, cells };
}
