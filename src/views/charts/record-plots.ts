/** How each chart of one result draws its record, over what that was at first where it has moved. */
import type { Flow, LateralModes, LongitudinalModes, Recovery, SinkPolar } from "../../library/index.ts";
import { flightHistoryPlot } from "./flight-history.ts";
import { type ModesShown, modesPlot } from "./modes-plot.ts";
import type { PlotData } from "./plot-data.ts";
import { sinkPolarPlot } from "./sink-polar.ts";
import { spanLoadingPlot } from "./span-loading.ts";

export { livePlot, type PlotOptions } from "./plot.ts";

/** By view: takes the type of the record, its value, and what it was. */
export type RecordPlot = (type: string, value: unknown, before: unknown) => PlotData;

export const recordPlots: Readonly<Record<string, RecordPlot>> = {
  span_loading: plotOf<Flow>(spanLoadingPlot),
  sink_polar: plotOf<SinkPolar>(sinkPolarPlot),
  modes: (type, value, before) => modesPlot(modesIn(type, value), before ? modesIn(type, before) : undefined),
  flight_history: plotOf<Recovery>(flightHistoryPlot),
};

/** The plot of a view that takes one type of record. */
function plotOf<Value>(plot: (value: Value, before?: Value) => PlotData): RecordPlot {
  return (_, value, before) => plot(value as Value, before as Value | undefined);
}

function modesIn(type: string, value: unknown): ModesShown {
  if (type === "longitudinal_modes") return { longitudinal: value as LongitudinalModes };
  if (type === "lateral_modes") return { lateral: value as LateralModes };
  return value as ModesShown;
}
