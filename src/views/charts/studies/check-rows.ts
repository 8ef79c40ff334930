/** Below a chart over one input: a row for each check that fails somewhere, with where it does. */
import type { Box } from "../../drawings/geometry.ts";
import type { Mark } from "../../drawings/sketch.ts";
import { type Stroke, straight, strokeMarks, textAt } from "../../drawings/strokes.ts";
import { type Measure, shorten } from "../../drawings/text-size.ts";
import { hatching } from "../hatch.ts";
import { small } from "../panels.ts";

/** From where to where, in SI or px. */
export type Span = readonly [from: number, to: number];

/** A check over the points of a curve: true where it holds, null where that is not known. */
export interface CheckRow {
  readonly text: string;
  readonly holds: readonly (boolean | null)[];
}

/** The stretches over which points are of one kind: up to halfway to their neighbours, or to the end of the range. */
export function spansOf(x: readonly number[], is: (index: number) => boolean): Span[] {
  const spans: [number, number][] = [];
  const edge = (a: number, b: number): number => ((x[a] ?? x[b] ?? 0) + (x[b] ?? x[a] ?? 0)) / 2;
  x.forEach((_, index) => {
    if (!is(index)) return;
    const to = edge(index, index + 1);
    const last = spans.at(-1);
    if (last && index > 0 && is(index - 1)) last[1] = to;
    else spans.push([edge(index - 1, index), to]);
  });
  return spans;
}

/** Each row: what it says, and below it a line that is green where the check holds and hatched where it fails. */
export function checkRows(
  rows: readonly CheckRow[],
  x: readonly number[],
  { right, top }: Pick<Box, "right" | "top">,
  measure: Measure,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  const marks = rows.flatMap(({ text, holds }, index) => {
    const y = top + index * rowHeight + 12;
    const bar = { top: y + 6, bottom: y + 12 };
    const middle = (bar.top + bar.bottom) / 2;
    const holding = spansOf(x, (point) => holds[point] === true);
    const failing = spansOf(x, (point) => holds[point] === false);
    const strokes: Stroke[] = [
      ...holding.map(([from, to]) => straight("holding", { x: from, y: middle }, { x: to, y: middle })),
      ...failing.flatMap(([from, to]) => {
        const outline = outlineOf({ left: from, right: to, top: bar.top, bottom: bar.bottom });
        return [
          ...hatching([outline], []),
          { class: "fails-edge", points: [...outline, outline[0] ?? { x: 0, y: 0 }] },
        ];
      }),
    ];
    return [
      textAt("figure-moved", shorten(`✕ ${text}`, right - textLeft, small, measure), { x: textLeft, y }, small),
      ...strokeMarks(strokes),
    ];
  });
  return { marks, bottom: top + rows.length * rowHeight };
}

/** The corners of a box, one after the other. */
export const outlineOf = ({ left, right, top, bottom }: Box) => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
];

const rowHeight = 28;
/** Texts begin at the edge of the sheet, where they have most room. */
const textLeft = 4;
