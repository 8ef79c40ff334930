import type { Label, Point } from "./parts.ts";

/** The room that a label takes, mm: a box about `at`, turned to the left by `angle` in radians. */
export interface Box {
  readonly at: Point;
  readonly angle: number;
  readonly halfWidth: number;
  readonly halfHeight: number;
}

/** A line from one place to another. */
export type Stretch = readonly [from: Point, to: Point];

/** Kept free around words, mm. */
const clear = 0.5;

/** The box of a label with a little room around it: a letter is about 0.55 of its height wide. */
export const boxOf = ({ text, at, angle, size }: Label): Box => ({
  at,
  angle: (angle * Math.PI) / 180,
  halfWidth: (text.length * 0.55 * size) / 2 + clear,
  halfHeight: size / 2 + clear,
});

/** Its four sides and both diagonals. */
export function linesOf({ at: [x, y], angle, halfWidth, halfHeight }: Box): Stretch[] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const corner = (along: number, up: number): Point => [
    x + along * halfWidth * cos - up * halfHeight * sin,
    y + along * halfWidth * sin + up * halfHeight * cos,
  ];
  const [a, b, c, d] = [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
  return [
    [a, b],
    [b, c],
    [c, d],
    [d, a],
    [a, c],
    [b, d],
  ];
}

/** True where any part of the line lies in the box (the line is clipped to it, Y.-D. Liang and B. A. Barsky 1984). */
export function touches({ at: [x, y], angle, halfWidth, halfHeight }: Box, [from, to]: Stretch): boolean {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const along = (point: Point) => (point[0] - x) * cos + (point[1] - y) * sin;
  const up = (point: Point) => (point[1] - y) * cos - (point[0] - x) * sin;
  let [enter, leave] = [0, 1];
  for (const [start, end, half] of [
    [along(from), along(to), halfWidth],
    [up(from), up(to), halfHeight],
  ] as const) {
    const way = end - start;
    if (way === 0) {
      if (Math.abs(start) > half) return false;
      continue;
    }
    const [one, other] = [(-half - start) / way, (half - start) / way];
    enter = Math.max(enter, Math.min(one, other));
    leave = Math.min(leave, Math.max(one, other));
    if (enter > leave) return false;
  }
  return true;
}

/** How many of these lines a line crosses. */
export const crossings = ([a, b]: Stretch, lines: readonly Stretch[]): number =>
  lines.filter(([c, d]) => side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b)).length;

const side = (a: Point, b: Point, point: Point): boolean =>
  (b[0] - a[0]) * (point[1] - a[1]) - (b[1] - a[1]) * (point[0] - a[0]) > 0;
