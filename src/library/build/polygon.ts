/** A place on a flat part. */
export type Point = readonly [x: number, y: number];

/** An edge that runs straight from one place to another, and on beyond both as its neighbours need. */
export type Edge = readonly [from: Point, to: Point];

/**
 * The corners where each edge meets the next. Edges run around the part, each moved outward (to the right of its way
 * where the part lies to the left) by its own distance. Two edges in one line meet where the first ends.
 */
export function corners(edges: readonly Edge[], outward: (index: number) => number): Point[] {
  const moved = edges.map(([[ax, ay], [bx, by]], index): Edge => {
    const size = Math.hypot(bx - ax, by - ay);
    const [nx, ny] = [(by - ay) / size, (ax - bx) / size];
    const far = outward(index);
    return [
      [ax + far * nx, ay + far * ny],
      [bx + far * nx, by + far * ny],
    ];
  });
  return moved.map((edge, index) => meet(edge, moved[(index + 1) % moved.length] as Edge));
}

/** True where the corners leave each edge running its own way: no two of its neighbours meet before it. */
export function keepsEdges(edges: readonly Edge[], points: readonly Point[]): boolean {
  return edges.every(([[ax, ay], [bx, by]], index) => {
    const [cx, cy] = points[(index + points.length - 1) % points.length] as Point;
    const [dx, dy] = points[index] as Point;
    return (bx - ax) * (dx - cx) + (by - ay) * (dy - cy) > 0;
  });
}

function meet([[ax, ay], [bx, by]]: Edge, [[cx, cy], [dx, dy]]: Edge): Point {
  const [ux, uy, vx, vy] = [bx - ax, by - ay, dx - cx, dy - cy];
  const turn = ux * vy - uy * vx;
  if (Math.abs(turn) < 1e-9 * Math.hypot(ux, uy) * Math.hypot(vx, vy)) return [bx, by];
  const along = ((cx - ax) * vy - (cy - ay) * vx) / turn;
  return [ax + along * ux, ay + along * uy];
}

/** Edges from each corner to the next, and from the last to the first. */
export const edgesAround = (points: readonly Point[]): Edge[] =>
  points.map((point, index) => [point, points[(index + 1) % points.length] as Point]);

/** Area within the corners, above 0 where they run around to the left (shoelace formula). */
export const areaWithin = (points: readonly Point[]): number =>
  edgesAround(points).reduce((sum, [[ax, ay], [bx, by]]) => sum + (ax * by - bx * ay) / 2, 0);

/** The smallest and largest x and y. */
export function bounds(points: readonly Point[]): { x: number; y: number; width: number; height: number } {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** The share of a sum of corners: their mean. */
export const middle = (points: readonly Point[]): Point => [
  points.reduce((sum, [x]) => sum + x, 0) / points.length,
  points.reduce((sum, [, y]) => sum + y, 0) / points.length,
];
