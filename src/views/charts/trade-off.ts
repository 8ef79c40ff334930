/**
 * What one given buys and costs: the given swept over its range, one or more quantities against another, a panel each.
 * Any of its points can be chosen, by pointer or keyboard.
 */
import {
  checkOptions,
  type LiveDrawing,
  layer,
  liveDrawing,
  type Mark,
  mark,
  round,
  type Surroundings,
  textMark,
} from "../drawings/sketch.ts";
import { labelMarks, leaderStrokes, strokeMarks } from "../drawings/strokes.ts";
import { estimateWidth, type Measure } from "../drawings/text-size.ts";
import { type Choice, choiceByKey, choiceNear } from "./choices.ts";
import { axisTexts, noteText } from "./trade-off-axes.ts";
import type { TradeOffData } from "./trade-off-data.ts";
import { panelParts, pointMark } from "./trade-off-panel.ts";
import { type Spot, tradeOffSheet } from "./trade-off-sheet.ts";
import { pointName, tradeOffTitle, tradeOffWords } from "./trade-off-words.ts";

export type { Allowed, Quantity, SweepPoint, TradeOffData } from "./trade-off-data.ts";

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

/** Draws a trade-off chart. Throws on an option it does not know and on a point without a place for each quantity. */
export const tradeOff = (data: TradeOffData, options: TradeOffOptions, surroundings: Surroundings): SVGSVGElement =>
  liveTradeOff(data, options, surroundings).element;

/** Draws a trade-off chart that follows new data in place and keeps the point in focus. */
export function liveTradeOff(
  data: TradeOffData,
  options: TradeOffOptions,
  surroundings: Surroundings,
): LiveDrawing<TradeOffData, TradeOffOptions> {
  let state: State = { data, options, focus: null, under: null };
  let spots: readonly (readonly Spot[])[] = [];
  const sketch = (shown: State): Mark => {
    const sketched = sketchTradeOff(shown);
    spots = sketched.spots;
    return sketched.mark;
  };
  const drawing = liveDrawing(sketch, state, undefined, surroundings);
  const { element } = drawing;
  const show = (change: Partial<State>): void => {
    state = { ...state, ...change };
    drawing.update(state, undefined);
  };
  const choices = () => [...element.querySelectorAll<SVGElement>(".choice")];
  const choiceOf = (target: EventTarget | null): Choice | null => {
    const index = choices().findIndex((choice) => choice.contains(target as Node | null));
    const count = state.data.points.length;
    return index < 0 ? null : { panel: Math.floor(index / count), index: index % count };
  };
  const under = ({ clientX, clientY }: MouseEvent): Choice | null => {
    const box = element.getBoundingClientRect();
    const scale = Number(element.getAttribute("width")) / box.width;
    return choiceNear(spots, { x: (clientX - box.left) * scale, y: (clientY - box.top) * scale });
  };
  const choose = (choice: Choice | null): void => {
    const point = choice && state.data.points[choice.index];
    if (point) state.options.onChoose?.(point.value);
  };

  // A click that no pointer made, as from a screen reader, says by itself which point it means.
  element.addEventListener("click", (event) => choose(event.detail === 0 ? choiceOf(event.target) : under(event)));
  element.addEventListener("pointermove", (event) => {
    const next = under(event);
    if (!isSame(next, state.under)) show({ under: next });
  });
  element.addEventListener("pointerleave", () => show({ under: null }));
  element.addEventListener("focusin", (event) => show({ focus: choiceOf(event.target) }));
  element.addEventListener("focusout", () => show({ focus: null }));
  element.addEventListener("keydown", (event) => {
    const from = choiceOf(event.target);
    if (!from || event.altKey || event.ctrlKey || event.metaKey) return;
    const { points, y } = state.data;
    const to = choiceByKey(event.key, from, y.length, points.length);
    if (to) choices()[to.panel * points.length + to.index]?.focus();
    else if (event.key === "Enter" || event.key === " ") choose(from);
    else return;
    event.preventDefault();
  });
  return { element, update: (nextData, nextOptions) => show({ data: nextData, options: nextOptions }) };
}

const known = { title: true, width: true, panelHeight: true, onChoose: true, measure: true } as const;
const hint = "choose a point to take its value";

interface State {
  readonly data: TradeOffData;
  readonly options: TradeOffOptions;
  /** The point in focus, and the one under the pointer. */
  readonly focus: Choice | null;
  readonly under: Choice | null;
}

function sketchTradeOff({ data, options, focus, under }: State) {
  checkOptions(options, known, "trade-off chart");
  checkData(data);
  const { title = tradeOffTitle(data), width = 660, panelHeight, onChoose, measure = estimateWidth } = options;
  const sheet = tradeOffSheet(data, Math.max(240, width), panelHeight, measure);
  const panels = sheet.panels.map((panel) => panelParts(panel, data, sheet, measure));
  const inHand = under ?? focus;
  const stop = focus ?? { panel: 0, index: presentIndex(data) };
  const point = inHand && data.points[inHand.index];
  const told = point && inHand ? pointName(point, inHand.panel, data) : null;
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
          choiceMark(spot, radius, data, {
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

/** A target as large as a finger needs, with the point in it. */
function choiceMark(
  spot: Spot,
  radius: number,
  data: TradeOffData,
  { isStop, isNear }: { readonly isStop: boolean; readonly isNear: boolean },
): Mark {
  const isPresent = data.present !== null && Math.abs(spot.point.value - data.present.value) < 1e-12;
  const attributes = {
    class: isNear ? "choice near" : "choice",
    transform: `translate(${round(spot.x)},${round(spot.y)})`,
    role: "button",
    tabindex: isStop ? 0 : -1,
    "aria-label": pointName(spot.point, spot.panel, data),
    "aria-current": isPresent ? "true" : undefined,
  };
  return mark("g", attributes, [mark("rect", target), pointMark(spot, radius)]);
}

const target = { class: "target", x: -12, y: -12, width: 24, height: 24, rx: 5 };

const isSame = (a: Choice | null, b: Choice | null): boolean => a?.panel === b?.panel && a?.index === b?.index;
