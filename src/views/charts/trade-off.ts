/**
 * What one given buys and costs: the given swept over its range, one or more quantities against another, a panel each.
 * Any of its points can be chosen, by pointer or keyboard.
 */
import type { LiveDrawing, Surroundings } from "../drawings/sketch.ts";
import { liveChart } from "./live-chart.ts";
import { allPoints, type TradeOffData } from "./trade-off-data.ts";
import { sketchTradeOff, type TradeOffOptions } from "./trade-off-sketch.ts";

export type { Allowed, FurtherCurve, Quantity, SweepPoint, TradeOffData } from "./trade-off-data.ts";
export type { TradeOffOptions } from "./trade-off-sketch.ts";

/** Draws a trade-off chart. Throws on an option it does not know and on a point without a place for each quantity. */
export const tradeOff = (data: TradeOffData, options: TradeOffOptions, surroundings: Surroundings): SVGSVGElement =>
  liveTradeOff(data, options, surroundings).element;

/** Draws a trade-off chart that follows new data in place and keeps the point in focus. */
export const liveTradeOff = (
  data: TradeOffData,
  options: TradeOffOptions,
  surroundings: Surroundings,
): LiveDrawing<TradeOffData, TradeOffOptions> =>
  liveChart(
    sketchTradeOff,
    ({ index }, state) => {
      const point = allPoints(state.data)[index];
      if (point) state.options.onChoose?.(point.value);
    },
    data,
    options,
    surroundings,
  );
