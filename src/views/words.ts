/** Every word of the interface, in one place. What cells and files say of themselves stands with them. */

const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

export const words = {
  product: "Spanwise",
  board: "board",
  skipToPage: "Go to the page",
  skipToBoard: "Go to the board",

  // The bar
  title: "title of the notebook",
  editTitle: "edit the title",
  untitled: "Untitled notebook",
  open: "Open",
  openHint: "Open a notebook file (Ctrl O)",
  save: "Save",
  saveHint: "Save as a file (Ctrl S)",
  file: "notebook file",
  saved: "saved",
  unsaved: "changed since saved",
  colours: "colours",
  colourChoices: { system: "◐ system", light: "☀ light", dark: "☾ dark" },
  checks: (held: number, all: number, unknown: number) =>
    all === 0
      ? ""
      : `${held} of ${plural(all, "check holds", "checks hold")}${unknown > 0 ? `, ${unknown} not known` : ""}`,

  // Opening and saving
  dropHere: "Drop the notebook to open it",
  opened: (title: string) => `Opened ${title}.`,
  savedAs: (name: string) => `Saved as ${name}.`,
  cannotOpen: (name: string, why: string) => `${name} was not opened, and your notebook is as it was. ${why}`,
  cannotRead: (name: string) => `${name} could not be read. Check that it is still there, and try again.`,
  cannotSave: (why: string) => `The notebook was not saved. ${why}`,
  saveFailed: "The file could not be written. Try another place or name.",
  demoMissing:
    "The notebook that comes with Spanwise could not be loaded. Open one of your own, or load the page again.",
  dismiss: "Dismiss",
  unsavedHeading: "Save your changes first?",
  unsavedText: (title: string) =>
    `“${title}” has changes that are in no file yet. Opening another notebook drops them.`,
  saveFirst: "Save, then open",
  dropChanges: "Open without saving",
  stay: "Keep this one open",

  // Cells
  editFormula: (name: string) => `edit formula of ${name}`,
  formulaOf: (name: string) => `formula of ${name}`,
  valueOf: (name: string) => `value of ${name}`,
  slide: (name: string) => `slide ${name}`,
  reasonOf: (name: string) => `reason of ${name}`,
  editReason: (name: string) => `edit reason of ${name}`,
  addReason: "say why",
  note: "note",
  textOfNote: "text of note",
  editNote: "edit note",
  emptyNote: "An empty note",
  decision: "decision",
  insteadOf: "instead of",
  lookAgain: "look again",
  question: (about: string) => `question about ${about}`,
  drawingOf: (of: string) => `drawing of ${of}`,
  chart: (title: string) => `chart of ${title}`,
  showOnBoard: "show on the board",
  functionOf: (parameters: readonly string[]) => `a function of ${parameters.join(", ")}`,
  noValue: "no value",
  waiting: "waits",
  pending: "…",
  emptyFormula: "no formula yet",

  // Change since the notebook was opened
  onBaseline: "on the baseline",
  baseline: "as opened",
  changed: (by: string) => `changed by ${by} since it was opened`,
  heldBefore: "held before",
  failedBefore: "failed before",

  // Checks
  holds: "holds",
  fails: "fails",
  failsBy: (gap: string) => `by ${gap}`,
  toSpare: (gap: string) => `${gap} to spare`,

  // Tables
  entry: (table: string, row: number, column: string) => `${table} row ${row} ${column}`,
  editEntry: (table: string, row: number, column: string) => `edit ${table} row ${row} ${column}`,
  columnHead: (column: string) => column.replaceAll("_", " "),
  addRow: "add a row",
  removeRow: (row: number) => `remove row ${row}`,

  // The board
  emptyBoard: "Drawings and charts of this notebook stand here.",
  frontView: "Front view",
  tradeOff: "Trade-off",
  tradeOffOf: (sweep: string) => `${sweep} over its range`,
  unknownView: (view: string, known: readonly string[]) =>
    `There is no view named “${view}”. Known here: ${known.join(", ")}.`,
  notAWing: (of: string) => `A front view shows a wing; ${of} is none. Name a cell that calls wing(…).`,
  chartNeeds: "A trade-off chart needs three names: the given to sweep, x, and at least one y.",
  nothingToDraw: "Nothing can be drawn over this range: every point of it has an error.",
  cannotDraw: "This could not be drawn.",

  // Completion
  kinds: { cell: "cell", function: "function", constant: "constant" },
} as const;
