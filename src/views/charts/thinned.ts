import type { Point } from "../drawings/geometry.ts";

/**
 * A line without the points that it does not need: none of those left out lies further than some px off the line that is
 * left (D. H. Douglas, T. K. Peucker, The Canadian Cartographer 10 (1973) 112–122, from memory).
 */
export function thinned(points: readonly Point[], within = 0.15): Point[] {
  if (points.length < 3) return [...points];
  const isKept = new Uint8Array(points.length);
  isKept[0] = 1;
  isKept[points.length - 1] = 1;
  const stretches: [number, number][] = [[0, points.length - 1]];
  for (let stretch = stretches.pop(); stretch; stretch = stretches.pop()) {
    const [from, to] = stretch;
    const [farthest, away] = farthestOff(points, from, to);
    if (away <= within) continue;
    isKept[farthest] = 1;
    stretches.push([from, farthest], [farthest, to]);
  }
  return points.filter((_, index) => isKept[index] === 1);
}

/** The point between two that lies farthest off the straight line from one to the other. */
function farthestOff(points: readonly Point[], from: number, to: number): [number, number] {
  const [a, b] = [points[from] as Point, points[to] as Point];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  let [farthest, most] = [from, 0];
  for (let index = from + 1; index < to; index++) {
    const { x, y } = points[index] as Point;
    const across = Math.abs((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x));
    const away = length === 0 ? Math.hypot(x - a.x, y - a.y) : across / length;
    if (away > most) [farthest, most] = [index, away];
  }
  return [farthest, most];
}
