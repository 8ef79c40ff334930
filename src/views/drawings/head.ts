import type { Box } from "./geometry.ts";
import type { Mark } from "./sketch.ts";
import { straight, strokeMarks, textAt } from "./strokes.ts";
import { type Measure, shorten, textReach } from "./text-size.ts";

/** What stands over a drawing. */
export interface Head {
  /** How it is seen and in which unit. */
  readonly seen: string;
  /** The unit alone, for where figures were left out. */
  readonly unit: string;
  /** How many figures found no room. */
  readonly leftOut: number;
  /** What the thin line is, where there is one. */
  readonly baseline: string | undefined;
}

/** The line over a drawing: how it is seen and in which unit, figures left out, and what the thin line is. */
export function headMarks({ seen, unit, leftOut, baseline }: Head, y: number, room: Box, measure: Measure): Mark[] {
  const { left, right } = room;
  const noteMark = (until: number): Mark => {
    const lacking = `${leftOut} ${leftOut === 1 ? "figure" : "figures"} without room`;
    const text = leftOut === 0 ? seen : `${unit}, ${lacking}`;
    return textAt("note", shorten(text, until - left, note, measure), { x: left, y }, note);
  };
  if (baseline === undefined) return [noteMark(right)];
  const name = shorten(baseline, (right - left) / 3, note, measure);
  const start = right - measure(name, note);
  const middle = y - textReach("x", note.size).above / 2;
  const sample = straight("ghost", { x: start - 30, y: middle }, { x: start - 7, y: middle });
  return [noteMark(start - 40), textAt("note", name, { x: start, y }, note), ...strokeMarks([sample])];
}

/** How notes are set. */
export const note = { size: 12, weight: 400 } as const;
