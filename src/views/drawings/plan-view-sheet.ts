import type { Box, Point } from "./geometry.ts";
import { extentOf, type Piece } from "./pieces.ts";

/** How a plan view lies on its sheet: one scale for both directions, nose up, right wing on the reader's right. */
export interface PlanViewSheet {
  readonly width: number;
  readonly height: number;
  /** px for a metre. */
  readonly scale: number;
  /** Where a point (y to the right and x aft, in m) lies. */
  readonly place: (point: Point) => Point;
  /** Baseline of the line of notes above. */
  readonly headLine: number;
  /** Height of the span's dimension line, of the line of panel lengths, and of the tailplane's span. */
  readonly spanLine: number;
  readonly lengthsLine: number;
  readonly tailLine: number;
  /** The glider on the sheet. */
  readonly extent: Box;
  /** Where labels may stand. */
  readonly room: Box;
  /** Where the line begins that names the marks, if it is wanted. */
  readonly legend: Point | undefined;
}

/** What has to find room on a plan view, in m. */
export interface PlanContent {
  /** All that is drawn at scale, the baseline too. */
  readonly pieces: readonly Piece[];
  readonly wings: readonly Piece[];
  readonly hasTailplane: boolean;
  readonly hasLegend: boolean;
}

/**
 * Lays a glider on a sheet of a width, as large as width and height allow. The height follows in steps, so that the
 * sheet does not change with every mm while a knob is dragged; `growth` adds steps of room ahead of the wing.
 */
export function planViewSheet(content: PlanContent, width: number, mostHeight: number, growth = 0): PlanViewSheet {
  const all = extentOf(content.pieces);
  const wing = extentOf(content.wings);
  const side = width < 480 ? 32 : 46;
  const drop = content.hasLegend ? legendDrop : 0;
  const spanLine = spanDrop + drop;
  const foot = content.hasTailplane ? tailGap + footLine : footAlone;
  // Room for the panel lengths ahead of the wing, which the nose may give.
  const before = (scale: number): number => Math.max(noseGap, wingGap + growth * step - (wing.top - all.top) * scale);
  const acrossScale = (width - 2 * side) / (all.right - all.left);
  const downScale = Math.max(
    (mostHeight - spanLine - noseGap - foot) / (all.bottom - all.top),
    leastShare * acrossScale,
  );
  const scale = Math.min(acrossScale, downScale);
  if (!Number.isFinite(scale)) throw new Error("got a wing without a finite span, expected panels with lengths");
  const top = spanLine + before(scale);
  const bottom = top + (all.bottom - all.top) * scale;
  const height = step * Math.ceil((bottom + foot) / step);
  const left = (width - (all.right - all.left) * scale) / 2;
  const place = ({ x, y }: Point): Point => ({ x: left + (x - all.left) * scale, y: top + (y - all.top) * scale });
  const corners = [place({ x: all.left, y: all.top }), place({ x: all.right, y: all.bottom })] as const;
  return {
    width,
    height,
    scale,
    place,
    headLine: 16,
    spanLine,
    lengthsLine: place({ x: 0, y: wing.top }).y - lengthsGap,
    tailLine: bottom + tailGap,
    extent: { left: corners[0].x, top: corners[0].y, right: corners[1].x, bottom: corners[1].y },
    room: { left: edge, top: head + drop, right: width - edge, bottom: height - edge },
    legend: content.hasLegend ? { x: edge, y: 16 + legendDrop } : undefined,
  };
}

const step = 16;
const edge = 4;
const head = 26;
const spanDrop = 42;
const legendDrop = 20;
const noseGap = 20;
const lengthsGap = 22;
const wingGap = lengthsGap + 30;
const tailGap = 22;
const footLine = 14;
const footAlone = 18;
/** However low the sheet should be, a glider is never drawn smaller than this share of what the width allows. */
const leastShare = 0.5;
