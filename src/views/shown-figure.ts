/** A figure as it stands on the screen, and what it is drawn from. */
import type { Outcome } from "../cells/index.ts";
import type { PlotData } from "./charts/plot-data.ts";
import type { TradeOffData } from "./charts/trade-off-data.ts";
import type { Desk } from "./desk.ts";

/** What a chart is drawn from, told apart by its sort; drawings have none. */
export type FigureNumbers =
  | { readonly sort: "trade-off"; readonly data: TradeOffData }
  | { readonly sort: "plot"; readonly data: PlotData }
  | { readonly sort: "study"; readonly data: Outcome };

/** A figure as it stands on the screen. */
export interface ShownFigure {
  readonly desk: Desk;
  readonly element: SVGSVGElement;
  readonly title: string;
  /** What it shows, beside the title. */
  readonly shows: string;
  readonly numbers: FigureNumbers | null;
}
