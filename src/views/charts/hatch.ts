/** Hatching as lines, and lines with pieces taken out, so that a text never stands on either. */
import type { Box, Point } from "../drawings/geometry.ts";
import type { Stroke } from "../drawings/strokes.ts";

/**
 * The hatching of an area within closed outlines, of which one within another is a hole, without what lies under some
 * boxes. All hatching of a sheet runs through the same slanting lines, so that areas that overlap look no darker.
 */
export function hatching(outlines: readonly (readonly Point[])[], boxes: readonly Box[]): Stroke[] {
  const edges = outlines.flatMap((outline) =>
    outline.map((from, index): readonly [Point, Point] => [from, outline[(index + 1) % outline.length] ?? from]),
  );
  const sums = edges.map(([{ x, y }]) => x + y);
  const first = Math.ceil(sums.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY) / spacing);
  const last = Math.floor(sums.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY) / spacing);
  const strokes: Stroke[] = [];
  for (let count = first; count <= last; count++) {
    // A hair off a whole number, so that it hardly ever runs through a corner.
    const sum = count * spacing + 1e-4;
    const crossings = edges.flatMap(([from, to]) => {
      const [before, after] = [from.x + from.y - sum, to.x + to.y - sum];
      return before < 0 === after < 0 ? [] : [from.x + ((to.x - from.x) * before) / (before - after)];
    });
    crossings.sort((a, b) => a - b);
    for (let place = 0; place + 1 < crossings.length; place += 2) {
      const [from, to] = [crossings[place] as number, crossings[place + 1] as number];
      const line = [
        { x: from, y: sum - from },
        { x: to, y: sum - to },
      ];
      if (to - from > 0.5) for (const points of withoutBoxes(line, boxes)) strokes.push({ class: "hatch", points });
    }
  }
  return strokes;
}

/** What is left of a line through points where it runs under no box, piece by piece. */
export function withoutBoxes(points: readonly Point[], boxes: readonly Box[]): Point[][] {
  const pieces: Point[][] = [];
  let piece: Point[] = [];
  points.slice(1).forEach((to, index) => {
    const from = points[index] as Point;
    const at = (share: number): Point => ({ x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) });
    for (const [start, end] of sharesOutside(from, to, boxes)) {
      if (start > 0 || piece.length === 0) {
        if (piece.length > 1) pieces.push(piece);
        piece = [start > 0 ? at(start) : from];
      }
      piece.push(end < 1 ? at(end) : to);
    }
  });
  if (piece.length > 1) pieces.push(piece);
  return pieces;
}

/** From where to where, as shares of the way, a straight line lies in no box. */
function sharesOutside(from: Point, to: Point, boxes: readonly Box[]): [number, number][] {
  let outside: [number, number][] = [[0, 1]];
  for (const { left, right, top, bottom } of boxes) {
    const [xIn, xOut] = sharesBetween(from.x, to.x, left, right);
    const [yIn, yOut] = sharesBetween(from.y, to.y, top, bottom);
    const [start, end] = [Math.max(xIn, yIn), Math.min(xOut, yOut)];
    if (!(start < end)) continue;
    outside = outside.flatMap(([a, b]): [number, number][] =>
      (
        [
          [a, Math.min(b, start)],
          [Math.max(a, end), b],
        ] as [number, number][]
      ).filter(([low, high]) => high - low > 1e-9),
    );
  }
  return outside;
}

function sharesBetween(from: number, to: number, low: number, high: number): [number, number] {
  if (from === to) return from > low && from < high ? [0, 1] : [1, 0];
  const [a, b] = [(low - from) / (to - from), (high - from) / (to - from)];
  return [Math.min(a, b), Math.max(a, b)];
}

/** From line to line along x, px. */
const spacing = 8;
