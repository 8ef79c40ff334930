/** A trade-off chart as marks. */
import { checkOptions, layer, type Mark, mark, round, textMark } from "../drawings/sketch.ts";
import { labelMarks, leaderStrokes, strokeMarks } from "../drawings/strokes.ts";
import { estimateWidth, type Measure } from "../drawings/text-size.ts";
import type { Choice } from "./choices.ts";
import { axisTexts, noteText } from "./trade-off-axes.ts";
import type { TradeOffData } from "./trade-off-data.ts";
import { panelParts, pointMark } from "./trade-off-panel.ts";
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

/** A chart at a moment. */
export interface TradeOffState {
  readonly data: TradeOffData;
  readonly options: TradeOffOptions;
  /** The point in focus, and the one under the pointer. */
  readonly focus: Choice | null;
  readonly under: Choice | null;
}

/** The whole chart as marks, and where its points lie, panel by panel. */
export function sketchTradeOff({ data, options, focus, under }: TradeOffState) {
  checkOptions(options, known, "trade-off chart");
  checkData(data);
  const { title = tradeOffTitle(data), width = 660, panelHeight, onChoose, measure = estimateWidth } = options;
  const sheet = tradeOffSheet(data, Math.max(240, width), panelHeight, measure);
  const panels = sheet.panels.map((panel) => panelParts(panel, data, sheet, measure));
  const inHand = under ?? focus;
  const stop = focus ?? { panel: 0, index: presentIndex(data) };
  const point = inHand && data.points[inHand.index];
  const nameOf = pointNames(data);
  const told = point && inHand ? nameOf(point, inHand.panel) : null;
  const layers = [
    layer(
      "area-layer",
      panels.flatMap(({ areas }) => areas),
    ),
    layer("grid-layer", strokeMarks(panels.flatMap(({ grid }) => grid))),
    layer("limit-layer", strokeMarks(panels.flatMap(({ limits }) => limits))),
    layer(
      "curve-layer",
      panels.map(({ curve }) => curve),
    ),
    layer("leader-layer", strokeMarks(panels.flatMap(({ labels }) => leaderStrokes(labels)))),
    layer(
      "choice-layer",
      panels.flatMap(({ spots, radius }) =>
        spots.map((spot, index) =>
          choiceMark(spot, radius, {
            name: nameOf(spot.point, spot.panel),
            isPresent: data.present !== null && Math.abs(spot.point.value - data.present.value) < 1e-12,
            isStop: isSame(stop, { panel: spot.panel, index }),
            isNear: isSame(inHand, { panel: spot.panel, index }),
          }),
        ),
      ),
    ),
    layer(
      "design-layer",
      panels.flatMap(({ designs }) => designs),
    ),
    layer(
      "figure-layer",
      panels.flatMap(({ labels }) => labelMarks(labels)),
    ),
    layer("axis-layer", axisTexts(data, sheet, measure)),
    layer("note-layer", noteText(data, sheet, told, onChoose ? hint : "", measure)),
  ];
  const attributes = {
    class: "drawing trade-off",
    role: "figure",
    width: sheet.width,
    height: sheet.height,
    viewBox: `0 0 ${sheet.width} ${sheet.height}`,
  };
  const words = [textMark("title", {}, title), textMark("desc", {}, tradeOffWords(data))];
  return { mark: mark("svg", attributes, [...words, ...layers]), spots: panels.map(({ spots }) => spots) };
}

function checkData({ points, present, baseline, y }: TradeOffData): void {
  for (const point of [...points, present, baseline]) {
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

interface ChoiceState {
  readonly name: string;
  readonly isPresent: boolean;
  /** True where the Tab key reaches it, and where it is in focus or under the pointer. */
  readonly isStop: boolean;
  readonly isNear: boolean;
}

/** A target as large as a finger needs, with the point in it. */
function choiceMark(spot: Spot, radius: number, { name, isPresent, isStop, isNear }: ChoiceState): Mark {
  const attributes = {
    class: isNear ? "choice near" : "choice",
    transform: `translate(${round(spot.x)},${round(spot.y)})`,
    role: "button",
    tabindex: isStop ? 0 : -1,
    "aria-label": name,
    "aria-current": isPresent ? "true" : undefined,
  };
  return mark("g", attributes, [mark("rect", target), pointMark(spot, radius)]);
}

const target = { class: "target", x: -12, y: -12, width: 24, height: 24, rx: 5 };

/** True for one and the same point, or none twice. */
export const isSame = (a: Choice | null, b: Choice | null): boolean => a?.panel === b?.panel && a?.index === b?.index;
