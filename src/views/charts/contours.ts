/**
 * Contours of heights over a grid, by the usual marching squares (d3-contour). Places are told in steps of the grid: the
 * first column and row are 0. A height that is null is a gap, into which nothing is drawn.
 */
import { contours } from "d3";
import type { Point } from "../drawings/geometry.ts";

/** Heights row by row: that of column i and row j stands at i + j · columns. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly heights: readonly (number | null)[];
}

/** The lines at one height, each as the points it runs through. */
export function contourLines(grid: Grid, level: number): Point[][] {
  const whole = { ...grid, heights: withoutGaps(grid) };
  return ringsAt(whole, level).flatMap((ring) => {
    const lines: Point[][] = [];
    let line: Point[] = [];
    ring.forEach((to, index) => {
      const from = ring[index - 1];
      if (!from) return;
      if (isKnownBetween(grid, from, to)) line.push(...(line.length === 0 ? [from, to] : [to]));
      else if (line.length > 0) {
        lines.push(line);
        line = [];
      }
    });
    if (line.length > 0) lines.push(line);
    // An outline that begins in the middle of a line has its two halves apart.
    const [first] = lines;
    const last = lines.at(-1);
    if (first && last && first !== last && isSamePlace(last.at(-1), first[0])) {
      lines.pop();
      lines[0] = [...last, ...first.slice(1)];
    }
    return lines;
  });
}

/** The outlines of all that lies at a height or above it; one within another is a hole. Gaps lie outside. */
export function regionAbove({ columns, rows, heights }: Grid, level: number): Point[][] {
  const low = heights.map((height) => height ?? Number.NEGATIVE_INFINITY);
  const within = (value: number, most: number): number => Math.max(0, Math.min(most, value));
  return ringsAt({ columns, rows, heights: low }, level).map((ring) =>
    ring.map(({ x, y }) => ({ x: within(x, columns - 1), y: within(y, rows - 1) })),
  );
}

/** Outlines as they come: they run on beyond the grid by half a step, and end where they began. */
function ringsAt({ columns, rows, heights }: { columns: number; rows: number; heights: number[] }, level: number) {
  const found = contours().size([columns, rows]).contour(heights, level);
  return found.coordinates.flatMap((polygon) =>
    polygon.map((ring) => ring.map(([x = 0, y = 0]): Point => ({ x: x - 0.5, y: y - 0.5 }))),
  );
}

/** True where all four heights about a piece of a line are there, and it is no edge of the grid. */
function isKnownBetween({ columns, rows, heights }: Grid, a: Point, b: Point): boolean {
  const [column, row] = [Math.floor((a.x + b.x) / 2), Math.floor((a.y + b.y) / 2)];
  if (column < 0 || row < 0 || column >= columns - 1 || row >= rows - 1) return false;
  const at = (right: number, down: number) => heights[column + right + (row + down) * columns] ?? null;
  return at(0, 0) !== null && at(1, 0) !== null && at(0, 1) !== null && at(1, 1) !== null;
}

/** Gaps filled from their neighbours, ring after ring, so that lines run up to a gap as they would without it. */
function withoutGaps({ columns, rows, heights }: Grid): number[] {
  let filled = [...heights];
  while (filled.includes(null)) {
    const next = filled.map((height, place) => {
      if (height !== null) return height;
      const [column, row] = [place % columns, Math.floor(place / columns)];
      const near = [-1, 0, 1].flatMap((down) =>
        [-1, 0, 1].flatMap((right) => {
          const [x, y] = [column + right, row + down];
          return x < 0 || y < 0 || x >= columns || y >= rows ? [] : (filled[x + y * columns] ?? []);
        }),
      );
      return near.length === 0 ? null : near.reduce((sum, each) => sum + each, 0) / near.length;
    });
    if (next.every((height, place) => height === filled[place])) break;
    filled = next;
  }
  return filled.map((height) => height ?? Number.NEGATIVE_INFINITY);
}

const isSamePlace = (a: Point | undefined, b: Point | undefined): boolean => a?.x === b?.x && a?.y === b?.y;
