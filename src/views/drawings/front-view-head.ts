import type { FrontViewSheet } from "./front-view-sheet.ts";
import type { LengthFormat } from "./front-view-words.ts";
import type { Mark } from "./sketch.ts";
import { straight, strokeMarks, textAt } from "./strokes.ts";
import { type Measure, shorten, textReach } from "./text-size.ts";

/** The line over a front view: how it is seen and in which unit, figures left out, and what the thin line is. */
export function headMarks(
  sheet: FrontViewSheet,
  { unit }: LengthFormat,
  baseline: string | undefined,
  leftOut: number,
  measure: Measure,
): Mark[] {
  const y = sheet.headLine;
  const { left, right } = sheet.room;
  const note = (until: number): Mark => {
    const lacking = `${leftOut} ${leftOut === 1 ? "figure" : "figures"} without room`;
    const text = leftOut === 0 ? `seen from the front, ${unit}` : `${unit}, ${lacking}`;
    return textAt("note", shorten(text, until - left, small, measure), { x: left, y }, small);
  };
  if (baseline === undefined) return [note(right)];
  const name = shorten(baseline, (right - left) / 3, small, measure);
  const start = right - measure(name, small);
  const middle = y - textReach("x", small.size).above / 2;
  const sample = straight("ghost", { x: start - 30, y: middle }, { x: start - 7, y: middle });
  return [note(start - 40), textAt("note", name, { x: start, y }, small), ...strokeMarks([sample])];
}

const small = { size: 12, weight: 400 } as const;
