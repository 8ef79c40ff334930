import type { PinnedCell, SheetCell } from "../cells/index.ts";
import { recordChartWords } from "./record-chart-words.ts";
import { words } from "./words.ts";

/** The title of a figure: its own, else one by its view. */
export function figureTitle(cell: PinnedCell): string {
  return cell.title ?? (cell.kind === "study" ? words.studies[cell.study] : titleOfView(cell.view));
}

/** The title of a figure without one of its own. */
export const titleOfView = (view: string): string => defaultTitles[view] ?? view;

/** The title of a sheet: its own, else, where it has none or one of blanks only, by what it has. */
export const sheetTitle = ({ title, of }: SheetCell): string => (title?.trim() ? title : `Sheet of ${of}`);

/** What a figure shows, in a few words beside its title. */
export function showsOf(cell: PinnedCell): string {
  if (cell.kind === "study") return cell.name;
  if (cell.kind === "drawing") return cell.of;
  if (cell.of !== undefined) return cell.of;
  return cell.sweep === undefined ? "" : words.tradeOffOf(cell.sweep);
}

const defaultTitles: Readonly<Record<string, string>> = {
  front: words.frontView,
  plan: words.planView,
  side: words.sideView,
  joint: words.jointView,
  jig: words.jigView,
  blank: words.blankView,
  trade_off: words.tradeOff,
  ...recordChartWords.titles,
};
