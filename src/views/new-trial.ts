/** A trial made from a point of a study, or its values taken over. */
import { freeTrialName, insertTrial, type Outcome, override, removeTrial } from "../cells/index.ts";
import { unitOf } from "../library/at-first.ts";
import type { Desk } from "./desk.ts";
import { joinUnit } from "./format.ts";
import { tell } from "./notice.ts";
import { words } from "./study-words.ts";

/** What a trial sets: a given or table entry, and its value in SI. */
export interface Setting {
  readonly target: string;
  readonly unit: string;
  readonly value: number;
}

/** The inputs of a study's outcome with the values of a point. */
export function settingsOf(outcome: Outcome, values: readonly number[]): Setting[] {
  const inputs = "input" in outcome ? [outcome.input] : outcome.inputs;
  return inputs.flatMap(({ target, unit }, index): Setting[] => {
    const value = values[index];
    return value === undefined ? [] : [{ target, unit, value }];
  });
}

/** A setting as a formula: "11.63 deg", to so many figures. */
export function formulaOf({ unit, value }: Setting, figures = 6): string {
  const { factor, offset } = unitOf(unit);
  const number = String(Number(((value - offset) / factor).toPrecision(figures)));
  return joinUnit({ number, unit: unit === "1" ? "" : unit });
}

/** "tip_break 11.6 deg, middle_break 7 deg". */
export const settingsText = (settings: readonly Setting[], figures = 4): string =>
  settings.map((setting) => `${setting.target} ${formulaOf(setting, figures)}`).join(", ");

/**
 * Puts a trial with these settings after the others, under a name that none has; one step to undo. Where a trial is on it
 * has what that one sets, too, since the point was computed with it.
 */
export function makeTrial({ session }: Desk, settings: readonly Setting[]): void {
  const name = freeTrialName(session.own, settingsText(settings));
  const set = formulasOf(settings);
  const trial = { name, set: { ...session.trial?.set, ...set } };
  session.editOwn((notebook) => insertTrial(notebook, trial));
  const step = session.steps.undo;
  const act = (): void => {
    if (session.steps.undo === step) session.undo();
    else
      session.editOwn((notebook) => {
        const index = notebook.trials.findIndex((each) => each.name === name);
        return index < 0 ? notebook : removeTrial(notebook, index);
      });
  };
  tell(words.trialMade(name), { label: words.takeBack, act });
}

/** Sets the values of a point, in the trial that is on or else in the notebook; one step to undo. */
export function takeValues({ session }: Desk, settings: readonly Setting[]): void {
  const formulas = Object.entries(formulasOf(settings));
  session.edit((notebook) => formulas.reduce((now, [target, formula]) => override(now, target, formula), notebook));
  const step = session.steps.undo;
  const act = (): void => {
    // What has been done since then stays.
    if (session.steps.undo === step) session.undo();
    else tell(words.notTakenBack);
  };
  tell(words.taken(settingsText(settings)), { label: words.takeBack, act });
}

const formulasOf = (settings: readonly Setting[]): Record<string, string> =>
  Object.fromEntries(settings.map((setting) => [setting.target, formulaOf(setting)]));
