import type { Pattern } from "./pattern-record.ts";
import { areaWithin, bounds, corners, type Edge, edgesAround, type Point } from "./polygon.ts";

/** A part in the making: lines and words in any frame, x along the grain. */
export interface FlatPart {
  readonly name: string;
  readonly thickness: number;
  /** Its edges around to the left, before kerf. */
  readonly edges: readonly Edge[];
  /** Allowance outside each edge, besides the kerf. */
  readonly allowance?: (index: number) => number;
  /** Further cuts within it, each around to the left, whose kerf falls inside. */
  readonly holes?: readonly (readonly Point[])[];
  /** Open lines to score. */
  readonly scores?: readonly (readonly Point[])[];
  readonly labels?: readonly FlatLabel[];
}
export interface FlatLabel {
  readonly text: string;
  readonly at: Point;
  readonly angle?: number;
  readonly size?: number;
}

/** Height of letters that are read at arm's length and fit on a narrow panel. */
const usualSize = 0.003;

/** The pattern of these parts: each moved to the origin of its own frame, its cuts outside by half the kerf. */
export function patternOf(parts: readonly FlatPart[], kerf: number): Pattern {
  const laid = parts.map((part) => lay(part, kerf));
  const labels = laid.flatMap(({ name, labels }) => labels.map((label) => ({ name, ...label })));
  const lines = {
    part: [] as string[],
    layer: [] as string[],
    stroke: [] as number[],
    x: [] as number[],
    y: [] as number[],
  };
  for (const { name, strokes } of laid) {
    strokes.forEach(({ layer, points }, index) => {
      for (const point of points) {
        lines.part.push(name);
        lines.layer.push(layer);
        lines.stroke.push(index + 1);
        lines.x.push(point[0]);
        lines.y.push(point[1]);
      }
    });
  }
  return {
    parts: {
      part: laid.map(({ name }) => name),
      thickness: laid.map(({ thickness }) => thickness),
      width: laid.map(({ width }) => width),
      height: laid.map(({ height }) => height),
      area: laid.map(({ area }) => area),
    },
    lines,
    labels: {
      part: labels.map(({ name }) => name),
      label: labels.map(({ text }) => text),
      x: labels.map(({ at }) => at[0]),
      y: labels.map(({ at }) => at[1]),
      angle: labels.map(({ angle = 0 }) => angle),
      size: labels.map(({ size = usualSize }) => size),
    },
  };
}

function lay(
  { name, thickness, edges, allowance = () => 0, holes = [], scores = [], labels = [] }: FlatPart,
  kerf: number,
) {
  const outline = corners(edges, (index) => allowance(index) + kerf / 2);
  const { x, y, width, height } = bounds(outline);
  const moved = (point: Point): Point => [point[0] - x, point[1] - y];
  const closed = (points: readonly Point[]) => [...points, points[0] as Point].map(moved);
  const hole = (points: readonly Point[]) => corners(edgesAround(points), () => -kerf / 2);
  const area = (points: readonly Point[]) => Math.abs(areaWithin(points));
  return {
    ...{ name, thickness, width, height },
    area: area(kerf === 0 ? outline : corners(edges, allowance)) - holes.reduce((sum, each) => sum + area(each), 0),
    strokes: [
      { layer: "cut", points: closed(outline) },
      ...holes.map((points) => ({ layer: "cut", points: closed(hole(points)) })),
      ...scores.map((points) => ({ layer: "score", points: points.map(moved) })),
    ],
    labels: labels.map((label) => ({ ...label, at: moved(label.at) })),
  };
}

/** An arrow along x that shows the grain, with its two barbs: one open line. */
export function grainArrow([x, y]: Point, length: number): Point[] {
  const barb = Math.min(length / 4, 0.004);
  const tip: Point = [x + length / 2, y];
  return [[x - length / 2, y], tip, [tip[0] - barb, y + barb / 2], tip, [tip[0] - barb, y - barb / 2]];
}

/** The same part seen from its other face: left for right. */
export function mirrored(part: FlatPart, name: string): FlatPart {
  const flip = ([x, y]: Point): Point => [-x, y];
  const count = part.edges.length;
  const { allowance } = part;
  return {
    ...part,
    name,
    // Turned over, the way around runs backwards.
    edges: part.edges.map(([from, to]): Edge => [flip(to), flip(from)]).reverse(),
    ...(allowance && { allowance: (index: number) => allowance(count - 1 - index) }),
    holes: (part.holes ?? []).map((points) => points.map(flip).reverse()),
    scores: (part.scores ?? []).map((points) => points.map(flip)),
    labels: (part.labels ?? []).map((label) => ({ ...label, at: flip(label.at), angle: -(label.angle ?? 0) })),
  };
}
