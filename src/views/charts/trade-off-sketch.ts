/** A trade-off chart as marks. */

import { checkOptions, later, layer, type Mark, mark, textMark } from "../drawings/sketch.ts";
import { labelMarks, leaderStrokes, strokeMarks } from "../drawings/strokes.ts";
import { estimateWidth, type Measure } from "../drawings/text-size.ts";
import { choiceLayer } from "./choice-layer.ts";
import type { Choice } from "./choices.ts";
import { curveClass } from "./curve-class.ts";
import type { ChartState, SketchedChart } from "./live-chart.ts";
import { type LegendItem, legendMarks } from "./studies/legend.ts";
import { bandName } from "./studies/study-chart.ts";
import { noteText, tradeOffAxes } from "./trade-off-axes.ts";
import { allPoints, type SweepPoint, type TradeOffData } from "./trade-off-data.ts";
import { panelParts } from "./trade-off-panel.ts";
import { type Spot, tradeOffSheet } from "./trade-off-sheet.ts";
import { pointNames, tradeOffTitle, tradeOffWords } from "./trade-off-words.ts";

/** How a trade-off chart is drawn. */
export interface TradeOffOptions {
  /** Its name; what is drawn against what unless said. */
  readonly title?: string | undefined;
  /** Width of the sheet in px, 660 unless said, at least 240. */
  readonly width?: number;
  /** Height of each panel's field in px; by the width unless said. */
  readonly panelHeight?: number | undefined;
  /** Called with the swept value, in SI, of a point that was chosen. Without it points only tell their values. */
  readonly onChoose?: ((value: number) => void) | undefined;
  /** How wide texts are; an estimate for the font of the page unless said. */
  readonly measure?: Measure;
}

const known = { title: true, width: true, panelHeight: true, onChoose: true, measure: true } as const;
const hint = "choose a point to take its value";

/** The whole chart as marks, and where its points lie, panel by panel. */
export function sketchTradeOff({
  data,
  options,
  focus,
  under,
}: ChartState<TradeOffData, TradeOffOptions>): SketchedChart {
  checkOptions(options, known, "trade-off chart");
  checkData(data);
  const { title = tradeOffTitle(data), width = 660, panelHeight, onChoose, measure = estimateWidth } = options;
  const sheet = tradeOffSheet(data, Math.max(240, width), panelHeight, measure);
  const inHand = under ?? focus;
  const nearIn = (panel: number): number | null => (inHand?.panel === panel ? inHand.index : null);
  const panels = sheet.panels.map((panel) => panelParts(panel, data, sheet, measure, nearIn(panel.index)));
  const spots = panels.map((panel) => panel.spots);
  const told = inHand ? pointNames(data)(inHand.index, inHand.panel) : null;
  const legend = legendMarks(legendOf(data), { left: 4, right: sheet.right, top: sheet.height - 6 }, measure);
  const height = legend.marks.length === 0 ? sheet.height : Math.ceil(legend.bottom + 4);
  const layers = [
    layer(
      "area-layer",
      panels.flatMap(({ areas }) => areas),
    ),
    layer("grid-layer", strokeMarks(panels.flatMap(({ grid }) => grid))),
    layer("limit-layer", strokeMarks(panels.flatMap(({ limits }) => limits))),
    layer(
      "curve-layer",
      panels.flatMap(({ curves }) => curves),
    ),
    layer("leader-layer", strokeMarks(panels.flatMap(({ labels }) => leaderStrokes(labels)))),
    layer(
      "point-layer",
      panels.map(({ points }) => mark("g", {}, points)),
    ),
    layer(
      "design-layer",
      panels.flatMap(({ designs }) => designs),
    ),
    layer(
      "figure-layer",
      panels.flatMap(({ labels }) => labelMarks(labels)),
    ),
    layer("axis-layer", tradeOffAxes(data, sheet, measure)),
    ...(legend.marks.length > 0 ? [layer("legend-layer", legend.marks)] : []),
    layer("note-layer", noteText(data, sheet, told, onChoose ? hint : "", measure)),
    later("g", () => choicesOf(spots, data, focus)),
  ];
  const attributes = {
    class: "drawing trade-off",
    role: "figure",
    width: sheet.width,
    height,
    viewBox: `0 0 ${sheet.width} ${height}`,
  };
  const words = [textMark("title", {}, title), later("desc", () => textMark("desc", {}, tradeOffWords(data)))];
  return { mark: mark("svg", attributes, [...words, ...layers]), spots };
}

/** What is drawn how, where there are several curves or a band. */
function legendOf({ curve = "", further = [], band, present }: TradeOffData): LegendItem[] {
  const curves = further.length === 0 ? [] : [curve, ...further.map(({ name }) => name)];
  return [
    ...curves.map((text, index): LegendItem => ({ sample: "line", class: curveClass(index), text })),
    ...(band !== undefined && present ? [{ sample: "area", class: "band", text: bandName } as const] : []),
  ];
}

function checkData({ present, baseline, marked = [], y, ...data }: TradeOffData): void {
  for (const point of [...allPoints(data), present, baseline, ...marked]) {
    if (point && point.y.length !== y.length) {
      throw new Error(`got a point with ${point.y.length} values in a chart of ${y.length}, expected one for each`);
    }
  }
}

/** The point of the present design, else the one nearest to it by value, else the first. */
function presentIndex({ points, present }: TradeOffData): number {
  if (!present) return 0;
  const away = points.map(({ value }) => Math.abs(value - present.value));
  return Math.max(0, away.indexOf(Math.min(...away)));
}

/** A target for each point; the Tab key reaches the one in focus, else the present design. */
function choicesOf(spots: readonly (readonly Spot[])[], data: TradeOffData, focus: Choice | null): Mark {
  const nameOf = pointNames(data);
  const isCurrent = ({ value }: SweepPoint) => data.present !== null && Math.abs(value - data.present.value) < 1e-12;
  const targets = spots.map((panelSpots, panel) =>
    panelSpots.map(({ x, y, point }, index) => ({ x, y, name: nameOf(index, panel), isCurrent: isCurrent(point) })),
  );
  return choiceLayer(targets, focus ?? { panel: 0, index: presentIndex(data) });
}
