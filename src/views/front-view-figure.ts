import type { DrawingCell } from "../cells/index.ts";
import { type FrontViewData, type FrontViewOptions, liveFrontView, type WingInFront } from "./drawings/front-view.ts";
import type { Figure, FigureContext, Ok } from "./figure.ts";
import { liveFigure } from "./live-figure.ts";
import { sameValue } from "./same-value.ts";
import { words } from "./words.ts";

/** The front view of a wing, or of a glider's wing, over what it was when the notebook was opened. */
export const frontViewFigure = (first: FigureContext<DrawingCell>): Figure | string =>
  liveFigure(first, liveFrontView, contentsOf);

function contentsOf({ desk, cell, result, width, measure }: FigureContext<DrawingCell>) {
  const wing = wingOf(result);
  if (!wing) return words.notAWing(cell.of);
  const before = desk.baseline.result(cell.id);
  const wingBefore = before?.ok && !sameValue(before.value, result.value) ? wingOf(before) : undefined;
  const further = desk.ghosts.lines(cell.id).flatMap(({ name, result: other }) => {
    const trial = wingOf(other);
    return trial ? [{ wing: trial, name }] : [];
  });
  const data: FrontViewData = { wing, baseline: wingBefore && { wing: wingBefore, name: words.baseline }, further };
  const options: FrontViewOptions = { name: cell.of, width, measure };
  return [data, options] as const;
}

function wingOf({ shape, value }: Ok): WingInFront | undefined {
  if (shape.kind !== "record") return undefined;
  if (shape.type === "wing") return value as unknown as WingInFront;
  return shape.type === "glider" ? (value as unknown as { readonly wing: WingInFront }).wing : undefined;
}
