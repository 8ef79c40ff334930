/** Charts of what a glider does in the air: Plover, and Plover with flatter tips as it was before. */
import type { Flow, Glider, LateralModes, LongitudinalModes, Recovery, SinkPolar } from "../../library/index.ts";
import type { Example } from "../drawings/example.ts";
import { made, plover, ploverBefore } from "../drawings/example-gliders.ts";
import { flightHistoryPlot } from "./flight-history.ts";
import { type ModesShown, modesPlot } from "./modes-plot.ts";
import type { PlotOptions } from "./plot.ts";
import type { PlotData } from "./plot-data.ts";
import { sinkPolarPlot } from "./sink-polar.ts";
import { spanLoadingPlot } from "./span-loading.ts";

type PlotExample = Example<PlotData, PlotOptions>;

/** The lift along the wing, as it is and with flatter tips. */
export const spanLoadingExamples: readonly PlotExample[] = [
  { title: "the lift along a bent wing", data: spanLoadingPlot(flowOf(plover)), options: {} },
  {
    title: "the same, held against flatter tips",
    data: { ...spanLoadingPlot(flowOf(plover, 6), flowOf(ploverBefore)), before: "the baseline" },
    options: {},
  },
];

export const sinkPolarExamples: readonly PlotExample[] = [
  { title: "sink over speed", data: sinkPolarPlot(polarOf(plover)), options: {} },
  {
    title: "the same, held against another",
    data: { ...sinkPolarPlot(polarOf(plover), polarOf(ploverBefore)), before: "the baseline" },
    options: {},
  },
];

export const modesExamples: readonly PlotExample[] = [
  {
    title: "all modes, held against others",
    data: { ...modesPlot(modesOf(plover), modesOf(ploverBefore)), before: "the baseline" },
    options: {},
  },
  { title: "one group alone", data: modesPlot({ lateral: modesOf(ploverBefore).lateral }), options: {} },
];

export const flightHistoryExamples: readonly PlotExample[] = [
  {
    title: "let go in a bank of 30 deg",
    data: { ...flightHistoryPlot(recoveryOf(plover), recoveryOf(ploverBefore)), before: "the baseline" },
    options: {},
  },
  { title: "let go upside down", data: flightHistoryPlot(recoveryOf(plover, 170)), options: {} },
];

function flowOf(glider: Glider, degrees = 4): Flow {
  return made("flow", { glider, angle_of_attack: (degrees * Math.PI) / 180, camber: 0.021 });
}

function polarOf(glider: Glider): SinkPolar {
  return made("sink_polar", { glider, shape: "flat-bottomed" });
}

function modesOf(glider: Glider): ModesShown & { longitudinal: LongitudinalModes; lateral: LateralModes } {
  return made("modes", { glider, shape: "flat-bottomed" });
}

function recoveryOf(glider: Glider, degrees = 30): Recovery {
  return made("recovery", { glider, shape: "flat-bottomed", bank: (degrees * Math.PI) / 180 });
}
