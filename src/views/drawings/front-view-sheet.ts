import type { Box, Point } from "./geometry.ts";
import type { Outline } from "./wing-outline.ts";

/** How a front view lies on its sheet: one scale for both directions, right wing on the reader's left. */
export interface FrontViewSheet {
  readonly width: number;
  readonly height: number;
  /** px for a metre. */
  readonly scale: number;
  /** Where a point of the wing (y and z in m) lies. */
  readonly place: (point: Point) => Point;
  /** The outermost wood on either side. */
  readonly left: number;
  readonly right: number;
  /** Baseline of the line of notes above. */
  readonly headLine: number;
  /** Height of the span's dimension line. */
  readonly spanLine: number;
  /** Where labels may stand. */
  readonly room: Box;
}

/**
 * Lays the wing, with whatever is drawn behind it, on a sheet of a width. The height follows in steps, so that the
 * sheet does not change with every mm while a knob is dragged; `growth` adds steps of room over the wing.
 */
export function frontViewSheet(
  wing: Outline,
  others: readonly Outline[],
  width: number,
  growth: number,
): FrontViewSheet {
  const points = [wing, ...others]
    .flatMap(({ right, left }) => [...right, ...left])
    .flatMap(({ lower, upper }) => [...lower, ...upper]);
  const y = points.map((point) => point.x);
  const z = points.map((point) => point.y);
  const side = width < 480 ? 32 : 44;
  const scale = (width - 2 * side) / (Math.max(...y) - Math.min(...y));
  if (!Number.isFinite(scale)) throw new Error("got a wing without a finite span, expected panels with lengths");
  const over = scale * Math.max(0, ...z);
  const under = scale * Math.max(0, ...z.map((value) => -value));
  const height = step * (Math.ceil((head + overTips + over + under + spanGap + foot) / step) + growth);
  const datum = height - foot - spanGap - under;
  const outermost = Math.max(...y);
  return {
    width,
    height,
    scale,
    place: (point) => ({ x: side + (outermost - point.x) * scale, y: datum - point.y * scale }),
    left: side,
    right: width - side,
    headLine: 16,
    spanLine: height - foot,
    room: { left: edge, top: head, right: width - edge, bottom: height - foot - 10 },
  };
}

const step = 16;
const edge = 4;
const head = 26;
const overTips = 24;
const spanGap = 32;
const foot = 14;
