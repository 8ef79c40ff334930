/** Points of a curve, and crosses that stand for those without a value. */
import type { Line, Point } from "../drawings/geometry.ts";
import { round } from "../drawings/sketch.ts";
import { pathThrough } from "../drawings/strokes.ts";

/** The outline of a circle: from its left end, in two halves. */
export const circlePath = ({ x, y }: Point, r: number): string =>
  `M${round(x - r)},${round(y)}a${r},${r} 0 1,0 ${round(2 * r)},0a${r},${r} 0 1,0 ${round(-2 * r)},0`;

/** The radius of points at the ends of the pieces of a curve: smaller where they lie closer; in tenths of a px. */
export function pointRadius(curve: readonly Line[]): number {
  const gaps = curve.map(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y));
  const close = gaps.toSorted((a, b) => a - b)[Math.floor(gaps.length / 3)] ?? 20;
  return Math.round(10 * Math.max(1.8, Math.min(3.6, 0.24 * close))) / 10;
}

/** Half the size of a cross: smaller where points lie closer, like their circles. */
export const crossReach = (radius: number): number => Math.max(3, 1.4 * radius);

/** The outline of a cross. */
export function crossPath({ x, y }: Point, radius: number): string {
  const reach = crossReach(radius);
  const arm = 0.32 * reach;
  const corners = [
    [0, arm],
    [reach - arm, reach],
    [reach, reach - arm],
    [arm, 0],
  ] as const;
  // A quarter of the outline, turned four times.
  const turned = [0, 1, 2, 3].flatMap((quarter) =>
    corners.map(([dx, dy]) => {
      const turn = [
        [dx, dy],
        [dy, -dx],
        [-dx, -dy],
        [-dy, dx],
      ][quarter] as [number, number];
      return { x: x + turn[0], y: y + turn[1] };
    }),
  );
  return pathThrough(turned, "Z");
}

/** Of points in order along x those that stand apart by so many px, the first and the last among them. */
export function standApart<P extends Point>(points: readonly P[], apart: number): P[] {
  const kept: P[] = [];
  points.forEach((point, index) => {
    const before = kept.at(-1);
    const isLast = index === points.length - 1;
    if (!before || Math.abs(point.x - before.x) >= apart) kept.push(point);
    else if (isLast && kept.length > 1) kept.splice(-1, 1, point);
  });
  return kept;
}
