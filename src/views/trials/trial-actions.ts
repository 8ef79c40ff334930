/** What can be done with trials: made, renamed, duplicated, moved, deleted. Each is one step to undo. */
import {
  changesSince,
  duplicateTrial,
  freeTrialName,
  insertTrial,
  moveTrial,
  removeTrial,
  renameTrial,
  trialOfChanges,
} from "../../cells/index.ts";
import type { Desk } from "../desk.ts";
import { openMenu } from "../menu.ts";
import { tell } from "../notice.ts";
import { openAdoptDialog } from "./adopt-dialog.ts";
import { words } from "./words.ts";

/**
 * Makes a trial and turns it on: of what was edited since the notebook was opened, whose baseline is given back; or one
 * that begins like the trial that is on. Gives its place; null where nothing can be edited.
 */
export function makeTrial({ session, baseline }: Desk): number | null {
  if (session.readOnly) return null;
  const { own, trialIndex } = session;
  if (trialIndex !== null) {
    session.editOwn((notebook) => duplicateTrial(notebook, trialIndex), trialIndex + 1);
    return trialIndex + 1;
  }
  const changes = Object.entries(changesSince(baseline.notebook, own));
  const name = freeTrialName(own, nameOf(changes, own.trials.length + 1));
  const { length } = own.trials;
  session.editOwn(
    (notebook) =>
      changes.length === 0
        ? insertTrial(notebook, { name, set: {} })
        : trialOfChanges(baseline.notebook, notebook, name),
    length,
  );
  tell(words.made(changes.length));
  return length;
}

/** What a single change says, until the person has a better name. */
function nameOf(changes: readonly (readonly [string, string])[], number: number): string {
  const [only] = changes;
  return only && changes.length === 1 ? words.settings(...only) : words.newName(number);
}

/** Why a trial cannot have a name; null where it can. */
export function nameRefusal({ session }: Desk, index: number, name: string): string | null {
  try {
    renameTrial(session.own, index, name);
    return null;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** Gives a trial another name; where it cannot have it, it keeps the one it has, and that is told. */
export function renameIt(desk: Desk, index: number, name: string): void {
  const refusal = nameRefusal(desk, index, name);
  if (refusal === null) desk.session.editOwn((notebook) => renameTrial(notebook, index, name));
  else tell(refusal);
}

/** Opens the menu of the trial that is on. */
export function openTrialMenu(desk: Desk, anchor: HTMLElement, rename: (index: number) => void): void {
  const { session } = desk;
  const { trial, trialIndex: index } = session;
  if (!trial || index === null) return;
  const { trials } = session.own;
  const move = (to: number): void => session.editOwn((notebook) => moveTrial(notebook, index, to));
  openMenu(anchor, words.more(trial.name), [
    { label: words.rename, act: () => rename(index) },
    { label: words.duplicate, act: () => rename(makeTrial(desk) ?? index) },
    ...(index > 0 ? [{ label: words.moveBefore, act: () => move(index - 1) }] : []),
    ...(index < trials.length - 1 ? [{ label: words.moveAfter, act: () => move(index + 1) }] : []),
    { label: words.adopt, parted: true, act: () => openAdoptDialog(desk, index) },
    { label: words.remove, parted: true, act: () => remove(desk, index) },
  ]);
}

function remove({ session }: Desk, index: number): void {
  const trial = session.own.trials[index];
  if (!trial) return;
  session.editOwn((notebook) => removeTrial(notebook, index));
  const step = session.steps.undo;
  const act = (): void => {
    if (session.steps.undo === step) session.undo();
    else session.editOwn((notebook) => insertTrial(notebook, trial, Math.min(index, notebook.trials.length)));
  };
  tell(words.removed(trial.name), { label: words.bringBack, act });
}
