/** Grid and axes of panels. */
import type { Box } from "../drawings/geometry.ts";
import type { Mark } from "../drawings/sketch.ts";
import { type Stroke, straight, textAt } from "../drawings/strokes.ts";
import { type Measure, shorten } from "../drawings/text-size.ts";
import { type Panel, type PanelSheet, small } from "./panels.ts";

/** The lines of the grid in a panel, broken where a label stands. */
export function gridStrokes(
  { axis, top, bottom }: Pick<Panel, "axis" | "top" | "bottom">,
  { left, right, x }: Pick<PanelSheet, "left" | "right" | "x">,
  labels: readonly Box[],
): Stroke[] {
  const across = axis.ticks.flatMap(({ at }) => {
    const gaps = labels.filter((box) => box.top - gap < at && at < box.bottom + gap);
    return pieces(
      left,
      right,
      gaps.map((box) => [box.left, box.right]),
    ).map(([from, to]) => straight("grid", { x: from, y: at }, { x: to, y: at }));
  });
  const upright = x.ticks.flatMap(({ at }) => {
    const gaps = labels.filter((box) => box.left - gap < at && at < box.right + gap);
    return pieces(
      top,
      bottom,
      gaps.map((box) => [box.top, box.bottom]),
    ).map(([from, to]) => straight("grid", { x: at, y: from }, { x: at, y: to }));
  });
  return [...across, ...upright];
}

/** The ticks along both axes and what each axis says: one title over each panel, that of x below. */
export function axisTexts(
  titles: { readonly x: string; readonly y: readonly string[] },
  sheet: PanelSheet,
  measure: Measure,
): Mark[] {
  const { left, right, width } = sheet;
  const along = sheet.x.ticks.map(({ at, text }) => {
    const wide = measure(text, small);
    return textAt("note", text, { x: Math.min(at - wide / 2, width - 4 - wide), y: sheet.tickLine }, small);
  });
  const panels = sheet.panels.flatMap(({ index, axis, titleLine }) => {
    const ticks = axis.ticks.map(({ at, text }) =>
      textAt("note", text, { x: left - 8 - measure(text, small), y: at + 4 }, small),
    );
    const says = shorten(titles.y[index] ?? "", right - 4, small, measure);
    return [...ticks, textAt("note", says, { x: 4, y: titleLine }, small)];
  });
  const shown = shorten(titles.x, right - 4, small, measure);
  return [...panels, ...along, textAt("note", shown, { x: right - measure(shown, small), y: sheet.titleLine }, small)];
}

/** How far a line of the grid stays away from a label. */
const gap = 4;

/** What is left of a stretch between the gaps. */
function pieces(from: number, to: number, gaps: readonly (readonly [number, number])[]): [number, number][] {
  const left: [number, number][] = [];
  let at = from;
  for (const [start, end] of gaps.toSorted((a, b) => a[0] - b[0])) {
    if (start - gap > at) left.push([at, Math.min(to, start - gap)]);
    at = Math.max(at, end + gap);
  }
  if (at < to) left.push([at, to]);
  return left;
}
