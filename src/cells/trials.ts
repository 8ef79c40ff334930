/** A trial: a named set of changed givens and table entries, held against the baseline. */
import { nearest } from "../library/units.ts";
import type { Notebook, Trial } from "./cell.ts";
import { messages } from "./messages.ts";
import { override } from "./override.ts";

/**
 * The notebook as it would be with a trial's changes made; cells that it leaves alone are shared, and the trials are kept.
 * Where a change cannot be made, the Error names the trial, what it sets, and the remedy.
 */
export function applyTrial(notebook: Notebook, trial: Trial): Notebook {
  return Object.entries(trial.set).reduce((changed, [target, formula]) => {
    try {
      return override(changed, target, formula);
    } catch (error) {
      if (!(error instanceof Error)) throw error;
      throw new Error(messages.inTrial(trial.name, target, error.message));
    }
  }, notebook);
}

/** The trial of that name; where two have it, the first. Says in an Error which there are where none has it. */
export function trialNamed({ trials }: Notebook, name: string): Trial {
  const trial = trials.find((each) => each.name === name);
  if (trial) return trial;
  const names = trials.map((each) => each.name);
  throw new Error(messages.noTrial(name, nearest(name, names), names));
}
