import type { Line, Point } from "../drawings/geometry.ts";
import type { Place } from "../drawings/labels.ts";

/** Places beside a point of a curve: square to it on either side first, then the four places. */
export function besideCurve(at: Point, curve: readonly Line[]): Place[] {
  let nearest: Line | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const piece of curve) {
    const away = Math.hypot((piece.from.x + piece.to.x) / 2 - at.x, (piece.from.y + piece.to.y) / 2 - at.y);
    if (away < least) [nearest, least] = [piece, away];
  }
  const fourPlaces: Place[] = ["above", "below", "right", "left"];
  if (!nearest) return fourPlaces;
  const { from, to } = nearest;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length === 0) return fourPlaces;
  const normal = { x: (to.y - from.y) / length, y: -(to.x - from.x) / length };
  const up = normal.y <= 0 ? normal : { x: -normal.x, y: -normal.y };
  return [up, { x: -up.x, y: -up.y }, ...fourPlaces];
}
