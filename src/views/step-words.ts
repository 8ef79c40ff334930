import type { HistoryStep } from "../cells/index.ts";
import { cellTitle } from "./cell-title.ts";
import { words as trialWords } from "./trial-words.ts";
import { words } from "./words.ts";

/** What a step that can be undone did, in a few words: "delete span". */
export function stepWords(step: HistoryStep): string {
  const { removed, inserted, frames } = step;
  const { steps } = words;
  const [before, after] = [removed[0], inserted[0]];
  const ofTrials = trialStepWords(step);
  if (ofTrials !== null) return ofTrials;
  if (!before && !after) return frameWords(frames);
  if (!before) return inserted.length === 1 && after ? steps.insert(cellTitle(after)) : steps.cells(inserted.length);
  if (!after) return removed.length === 1 ? steps.delete(cellTitle(before)) : steps.cells(removed.length);
  const movedDown = before === inserted.at(-1);
  if (movedDown || after === removed.at(-1)) return steps.move(cellTitle(movedDown ? before : after));
  const changed = removed.filter((cell, index) => cell !== inserted[index]);
  for (const cell of changed) {
    const now = inserted.find(({ id }) => id === cell.id);
    if (now && "name" in cell && "name" in now && cell.name !== now.name) return steps.rename(cell.name, now.name);
  }
  return changed.length === 1 && changed[0] ? steps.change(cellTitle(changed[0])) : steps.cells(changed.length);
}

function frameWords(frames: HistoryStep["frames"]): string {
  if (frames && frames.before.title !== frames.after.title) return words.steps.title;
  return words.steps.board;
}

/** What was done with trials: one made, deleted, taken over, renamed, moved, or set; null where it was done to cells. */
function trialStepWords({ removed, inserted, frames }: HistoryStep): string | null {
  if (!frames) return null;
  const { steps } = trialWords;
  const [before, after] = [frames.before.trials, frames.after.trials];
  const gone = before.filter((trial) => !after.includes(trial));
  const come = after.filter((trial) => !before.includes(trial));
  const [old, now] = [gone[0], come[0]];
  if (after.length > before.length) return now ? steps.make(now.name) : steps.several;
  if (after.length < before.length) {
    const isAdopted = inserted.length > removed.length;
    return old ? (isAdopted ? steps.adopt : steps.remove)(old.name) : steps.several;
  }
  if (old && now && gone.length === 1 && old.name !== now.name) return steps.rename(old.name, now.name);
  if (removed.length + inserted.length > 0) return null;
  if (!old || !now) return before.every((trial, index) => trial === after[index]) ? null : steps.order;
  const targets = [...new Set([...Object.keys(old.set), ...Object.keys(now.set)])];
  const changed = targets.filter((target) => old.set[target] !== now.set[target]);
  return changed.length === 1 && changed[0] ? steps.change(changed[0], now.name) : steps.several;
}

/**
 * The cell, by id, in which a person sees what a step did or took back; undefined where that is none. What is set in a
 * trial is seen in the cell of that name, whose id `idOf` finds.
 */
export function seenIn(
  { removed, inserted, frames }: HistoryStep,
  present: (id: string) => boolean,
  idOf: (name: string) => string | undefined = () => undefined,
): string | undefined {
  const cell = [...inserted, ...removed].find((each, index) => each !== removed[index] && present(each.id));
  if (cell || !frames) return cell?.id;
  const before = frames.before.trials;
  for (const trial of frames.after.trials) {
    const old = before.includes(trial) ? undefined : before.find(({ name }) => name === trial.name);
    const targets = old ? [...Object.keys(trial.set), ...Object.keys(old.set)] : [];
    const target = targets.find((each) => trial.set[each] !== old?.set[each]);
    if (target !== undefined) return idOf(/^\w*/.exec(target)?.[0] ?? "");
  }
  return undefined;
}
