/** Points, boxes and lines on a sheet: px, x to the right, y down. */

/** A place on the sheet. */
export interface Point {
  readonly x: number;
  readonly y: number;
}
/** An upright rectangle. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
/** A straight line between two points. */
export interface Line {
  readonly from: Point;
  readonly to: Point;
}

/** The lines that join the points one after the other. */
export const linesThrough = (points: readonly Point[]): Line[] =>
  points.slice(1).map((to, index) => ({ from: points[index] ?? to, to }));

/** The box that reaches further by `by` on all sides. */
export const grow = (box: Box, by: number): Box => ({
  left: box.left - by,
  top: box.top - by,
  right: box.right + by,
  bottom: box.bottom + by,
});

/** True where two boxes share more than an edge. */
export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** True where `inner` lies wholly in `outer`. */
export const within = (inner: Box, outer: Box): boolean =>
  inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom;

/** True where a line runs through a box or ends in it. */
export function crosses({ from, to }: Line, box: Box): boolean {
  if (from.x < box.left && to.x < box.left) return false;
  if (from.x > box.right && to.x > box.right) return false;
  if (from.y < box.top && to.y < box.top) return false;
  if (from.y > box.bottom && to.y > box.bottom) return false;
  // Not all on one side: it misses only if all four corners lie on one side of it.
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const offset = dx * from.y - dy * from.x;
  const a = dx * box.top - dy * box.left > offset;
  const b = dx * box.top - dy * box.right > offset;
  const c = dx * box.bottom - dy * box.left > offset;
  const d = dx * box.bottom - dy * box.right > offset;
  return !(a === b && b === c && c === d);
}

/** True where two lines meet, or are in one line with both their boxes touching. */
export function meet(a: Line, b: Line): boolean {
  if (Math.max(a.from.x, a.to.x) < Math.min(b.from.x, b.to.x)) return false;
  if (Math.max(b.from.x, b.to.x) < Math.min(a.from.x, a.to.x)) return false;
  if (Math.max(a.from.y, a.to.y) < Math.min(b.from.y, b.to.y)) return false;
  if (Math.max(b.from.y, b.to.y) < Math.min(a.from.y, a.to.y)) return false;
  return side(a, b.from) * side(a, b.to) <= 0 && side(b, a.from) * side(b, a.to) <= 0;
}

const side = ({ from, to }: Line, { x, y }: Point): number =>
  Math.sign((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x));
