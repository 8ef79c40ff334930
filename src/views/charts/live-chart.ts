/** A chart on the page whose points can be chosen, by pointer or keyboard, and that follows new data in place. */
import { type LiveDrawing, liveDrawing, type Mark, type Surroundings } from "../drawings/sketch.ts";
import { type Choice, choiceByKey, choiceNear, isSame } from "./choices.ts";

/** A chart at a moment. */
export interface ChartState<Data, Options> {
  readonly data: Data;
  readonly options: Options;
  /** The point in focus, and the one under the pointer. */
  readonly focus: Choice | null;
  readonly under: Choice | null;
}

/** A chart as marks, and where its points lie, panel by panel; a target of the class `choice` stands for each, in order. */
export interface SketchedChart {
  readonly mark: Mark;
  readonly spots: readonly (readonly { readonly x: number; readonly y: number }[])[];
  /** How far from a point a pointer may be and still mean it, px; 20 unless said. */
  readonly reach?: number | undefined;
}

/** Draws a chart. `choose` is told the point that was chosen. */
export function liveChart<Data, Options>(
  sketch: (state: ChartState<Data, Options>) => SketchedChart,
  choose: (choice: Choice, state: ChartState<Data, Options>) => void,
  data: Data,
  options: Options,
  surroundings: Surroundings,
): LiveDrawing<Data, Options> {
  let state: ChartState<Data, Options> = { data, options, focus: null, under: null };
  let spots: SketchedChart["spots"] = [];
  let reach: number | undefined;
  const marks = (shown: ChartState<Data, Options>): Mark => {
    const sketched = sketch(shown);
    spots = sketched.spots;
    reach = sketched.reach;
    return sketched.mark;
  };
  const drawing = liveDrawing(marks, state, undefined, surroundings);
  const { element } = drawing;
  const show = (change: Partial<ChartState<Data, Options>>, whenIdle?: (act: () => void) => void): void => {
    state = { ...state, ...change };
    drawing.update(state, undefined, whenIdle);
  };
  const choices = () => [...element.querySelectorAll<SVGElement>(".choice")];
  const places = () => spots.flatMap((panelSpots, panel) => panelSpots.map((_, index): Choice => ({ panel, index })));
  const choiceOf = (target: EventTarget | null): Choice | null => {
    const at = choices().findIndex((choice) => choice.contains(target as Node | null));
    return places()[at] ?? null;
  };
  const under = ({ clientX, clientY }: MouseEvent): Choice | null => {
    const box = element.getBoundingClientRect();
    const scale = Number(element.getAttribute("width")) / box.width;
    return choiceNear(spots, { x: (clientX - box.left) * scale, y: (clientY - box.top) * scale }, reach);
  };
  const focusOn = (choice: Choice): void => choices()[places().findIndex((each) => isSame(each, choice))]?.focus();

  // A click that no pointer made, as from a screen reader, says by itself which point it means. By pointer it is the
  // nearest, which need not be the one whose target lies on top.
  element.addEventListener("click", (event) => {
    const choice = event.detail === 0 ? choiceOf(event.target) : under(event);
    if (!choice) return;
    focusOn(choice);
    choose(choice, state);
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
    const to = choiceByKey(
      event.key,
      from,
      spots.map(({ length }) => length),
    );
    if (to) focusOn(to);
    else if (event.key === "Enter" || event.key === " ") choose(from, state);
    else return;
    event.preventDefault();
  });
  return { element, update: (next, nextOptions, whenIdle) => show({ data: next, options: nextOptions }, whenIdle) };
}
