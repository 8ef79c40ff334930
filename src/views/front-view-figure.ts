import type { DrawingCell, Value } from "../cells/index.ts";
import { type FrontViewData, type FrontViewOptions, liveFrontView, type WingInFront } from "./drawings/front-view.ts";
import type { Figure, FigureContext, Ok } from "./figure.ts";
import { words } from "./words.ts";

/** The front view of a wing over what it was when the notebook was opened. */
export function frontViewFigure(first: FigureContext<DrawingCell>): Figure | string {
  const contents = contentsOf(first);
  if (typeof contents === "string") return contents;
  const drawing = liveFrontView(...contents, { document });
  return {
    element: drawing.element,
    draw(context) {
      const next = contentsOf(context as FigureContext<DrawingCell>);
      if (typeof next === "string") return next;
      drawing.update(...next);
      return null;
    },
  };
}

function contentsOf({ desk, cell, result, width, measure }: FigureContext<DrawingCell>) {
  if (!isWing(result)) return words.notAWing(cell.of);
  const wing = wingOf(result);
  const before = desk.baseline.result(cell.id);
  const moved = before?.ok && isWing(before) && !sameValue(before.value, result.value);
  const data: FrontViewData = moved ? { wing, baseline: { wing: wingOf(before), name: words.baseline } } : { wing };
  const options: FrontViewOptions = { name: cell.of, width, measure };
  return [data, options] as const;
}

const isWing = ({ shape }: Ok): boolean => shape.kind === "record" && shape.type === "wing";
const wingOf = ({ value }: Ok): WingInFront => value as unknown as WingInFront;

function sameValue(a: Value, b: Value): boolean {
  if (typeof a !== "object" || typeof b !== "object") return a === b;
  const [left, right] = [Object.entries(a), b as Readonly<Record<string, Value>>];
  return (
    left.length === Object.keys(b).length && left.every(([key, value]) => sameValue(value, right[key] ?? Number.NaN))
  );
}
