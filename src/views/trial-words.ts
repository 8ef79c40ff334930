/** The words of trials: of their bar, of what is said beside a value, of comparing them and of taking one over. */

const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

export const words = {
  trials: "trials",
  baseline: "baseline",
  baselineHint: "The notebook itself, without a trial",
  make: "Trial",
  makeOfChanges: "Make a trial of the values as they now are; the baseline is given back",
  makeOfTrial: (name: string) => `Make a further trial that begins like “${name}”`,
  makeEmpty: "Make a trial: what you change in it leaves the baseline as it is",
  turnOn: (name: string) => `Turn on the trial “${name}”`,
  nextKey: "F8 turns to the next, Shift F8 back",
  nameOf: (name: string) => `name of the trial ${name}`,
  more: (name: string) => `more for the trial ${name}`,
  newName: (number: number) => `trial ${number}`,
  made: (name: string, count: number) =>
    count === 0
      ? `The trial “${name}” is on. What you change now changes it alone.`
      : `The trial “${name}” holds ${plural(count, "changed value", "changed values")}; the baseline is as it was.`,
  takeBack: "Take it back",
  isOn: (name: string) => `The trial “${name}” is on.`,
  baselineIsOn: "No trial is on: this is the baseline.",
  onPaper: (name: string, changes: string) => `With the trial “${name}”${changes && `: ${changes}`}.`,
  changes: (changes: string) => changes || "nothing changed yet",
  settings: (target: string, text: string) => `${target} ${text}`,
  notSet: (message: string) => `This trial cannot set everything. ${message}`,

  rename: "Rename",
  duplicate: "Duplicate",
  moveBefore: "Move before",
  moveAfter: "Move after",
  remove: "Delete",
  removed: (name: string) => `Deleted the trial “${name}”.`,
  bringBack: "Bring it back",

  // Beside what was edited
  onlyHere: (trial: string) => `in “${trial}” only`,
  baselineHas: (text: string) => `the baseline has ${text}`,
  entryHas: (row: number, column: string, text: string) => `row ${row} ${column} ${text}`,
  changesAll: "This changes the notebook itself, under all trials.",
  movedBy: (change: string) => `${change} from the baseline`,
  was: (text: string) => `was ${text}`,

  // Steps
  steps: {
    make: (name: string) => `make the trial ${name}`,
    adopt: (name: string) => `take over the trial ${name}`,
    remove: (name: string) => `delete the trial ${name}`,
    rename: (from: string, to: string) => `rename the trial ${from} to ${to}`,
    change: (target: string, name: string) => `change ${target} in ${name}`,
    order: "move a trial",
    several: "change the trials",
  },
} as const;
