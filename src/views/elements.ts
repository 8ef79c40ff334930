import { App } from "./app.ts";
import { Bar } from "./bar.ts";
import { Board } from "./board.ts";
import { DecisionCellView } from "./decision-cell.ts";
import { FigureCellView } from "./figure-cell.ts";
import { FormulaCell } from "./formula-cell.ts";
import { FormulaEntry } from "./formula-entry.ts";
import { ReadingBanner } from "./keeping/reading-banner.ts";
import { NoteCellView } from "./note-cell.ts";
import { Notice } from "./notice.ts";
import { Page } from "./page.ts";
import { QuestionCellView } from "./question-cell.ts";
import { Sheet } from "./sheet.ts";
import { SheetCellView } from "./sheet-cell.ts";
import { StudyCellView } from "./study-cell.ts";
import { TableCellView } from "./table-cell.ts";

/** The one list of our elements. */
const elements: readonly (readonly [string, CustomElementConstructor])[] = [
  ["spanwise-app", App as unknown as CustomElementConstructor],
  ["spanwise-bar", Bar],
  ["spanwise-page", Page],
  ["spanwise-board", Board],
  ["spanwise-sheet", Sheet],
  ["spanwise-formula-cell", FormulaCell],
  ["spanwise-table-cell", TableCellView],
  ["spanwise-note-cell", NoteCellView],
  ["spanwise-decision-cell", DecisionCellView],
  ["spanwise-question-cell", QuestionCellView],
  ["spanwise-figure-cell", FigureCellView],
  ["spanwise-study-cell", StudyCellView],
  ["spanwise-sheet-cell", SheetCellView],
  ["spanwise-formula-entry", FormulaEntry],
  ["spanwise-notice", Notice],
  ["spanwise-reading", ReadingBanner],
];

/** Makes our elements known to the page. */
export function defineElements(): void {
  for (const [name, element] of elements) customElements.define(name, element);
}
