/** Charts of one result, such as a flight: each takes a record of its kind, and draws it over what it was at first. */
import type { ChartCell } from "../cells/index.ts";
import type { Flow, LateralModes, LongitudinalModes, Recovery, SinkPolar } from "../library/index.ts";
import { flightHistoryPlot } from "./charts/flight-history.ts";
import { type ModesShown, modesPlot } from "./charts/modes-plot.ts";
import { livePlot, type PlotOptions } from "./charts/plot.ts";
import type { PlotData } from "./charts/plot-data.ts";
import { sinkPolarPlot } from "./charts/sink-polar.ts";
import { spanLoadingPlot } from "./charts/span-loading.ts";
import type { Figure, FigureContext, FigureMaker } from "./figure.ts";
import { liveFigure } from "./live-figure.ts";
import { recordChartWords } from "./record-chart-words.ts";
import { sameValue } from "./same-value.ts";
import { words } from "./words.ts";

/** What a chart of a record draws: the types of record that it takes, what makes them, and how it draws one. */
interface RecordChart {
  readonly takes: readonly string[];
  readonly made: string;
  plot(type: string, value: unknown, before: unknown): PlotData;
}

/** A chart that takes one type of record. */
const chartOf = <Value>(type: string, made: string, plot: (value: Value, before?: Value) => PlotData): RecordChart => ({
  takes: [type],
  made,
  plot: (_, value, before) => plot(value as Value, before as Value | undefined),
});

const charts: Readonly<Record<string, RecordChart>> = {
  span_loading: chartOf<Flow>("flow", "flow(…)", spanLoadingPlot),
  sink_polar: chartOf<SinkPolar>("sink_polar", "sink_polar(…)", sinkPolarPlot),
  modes: {
    takes: ["modes", "longitudinal_modes", "lateral_modes"],
    made: "modes(…)",
    plot: (type, value, before) => modesPlot(modesIn(type, value), before ? modesIn(type, before) : undefined),
  },
  flight_history: chartOf<Recovery>("recovery", "recovery(…) or release(…)", flightHistoryPlot),
};

/** The makers of these charts, by view. */
export const recordChartFigures: Readonly<Record<string, FigureMaker<ChartCell>>> = Object.fromEntries(
  Object.entries(charts).map(([view, chart]) => [view, (context) => figureOf(chart, context)]),
);

/** The types of record that a view can show; undefined for a view that shows no record. */
export const recordsOf = (view: string): readonly string[] | undefined =>
  Object.hasOwn(charts, view) ? charts[view]?.takes : undefined;

function figureOf(chart: RecordChart, first: FigureContext<ChartCell>): Figure | string {
  return liveFigure(first, livePlot, ({ desk, cell, result, width, height, measure }) => {
    const part = result.parts?.at(-1);
    if (cell.of === undefined || !part?.ok) return recordChartWords.needs(chart.made);
    const { shape, value } = part;
    if (shape.kind !== "record" || shape.type === null || !chart.takes.includes(shape.type)) {
      return recordChartWords.needs(chart.made);
    }
    const before = desk.baseline.result(cell.id)?.parts?.at(-1);
    const moved = before?.ok && !sameValue(before.value, value) ? before.value : undefined;
    const { title, ...data } = chart.plot(shape.type, value, moved);
    const options: PlotOptions = { width, height: height ?? undefined, measure };
    const named = {
      ...data,
      title: cell.title ?? `${title} of ${cell.of}`,
      before: moved === undefined ? undefined : words.baseline,
    };
    return [named, options] as const;
  });
}

function modesIn(type: string, value: unknown): ModesShown {
  if (type === "longitudinal_modes") return { longitudinal: value as LongitudinalModes };
  if (type === "lateral_modes") return { lateral: value as LateralModes };
  return value as ModesShown;
}
