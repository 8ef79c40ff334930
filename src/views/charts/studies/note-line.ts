import type { Mark } from "../../drawings/sketch.ts";
import { textAt } from "../../drawings/strokes.ts";
import { type Measure, shorten } from "../../drawings/text-size.ts";
import { small } from "../panels.ts";

/** What may stand in the line below a chart, the first that is there. */
export interface NoteTexts {
  /** What the point in hand says. */
  readonly inHand: string | null;
  /** What has no value. */
  readonly failed: string | null;
  /** What can be done by hand: no news on paper. */
  readonly hint: string;
}

/** One line below a chart. */
export function noteMark(
  { inHand, failed, hint }: NoteTexts,
  { left, right, y }: { readonly left: number; readonly right: number; readonly y: number },
  measure: Measure,
): Mark[] {
  const text = inHand ?? failed ?? hint;
  if (text === "") return [];
  const name = inHand !== null ? "note" : failed !== null ? "figure-moved" : "note by-hand";
  return [textAt(name, shorten(text, right - left, small, measure), { x: left, y }, small)];
}
