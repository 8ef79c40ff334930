import type { Part, Point } from "./parts.ts";

/** Two lines nearer than this run into each other on paper, and a cutter burns the wood between them, mm. */
const apart = 0.35;

/**
 * A part without scored lines that lie along a cut all the way, such as where the face ends that a bevel of a sixth of a
 * millimetre is sanded to: its words tell how much, the line would only make the edge thick.
 */
export function drawnLines(part: Part): Part {
  const cuts = part.strokes.filter(({ layer }) => layer === "cut");
  return {
    ...part,
    strokes: part.strokes.filter(
      ({ layer, points }) =>
        layer === "cut" ||
        points.length > 2 ||
        !cuts.some((cut) =>
          cut.points.some((to, index) => {
            const from = cut.points[index - 1];
            return from !== undefined && points.every((point) => distance(point, from, to) < apart);
          }),
        ),
    ),
  };
}

/** From a point to the line between two others. */
function distance([x, y]: Point, [fromX, fromY]: Point, [toX, toY]: Point): number {
  const [along, up] = [toX - fromX, toY - fromY];
  const size = along * along + up * up;
  const share = size === 0 ? 0 : Math.min(1, Math.max(0, ((x - fromX) * along + (y - fromY) * up) / size));
  return Math.hypot(x - fromX - share * along, y - fromY - share * up);
}
