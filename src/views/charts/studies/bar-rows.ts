/** Rows that say something and show it by a bar below, one under the other. */
import type { Box } from "../../drawings/geometry.ts";
import { type Mark, mark, round } from "../../drawings/sketch.ts";
import { type Stroke, straight, strokeMarks, textAt } from "../../drawings/strokes.ts";
import { type Measure, shorten } from "../../drawings/text-size.ts";
import { small } from "../panels.ts";

/** One row. Places along x in px. */
export interface BarRow {
  readonly text: string;
  /** Class of the text; that of a note unless said. */
  readonly class?: string;
  readonly isStrong?: boolean;
  /** A second text at the right edge. */
  readonly right?: string | undefined;
  /** From where to where, and the class of the bar; none for a row of words alone. */
  readonly bars?: readonly { readonly from: number; readonly to: number; readonly class: string }[];
  /** Thin lines from here to there in the middle of the bar's height, with ends. */
  readonly whiskers?: readonly { readonly from: number; readonly to: number; readonly class: string }[];
  /** Upright lines through the bar. */
  readonly ticks?: readonly { readonly at: number; readonly class: string }[];
  /** Discs and rings on the bar. */
  readonly points?: readonly { readonly at: number; readonly class: string; readonly radius: number }[];
}

/** Rows from a height down; `bottom` is where they end. */
export function barRows(
  rows: readonly BarRow[],
  { left, right, top }: Pick<Box, "left" | "right" | "top">,
  measure: Measure,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  let y = top;
  const marks = rows.flatMap((row) => {
    const base = y + 13;
    const style = row.isStrong ? strong : small;
    const beside = shorten(row.right ?? "", (right - left) * 0.55, small, measure);
    const room = right - left - (beside === "" ? 0 : measure(beside, small) + 14);
    const texts = [
      textAt(row.class ?? "note", shorten(row.text, room, style, measure), { x: left, y: base }, style),
      ...(beside === "" ? [] : [textAt("note", beside, { x: right - measure(beside, small), y: base }, small)]),
    ];
    const { bars = [], whiskers = [], ticks = [], points = [] } = row;
    const isDrawn = bars.length + whiskers.length + ticks.length + points.length > 0;
    const [high, low] = [base + 8, base + 18];
    const middle = (high + low) / 2;
    y = isDrawn ? low + 9 : base + 7;
    const strokes: Stroke[] = [
      ...whiskers.flatMap(({ from, to, class: name }) => [
        straight(name, { x: from, y: middle }, { x: to, y: middle }),
        straight(name, { x: from, y: middle - 4 }, { x: from, y: middle + 4 }),
        straight(name, { x: to, y: middle - 4 }, { x: to, y: middle + 4 }),
      ]),
      ...ticks.map(({ at, class: name }) => straight(name, { x: at, y: high - 3 }, { x: at, y: low + 3 })),
    ];
    return [
      ...texts,
      ...bars.map(({ from, to, class: name }) =>
        mark("rect", {
          class: name,
          x: round(Math.min(from, to)),
          y: round(high),
          width: round(Math.abs(to - from)),
          height: round(low - high),
        }),
      ),
      ...strokeMarks(strokes),
      ...points.map(({ at, class: name, radius }) =>
        mark("circle", { class: name, cx: round(at), cy: round(middle), r: radius }),
      ),
    ];
  });
  return { marks, bottom: y };
}

const strong = { size: 13, weight: 600 } as const;
