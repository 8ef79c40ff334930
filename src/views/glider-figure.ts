/** Plan and side view of a glider, or of a wing alone, over what it was when the notebook was opened. */
import type { DrawingCell } from "../cells/index.ts";
import { type GliderDrawingData, type GliderOnPaper, type WingOnPaper, wingAlone } from "./drawings/glider.ts";
import type { GliderDrawingOptions } from "./drawings/glider-options.ts";
import { livePlanView } from "./drawings/plan-view.ts";
import { liveSideView } from "./drawings/side-view.ts";
import type { Figure, FigureContext, Ok } from "./figure.ts";
import { liveFigure } from "./live-figure.ts";
import { sameValue } from "./same-value.ts";
import { words } from "./words.ts";

export const planViewFigure = (first: FigureContext<DrawingCell>): Figure | string =>
  liveFigure(first, livePlanView, contentsOf);

export const sideViewFigure = (first: FigureContext<DrawingCell>): Figure | string =>
  liveFigure(first, liveSideView, contentsOf);

function contentsOf({ desk, cell, result, width, height, measure }: FigureContext<DrawingCell>) {
  const glider = gliderOf(result);
  if (!glider) return words.notAGlider(cell.of);
  const before = desk.baseline.result(cell.id);
  const gliderBefore = before?.ok && !sameValue(before.value, result.value) ? gliderOf(before) : undefined;
  const further = desk.ghosts.lines(cell.id).flatMap(({ name, result: other }) => {
    const trial = gliderOf(other);
    return trial ? [{ glider: trial, name }] : [];
  });
  const baseline = gliderBefore && { glider: gliderBefore, name: words.baseline };
  const data: GliderDrawingData = { glider, baseline, further };
  const options: GliderDrawingOptions = { name: cell.of, width, height: height ?? undefined, measure };
  return [data, options] as const;
}

function gliderOf({ shape, value }: Ok): GliderOnPaper | undefined {
  if (shape.kind !== "record") return undefined;
  if (shape.type === "wing") return wingAlone(value as unknown as WingOnPaper);
  return shape.type === "glider" ? (value as unknown as GliderOnPaper) : undefined;
}
