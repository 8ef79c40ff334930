/** What is said of trials beside values and of steps; the words of their bar stand with it. */
export const words = {
  // Beside what was edited
  onlyHere: (trial: string) => `in “${trial}” only`,
  baselineHas: (text: string) => `the baseline has ${text}`,
  entryHas: (row: number, column: string, text: string) => `row ${row} ${column} ${text}`,
  baseline: "baseline",
  holds: "holds",
  fails: "fails",
  changesAll: "This changes the notebook itself, under all trials.",
  movedBy: (change: string) => `${change} from the baseline`,

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
