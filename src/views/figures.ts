/** The one list of drawings and charts: how each takes what it shows from the cells. */
import type { ChartCell, DrawingCell, StudyCell } from "../cells/index.ts";
import type { FigureContext, FigureMaker, Made } from "./figure.ts";
import { frontViewFigure } from "./front-view-figure.ts";
import { planViewFigure, sideViewFigure } from "./glider-figure.ts";
import { recordChartFigures } from "./record-chart-figure.ts";
import { words } from "./words.ts";

/** What draws it is a piece of its own, which comes with the first such chart. */
const tradeOff: FigureMaker<ChartCell> = async (context) =>
  (await import("./trade-off-figure.ts")).tradeOffFigure(context);

/** Drawings of what is built load with the first of them. */
const loadBuild = () => import("./build-figure.ts");

const drawings: Readonly<Record<string, FigureMaker<DrawingCell>>> = {
  front: frontViewFigure,
  plan: planViewFigure,
  side: sideViewFigure,
  joint: async (context) => (await loadBuild()).jointFigure(context),
  jig: async (context) => (await loadBuild()).partsFigure(context),
  blank: async (context) => (await loadBuild()).partsFigure(context),
};
const charts: Readonly<Record<string, FigureMaker<ChartCell>>> = { trade_off: tradeOff, ...recordChartFigures };

/** What a study comes to, drawn by a piece of its own as well. */
const studyFigure: FigureMaker<StudyCell> = async (context) => (await import("./study-figure.ts")).studyFigure(context);

/** The views that a drawing or a chart can have. */
export const viewsOf = (kind: "drawing" | "chart"): readonly string[] =>
  Object.keys(kind === "drawing" ? drawings : charts);

/** The figure of a cell, by its view; later, where what draws it has to load first. */
export function makeFigure(context: FigureContext): Made | Promise<Made> {
  const { cell } = context;
  if (cell.kind === "study") return studyFigure(context as FigureContext<StudyCell>);
  const known = cell.kind === "drawing" ? drawings : charts;
  if (!Object.hasOwn(known, cell.view)) return words.unknownView(cell.view, Object.keys(known));
  const make = known[cell.view] as FigureMaker<DrawingCell | ChartCell>;
  return make(context as FigureContext<DrawingCell | ChartCell>);
}
