/** A place on a flat part. */
export type Point = readonly [x: number, y: number];

/** An edge that runs straight from one place to another, and on beyond both as its neighbours need. */
export type Edge = readonly [from: Point, to: Point];

/**
 * The corners where each edge meets the next. Edges run around the part, each moved outward (to the right of its way
 * where the part lies to the left) by its own distance. Two edges in one line meet where the first ends.
 */
export function corners(edges: readonly Edge[], outward: (index: number) => number): Point[] {
  const moved = edges.map((edge, index) => movedBy(edge, outward(index)));
  return moved.map((edge, index) => meet(edge, moved[(index + 1) % moved.length] as Edge));
}

// Read by index from here on: taking pairs apart costs much more before the code is warm, and all this runs as a slider moves.

function movedBy(edge: Edge, far: number): Edge {
  if (far === 0) return edge;
  const [a, b] = [edge[0], edge[1]];
  const [along, up] = [b[0] - a[0], b[1] - a[1]];
  const size = far / Math.hypot(along, up);
  return [
    [a[0] + up * size, a[1] - along * size],
    [b[0] + up * size, b[1] - along * size],
  ];
}

/** True where the corners leave each edge running its own way: no two of its neighbours meet before it. */
export function keepsEdges(edges: readonly Edge[], points: readonly Point[]): boolean {
  return edges.every(([[ax, ay], [bx, by]], index) => {
    const [cx, cy] = points[(index + points.length - 1) % points.length] as Point;
    const [dx, dy] = points[index] as Point;
    return (bx - ax) * (dx - cx) + (by - ay) * (dy - cy) > 0;
  });
}

function meet(one: Edge, other: Edge): Point {
  const a = one[0];
  const b = one[1];
  const c = other[0];
  const d = other[1];
  const ux = b[0] - a[0];
  const uy = b[1] - a[1];
  const vx = d[0] - c[0];
  const vy = d[1] - c[1];
  const turn = ux * vy - uy * vx;
  if (Math.abs(turn) < 1e-9 * Math.hypot(ux, uy) * Math.hypot(vx, vy)) return b;
  const along = ((c[0] - a[0]) * vy - (c[1] - a[1]) * vx) / turn;
  return [a[0] + along * ux, a[1] + along * uy];
}

/** Edges from each corner to the next, and from the last to the first. */
export const edgesAround = (points: readonly Point[]): Edge[] =>
  points.map((point, index) => [point, points[(index + 1) % points.length] as Point]);

/** Area within the corners, above 0 where they run around to the left (shoelace formula). */
export function areaWithin(points: readonly Point[]): number {
  let sum = 0;
  let before = points.at(-1) as Point;
  for (const point of points) {
    sum += before[0] * point[1] - point[0] * before[1];
    before = point;
  }
  return sum / 2;
}

/** The smallest x and y, and how far the points reach from there. */
export function bounds(points: readonly Point[]): { x: number; y: number; width: number; height: number } {
  let [left, right, low, high] = [
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  for (const point of points) {
    left = Math.min(left, point[0]);
    right = Math.max(right, point[0]);
    low = Math.min(low, point[1]);
    high = Math.max(high, point[1]);
  }
  return { x: left, y: low, width: right - left, height: high - low };
}

/** The mean of the corners. */
export const middle = (points: readonly Point[]): Point => [
  points.reduce((sum, [x]) => sum + x, 0) / points.length,
  points.reduce((sum, [, y]) => sum + y, 0) / points.length,
];
