/**
 * What one given buys and costs: the given swept over its range, one or more quantities against another, a panel each.
 * Any of its points can be chosen, by pointer or keyboard.
 */
import { type LiveDrawing, liveDrawing, type Mark, type Surroundings } from "../drawings/sketch.ts";
import { type Choice, choiceByKey, choiceNear } from "./choices.ts";
import type { TradeOffData } from "./trade-off-data.ts";
import type { Spot } from "./trade-off-sheet.ts";
import { isSame, sketchTradeOff, type TradeOffOptions, type TradeOffState } from "./trade-off-sketch.ts";

export type { Allowed, Quantity, SweepPoint, TradeOffData } from "./trade-off-data.ts";
export type { TradeOffOptions } from "./trade-off-sketch.ts";

/** Draws a trade-off chart. Throws on an option it does not know and on a point without a place for each quantity. */
export const tradeOff = (data: TradeOffData, options: TradeOffOptions, surroundings: Surroundings): SVGSVGElement =>
  liveTradeOff(data, options, surroundings).element;

/** Draws a trade-off chart that follows new data in place and keeps the point in focus. */
export function liveTradeOff(
  data: TradeOffData,
  options: TradeOffOptions,
  surroundings: Surroundings,
): LiveDrawing<TradeOffData, TradeOffOptions> {
  let state: TradeOffState = { data, options, focus: null, under: null };
  let spots: readonly (readonly Spot[])[] = [];
  const sketch = (shown: TradeOffState): Mark => {
    const sketched = sketchTradeOff(shown);
    spots = sketched.spots;
    return sketched.mark;
  };
  const drawing = liveDrawing(sketch, state, undefined, surroundings);
  const { element } = drawing;
  const show = (change: Partial<TradeOffState>, whenIdle?: (act: () => void) => void): void => {
    state = { ...state, ...change };
    drawing.update(state, undefined, whenIdle);
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
  const focusOn = ({ panel, index }: Choice): void => choices()[panel * state.data.points.length + index]?.focus();

  // A click that no pointer made, as from a screen reader, says by itself which point it means. By pointer it is the
  // nearest, which need not be the one whose target lies on top.
  element.addEventListener("click", (event) => {
    const choice = event.detail === 0 ? choiceOf(event.target) : under(event);
    if (choice) focusOn(choice);
    choose(choice);
  });
  element.addEventListener("pointermove", (event) => {
    const next = under(event);
    if (!isSame(next, state.under)) show({ under: next });
  });
  element.addEventListener("pointerleave", () => show({ under: null }));
  // What was done last counts: a pointer that rests on a point gives way to the keyboard.
  element.addEventListener("focusin", (event) => show({ focus: choiceOf(event.target), under: null }));
  element.addEventListener("focusout", () => show({ focus: null }));
  element.addEventListener("keydown", (event) => {
    const from = choiceOf(event.target);
    if (!from || event.altKey || event.ctrlKey || event.metaKey) return;
    const { points, y } = state.data;
    const to = choiceByKey(event.key, from, y.length, points.length);
    if (to) focusOn(to);
    else if (event.key === "Enter" || event.key === " ") choose(from);
    else return;
    event.preventDefault();
  });
  return { element, update: (data, options, whenIdle) => show({ data, options }, whenIdle) };
}
