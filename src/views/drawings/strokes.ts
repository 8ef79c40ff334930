/**
 * Lines of a drawing as points, from which both follow: what is drawn, and what labels keep clear of. Arcs are drawn
 * as short chords, so that the two are the same line.
 */
import { type Line, linesThrough, type Point } from "./geometry.ts";
import type { PlacedLabel } from "./labels.ts";
import { type Mark, mark, round, textMark } from "./sketch.ts";
import { type TextStyle, textReach } from "./text-size.ts";

/** A line of a drawing: the points it runs through. */
export interface Stroke {
  /** How it is drawn: a class of drawing.css. */
  readonly class: string;
  readonly points: readonly Point[];
  /** Width in px, where the class has none of its own. */
  readonly width?: number;
}

/** A straight stroke. */
export const straight = (name: string, from: Point, to: Point): Stroke => ({ class: name, points: [from, to] });

/** An arc about a point; angles from the positive x axis, turning up the sheet. */
export function arc(name: string, centre: Point, radius: number, from: number, to: number): Stroke {
  // Chords of √(0.8 r) stay within 0.1 px of the arc.
  const chords = Math.max(2, Math.ceil((radius * Math.abs(to - from)) / Math.sqrt(0.8 * radius)));
  const points = Array.from({ length: chords + 1 }, (_, index) => {
    const turn = from + ((to - from) * index) / chords;
    return { x: centre.x + radius * Math.cos(turn), y: centre.y - radius * Math.sin(turn) };
  });
  return { class: name, points };
}

/** A circle as labels keep clear of it: straight sides about it, four being enough for a small one among many. */
export function ring(centre: Point, radius: number, sides: 4 | 8 = 8): Line[] {
  const reach = radius / Math.cos(Math.PI / sides);
  const corners = Array.from({ length: sides + 1 }, (_, index) => {
    const turn = (2 * Math.PI * index) / sides;
    return { x: centre.x + reach * Math.cos(turn), y: centre.y + reach * Math.sin(turn) };
  });
  return linesThrough(corners);
}

/** The slanting tick at the end of a dimension line. */
export const tick = ({ x, y }: Point): Stroke => straight("tick", { x: x - 3, y: y + 3 }, { x: x + 3, y: y - 3 });

/** The lines that strokes put on the sheet. */
export const strokeLines = (strokes: readonly Stroke[]): Line[] =>
  strokes.flatMap(({ points }) => linesThrough(points));

/** Marks of strokes: those that are drawn alike are one, so that little is touched when all of them move. */
export function strokeMarks(strokes: readonly Stroke[]): Mark[] {
  const alike = new Map<string, { readonly first: Stroke; d: string }>();
  for (const stroke of strokes) {
    const key = stroke.width === undefined ? stroke.class : `${stroke.class} ${stroke.width}`;
    const known = alike.get(key);
    if (known) known.d += pathThrough(stroke.points);
    else alike.set(key, { first: stroke, d: pathThrough(stroke.points) });
  }
  return [...alike.values()].map(({ first, d }) =>
    mark("path", { class: first.class, d, "stroke-width": first.width }),
  );
}

/** Path data of a line through points, closed where it is an outline. */
export function pathThrough(points: readonly Point[], close: "" | "Z" = ""): string {
  let d = "";
  for (const { x, y } of points) d += `${d === "" ? "M" : "L"}${round(x)},${round(y)}`;
  return d + close;
}

/** A text whose baseline starts at a point. */
export const textAt = (name: string, text: string, { x, y }: Point, { size, weight }: TextStyle): Mark =>
  textMark("text", { class: name, x: round(x), y: round(y), "font-size": size, "font-weight": weight }, text);

/** The texts of placed labels. */
export const labelMarks = (placed: readonly PlacedLabel[]): Mark[] =>
  placed.map(({ label, box }) =>
    textAt(label.class, label.text, { x: box.left, y: box.top + textReach(label.text, label.size).above }, label),
  );

/** The leaders of placed labels. */
export const leaderStrokes = (placed: readonly PlacedLabel[]): Stroke[] =>
  placed.flatMap(({ leader }) => (leader ? [straight("leader", leader.from, leader.to)] : []));
