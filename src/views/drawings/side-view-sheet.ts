import type { Box, Point } from "./geometry.ts";

/** How a side view lies on its sheet: one scale for both directions, nose to the reader's left. */
export interface SideViewSheet {
  readonly width: number;
  readonly height: number;
  /** px for a metre. */
  readonly scale: number;
  /** Where a point (x aft and y up, in m) lies. */
  readonly place: (point: Point) => Point;
  /** Baseline of the line of notes above. */
  readonly headLine: number;
  /** Heights of the dimension lines under the glider, the nearest first. */
  readonly rows: readonly number[];
  /** The glider on the sheet. */
  readonly extent: Box;
  /** Where labels may stand. */
  readonly room: Box;
  /** Where the line begins that names the marks, if it is wanted. */
  readonly legend: Point | undefined;
}

/** What has to find room on a side view. */
export interface SideContent {
  /** About all that is drawn at scale, in m with y up. */
  readonly extent: Box;
  /** The number of dimension lines under it. */
  readonly rows: number;
  readonly hasLegend: boolean;
}

/**
 * Lays a glider on a sheet of a width, as large as width and height allow. The height follows in steps, so that the sheet does not change
 * with every mm while a knob is dragged; `growth` adds steps of room over the glider.
 */
export function sideViewSheet(
  { extent, rows, hasLegend }: SideContent,
  width: number,
  mostHeight: number,
  growth = 0,
): SideViewSheet {
  const over = head + gapOver + (hasLegend ? legendDrop : 0);
  const [long, high] = [extent.right - extent.left, extent.bottom - extent.top];
  const [before, behind] = width < 480 ? [34, 46] : [46, 64];
  const under = rows * rowGap + foot;
  // Heights are told to the left of the wing, so it needs room there, which the nose may give.
  const acrossScale = Math.min((width - before - behind) / long, (width - heightsRoom - behind) / extent.right);
  const scale = Math.min(lifeSize, acrossScale, Math.max((mostHeight - over - under) / high, leastShare * acrossScale));
  if (!Number.isFinite(scale)) throw new Error("got a wing without a finite chord, expected panels with chords");
  const height = step * (Math.ceil((over + high * scale + under) / step) + growth);
  const left = Math.max((width + before - behind - long * scale) / 2, heightsRoom + extent.left * scale);
  const bottom = height - under;
  const place = ({ x, y }: Point): Point => ({
    x: left + (x - extent.left) * scale,
    y: bottom - (y - extent.top) * scale,
  });
  return {
    width,
    height,
    scale,
    place,
    headLine: 16,
    rows: Array.from({ length: rows }, (_, index) => bottom + rowGap * (index + 1)),
    extent: { left, top: bottom - high * scale, right: left + long * scale, bottom },
    room: { left: edge, top: over - gapOver, right: width - edge, bottom: height - edge },
    legend: hasLegend ? { x: edge, y: 16 + legendDrop } : undefined,
  };
}

const step = 16;
const edge = 4;
const head = 26;
const gapOver = 22;
const legendDrop = 20;
const rowGap = 26;
const foot = 12;
/** px for a metre at which a drawing is as large as the thing, at 96 px an inch; it is never larger. */
const lifeSize = 96 / 0.0254;
const heightsRoom = 78;
const leastShare = 0.5;
