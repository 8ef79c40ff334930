import type { Kind } from "../cells/index.ts";

/** What each kind of cell is called. */
export const kindNames: Readonly<Record<Kind, string>> = {
  given: "Given",
  derived: "Derived",
  table: "Table",
  note: "Note",
  check: "Check",
  decision: "Decision",
  question: "Question",
  drawing: "Drawing",
  chart: "Chart",
  study: "Study",
  sheet: "Sheet",
};

/** What each kind is for, in a few words. */
export const kindHints: Readonly<Record<Kind, string>> = {
  given: "a number you choose",
  derived: "a formula",
  table: "rows and columns",
  note: "words, with live values",
  check: "what must hold",
  decision: "what was chosen, and why",
  question: "asks before it shows",
  drawing: "a view of a wing or glider",
  chart: "one thing against another",
  study: "what if, many times over",
  sheet: "to print at true size",
};
