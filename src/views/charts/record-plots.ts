/** How each chart of one result draws its record, over what that was at first where it has moved. */
import type { Flow, LateralModes, LongitudinalModes, Recovery, SinkPolar } from "../../library/index.ts";
import { flightHistoryPlot } from "./flight-history.ts";
import { type ModesShown, modesPlot } from "./modes-plot.ts";
import type { Curve, PlotData, PlotPanel, Spot } from "./plot-data.ts";
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

/**
 * A plot with what others have as a ghost in it as a line for comparison under its name, and where they have points their
 * points, of each line the first named.
 */
export function withLines(
  plot: PlotData,
  lines: readonly { readonly name: string; readonly plot: PlotData }[],
): PlotData {
  if (lines.length === 0) return plot;
  const panels = plot.panels.map((panel, index): PlotPanel => {
    const others = lines.map(({ name, plot: { panels: its } }) => ({ name, panel: its[index] }));
    const curves = others.flatMap(({ name, panel: its }) =>
      (its?.curves ?? [])
        .filter(({ look }) => look === "ghost")
        .map((curve, place): Curve => ({ ...curve, look: "aside", ...(place === 0 && { name }) })),
    );
    const spots = others.flatMap(({ name, panel: its }) =>
      (its?.spots ?? [])
        .filter(({ look }) => look === "before")
        .map((spot, place): Spot => ({ ...spot, text: place === 0 ? name : "" })),
    );
    return { ...panel, curves: [...curves, ...panel.curves], spots: [...spots, ...(panel.spots ?? [])] };
  });
  const names = lines.map(({ name }) => name).join(", ");
  return { ...plot, panels, description: () => `${plot.description()} Beside it, thin: ${names}.` };
}

/** The plot of a view that takes one type of record. */
function plotOf<Value>(plot: (value: Value, before?: Value) => PlotData): RecordPlot {
  return (_, value, before) => plot(value as Value, before as Value | undefined);
}

function modesIn(type: string, value: unknown): ModesShown {
  if (type === "longitudinal_modes") return { longitudinal: value as LongitudinalModes };
  if (type === "lateral_modes") return { lateral: value as LateralModes };
  return value as ModesShown;
}
