/** Dimensions as every drawing has them: extension lines, a line with ticks, a figure clear of it. */
import type { Box, Point } from "./geometry.ts";
import { type Label, textBox } from "./labels.ts";
import type { Mark } from "./sketch.ts";
import { type Stroke, straight, textAt, tick } from "./strokes.ts";
import type { Measure } from "./text-size.ts";

/** What is drawn for dimensions, and the labels still to be placed. */
export interface Dimensions {
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
}

/** A dimension whose figure has its place already. */
export interface SetDimension {
  readonly strokes: readonly Stroke[];
  readonly figure: Mark;
  readonly box: Box;
}

/** How figures are set; the one or two that matter most are strong. */
export const figure = { size: 13, weight: 400, class: "figure" } as const;
export const strong = { size: 13, weight: 600, class: "figure" } as const;

/** Several groups of dimensions as one. */
export const together = (groups: readonly Dimensions[]): Dimensions => ({
  strokes: groups.flatMap(({ strokes }) => strokes),
  labels: groups.flatMap(({ labels }) => labels),
});

/**
 * A level dimension at a height y between extension lines from two points, the line broken for its figure. Where there
 * is no room between, the figure stands outside: on the right if the room reaches, else on the left, else over the line.
 */
export function brokenDimension(
  ends: readonly [Point, Point],
  y: number,
  text: string,
  style: typeof figure | typeof strong,
  room: Box,
  measure: Measure,
): SetDimension {
  const from = Math.min(ends[0].x, ends[1].x);
  const to = Math.max(ends[0].x, ends[1].x);
  const wide = measure(text, style);
  const isWithin = to - from > wide + 40;
  const outside = to + 14 + wide < room.right ? to + 14 : from - 14 - wide;
  const isOver = !isWithin && outside < room.left;
  const start = { x: isWithin || isOver ? (from + to - wide) / 2 : outside, y: isOver ? y - 9 : y + 4.5 };
  const box = textBox(text, style, start, measure);
  const along = (x1: number, x2: number): Stroke => straight("dimension", { x: x1, y }, { x: x2, y });
  return {
    strokes: [
      ...ends.map((end) => extension(end, { x: end.x, y })),
      ...(isWithin ? [along(from, box.left - 8), along(box.right + 8, to)] : [along(from, to)]),
      tick({ x: from, y }),
      tick({ x: to, y }),
    ],
    figure: textAt(style.class, text, start, style),
    box,
  };
}

/** A dimension line between two points with its ticks. */
export const dimensionLine = (from: Point, to: Point): Stroke[] => [
  straight("dimension", from, to),
  tick(from),
  tick(to),
];

/** The thin line from a little off a point of the drawing to a little beyond the dimension line. */
export function extension(from: Point, to: Point): Stroke {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const along = (distance: number): Point => ({
    x: from.x + ((to.x - from.x) * distance) / length,
    y: from.y + ((to.y - from.y) * distance) / length,
  });
  return straight("extension", length === 0 ? from : along(Math.min(4, length)), length === 0 ? to : along(length + 5));
}
