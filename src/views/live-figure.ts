import type { ChartCell, DrawingCell } from "../cells/index.ts";
import type { LiveDrawing, Surroundings } from "./drawings/sketch.ts";
import type { Figure, FigureContext } from "./figure.ts";
import type { FigureNumbers } from "./shown-figure.ts";

type Live<Data, Options> = (data: Data, options: Options, surroundings: Surroundings) => LiveDrawing<Data, Options>;

/**
 * A figure that is one live drawing of what its cells give; or the sentence that says why they give nothing to draw. Of a
 * chart `numbersOf` tells what it is drawn from.
 */
export function liveFigure<C extends DrawingCell | ChartCell, Data, Options>(
  first: FigureContext<C>,
  live: Live<Data, Options>,
  contentsOf: (context: FigureContext<C>) => readonly [Data, Options] | string,
  numbersOf: ((data: Data) => FigureNumbers) | null = null,
): Figure | string {
  const contents = contentsOf(first);
  if (typeof contents === "string") return contents;
  const drawing = live(...contents, { document });
  let [data] = contents;
  return {
    element: drawing.element,
    picture: drawing.element,
    get numbers() {
      return numbersOf?.(data) ?? null;
    },
    draw(context) {
      const next = contentsOf(context as FigureContext<C>);
      if (typeof next === "string") return next;
      [data] = next;
      drawing.update(...next, (act) => context.desk.idle.add(act));
      return null;
    },
  };
}
