/** Grid, axes and notes of a trade-off chart. */
import type { Box } from "../drawings/geometry.ts";
import type { Mark } from "../drawings/sketch.ts";
import { type Stroke, straight, textAt } from "../drawings/strokes.ts";
import { type Measure, shorten } from "../drawings/text-size.ts";
import { axisTitle } from "./axis.ts";
import type { TradeOffData } from "./trade-off-data.ts";
import { type Panel, small, type TradeOffSheet } from "./trade-off-sheet.ts";
import { failures, isConstant } from "./trade-off-words.ts";

/** The lines of the grid in a panel, broken where a label stands. */
export function gridStrokes(
  { axis, top, bottom }: Panel,
  { left, right, x }: TradeOffSheet,
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

/** The ticks along both axes and what each axis says. */
export function axisTexts(data: TradeOffData, sheet: TradeOffSheet, measure: Measure): Mark[] {
  const { left, right, width } = sheet;
  const along = sheet.x.ticks.map(({ at, text }) => {
    const wide = measure(text, small);
    return textAt("note", text, { x: Math.min(at - wide / 2, width - 4 - wide), y: sheet.tickLine }, small);
  });
  const title = axisTitle(data.x.label ?? data.x.name, data.x.unit);
  const panels = sheet.panels.flatMap(({ index, axis, titleLine }) => {
    const quantity = data.y[index];
    const ticks = axis.ticks.map(({ at, text }) =>
      textAt("note", text, { x: left - 8 - measure(text, small), y: at + 4 }, small),
    );
    const says = quantity ? axisTitle(quantity.label ?? quantity.name, quantity.unit) : "";
    return [...ticks, textAt("note", shorten(says, right - 4, small, measure), { x: 4, y: titleLine }, small)];
  });
  const shown = shorten(title, right - 4, small, measure);
  return [...panels, ...along, textAt("note", shown, { x: right - measure(shown, small), y: sheet.titleLine }, small)];
}

/** One line below: what the point in hand says, else which points have no value, else what can be done. */
export function noteText(
  data: TradeOffData,
  sheet: TradeOffSheet,
  inHand: string | null,
  hint: string,
  measure: Measure,
): Mark[] {
  const lacking = failures(data);
  const count = lacking.reduce((sum, each) => sum + each.count, 0);
  const failed = count === 0 ? null : `✕ ${count} of ${data.points.length} without a value: ${lacking[0]?.reason}`;
  const text = inHand ?? failed ?? (isConstant(data) ? `${data.sweep.name} makes no difference here` : hint);
  if (text === "") return [];
  const title = axisTitle(data.x.label ?? data.x.name, data.x.unit);
  const until = sheet.noteLine === sheet.titleLine ? sheet.right - measure(title, small) - 16 : sheet.right;
  // What can be done by hand is no news on paper.
  const name = text === hint ? "note by-hand" : inHand === null && failed ? "figure-moved" : "note";
  return [textAt(name, shorten(text, until - 4, small, measure), { x: 4, y: sheet.noteLine }, small)];
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
