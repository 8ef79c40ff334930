/** The marks of the trade for the balance point, a quartered circle, and ours for the neutral point, a lozenge. */
import { figure } from "./dimensions.ts";
import { type Line, linesThrough, type Point } from "./geometry.ts";
import { note } from "./head.ts";
import type { Label } from "./labels.ts";
import { type Mark, mark, round } from "./sketch.ts";
import { arc, pathThrough, ring, type Stroke, textAt } from "./strokes.ts";
import { type Measure, textReach } from "./text-size.ts";

/** A mark on the sheet with its name, and the lines that labels keep clear of. */
export interface NamedPoint {
  readonly at: Point;
  readonly text: keyof typeof shapes;
  readonly radius: number;
  readonly marks: readonly Mark[];
  readonly lines: readonly Line[];
}

/** The neutral point and, over it, the balance point, as far as their places on the sheet are known. */
export function namedPoints(balance: Point | undefined, neutral: Point | undefined): readonly NamedPoint[] {
  const radius = balance && neutral ? radiusFor(Math.hypot(neutral.x - balance.x, neutral.y - balance.y)) : largest;
  return [
    ...(neutral ? [namedPoint("neutral point", neutral, radius)] : []),
    ...(balance ? [namedPoint("balance point", balance, radius)] : []),
  ];
}

const namedPoint = (text: NamedPoint["text"], at: Point, radius: number): NamedPoint => ({
  at,
  text,
  radius,
  ...shapes[text](at, radius),
});

/** The hollow ring that stays where the balance point was, if it has moved. */
export const ghostRing = (before: Point, now: NamedPoint | undefined): Stroke[] =>
  before.x === now?.at.x && before.y === now.at.y ? [] : [arc("ghost", before, now?.radius ?? largest, 0, 2 * Math.PI)];

/** Two marks still read as two where they are as far apart as this lets them be large. */
const radiusFor = (apart: number): number => round(Math.max(3, Math.min(largest, 0.48 * apart)));
const largest = 5.5;

/** The names beside the marks, where these lie one behind the other down the sheet: each leans away from the other. */
export const pointLabels = (points: readonly NamedPoint[]): Label[] =>
  points.map((point) => {
    const lean = points.some((other) => other.at.y < point.at.y) ? 1 : -1;
    const elsewhere = [10, 15].map((by) => ({ x: point.at.x, y: point.at.y + lean * by }));
    return { ...nameOf(point), places: ["right", "left"], elsewhere };
  });

/** The same, where the marks lie one behind the other across the sheet. */
export const pointLabelsAcross = (points: readonly NamedPoint[]): Label[] =>
  points.map((point) => {
    const isFirst = points.every((other) => other.at.x >= point.at.x);
    const upOutward = { x: isFirst ? -0.6 : 0.6, y: -0.8 };
    return { ...nameOf(point), places: [upOutward, isFirst ? "left" : "right", "above", "below"] };
  });

/** True where a sheet is so narrow that the marks are named in a line over the drawing instead of beside them. */
export const hasLegend = (width: number, points: number): boolean => width < 480 && points > 0;

/** The line that names the marks, from a point on its baseline. */
export function legendMarks(points: readonly NamedPoint[], { x, y }: Point, measure: Measure): Mark[] {
  let left = x;
  return points.toReversed().flatMap(({ text }) => {
    const at = { x: left + largest, y: y - textReach(text, note.size).above / 2 };
    const start = left + 2 * largest + 5;
    left = start + measure(text, note) + 16;
    return [...namedPoint(text, at, 5).marks, textAt("note", text, { x: start, y }, note)];
  });
}

const nameOf = ({ at, text, radius }: NamedPoint): Label => ({
  ...figure,
  text,
  at,
  isAmid: true,
  gap: radius + 5,
  own: radius,
});

/** A circle with two of its quarters filled. */
function quarteredCircle(at: Point, radius: number) {
  const quarter = (from: number): Mark => {
    const { points } = arc("mark-filled", at, radius, from, from + Math.PI / 2);
    return mark("path", { class: "mark-filled", d: pathThrough([at, ...points], "Z") });
  };
  const circle = mark("circle", { class: "mark", cx: round(at.x), cy: round(at.y), r: radius });
  return { marks: [circle, quarter(0), quarter(Math.PI)], lines: ring(at, radius + 0.6) };
}

/** A lozenge with a point in it. */
function lozenge({ x, y }: Point, radius: number) {
  const corners = [
    { x, y: y - radius },
    { x: x + radius, y },
    { x, y: y + radius },
    { x: x - radius, y },
  ];
  const outline = mark("path", { class: "mark", d: pathThrough(corners, "Z") });
  const point = mark("circle", { class: "mark-filled", cx: round(x), cy: round(y), r: round(radius / 4) });
  return { marks: [outline, point], lines: linesThrough([...corners, ...corners.slice(0, 1)]) };
}

const shapes = { "balance point": quarteredCircle, "neutral point": lozenge } as const;
