/** Why a study cannot be run, with what of it is at fault, so that a form can say it there. */
import { FormulaError } from "../errors.ts";

/** What of a study a person can say. */
export type StudyField =
  | "inputs"
  | "input"
  | "range"
  | "points"
  | "plus_minus"
  | "pair"
  | "correlation"
  | "result"
  | "goal"
  | "target"
  | "checks"
  | "trials";

export interface StudyFault {
  readonly field: StudyField;
  /** The input, as it is written, or the text of the result; null where the field is that of the whole study. */
  readonly of: string | null;
  /** What is wrong and the remedy, without the names of the study and the field. */
  readonly sentence: string;
}

/** What keeps a study from being run. Its message names study and place. */
export class StudyRefusal extends Error {
  constructor(
    readonly fault: StudyFault,
    message: string = fault.sentence,
  ) {
    super(message);
    this.name = "StudyRefusal";
  }
}

/** The refusal of a study for what a field of it says. */
export const refusalAt = (field: StudyField, of: string | null, sentence: string): StudyRefusal =>
  new StudyRefusal({ field, of, sentence });

/**
 * Does something with what a field says. What is wrong with it becomes a refusal that names the field, unless it names one
 * already, its message told by `tell`. Anything but an error meant for a person is a fault of ours and goes through.
 */
export function inField<T>(
  field: StudyField,
  of: string | null,
  act: () => T,
  tell: (message: string) => string = (message) => message,
): T {
  try {
    return act();
  } catch (error) {
    if (!isForPerson(error)) throw error;
    const fault = error instanceof StudyRefusal ? error.fault : { field, of, sentence: error.message };
    throw new StudyRefusal(fault, tell(error.message));
  }
}

/** What is wrong with what a person says, not with our own code. */
export const isForPerson = (error: unknown): error is Error =>
  error instanceof FormulaError ||
  error instanceof StudyRefusal ||
  (error instanceof Error && error.constructor === Error);
