/** What a trade-off chart says at its axes and below. */
import type { Mark } from "../drawings/sketch.ts";
import { textAt } from "../drawings/strokes.ts";
import { type Measure, shorten } from "../drawings/text-size.ts";
import { axisTexts } from "./axes.ts";
import { axisTitle } from "./axis.ts";
import { small } from "./panels.ts";
import { allPoints, type TradeOffData } from "./trade-off-data.ts";
import type { TradeOffSheet } from "./trade-off-sheet.ts";
import { failures, isConstant } from "./trade-off-words.ts";

/** The ticks along both axes and what each axis says. */
export const tradeOffAxes = ({ x, y }: TradeOffData, sheet: TradeOffSheet, measure: Measure): Mark[] =>
  axisTexts({ x: titleOf(x), y: y.map(titleOf) }, sheet, measure);

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
  const failed = count === 0 ? null : `✕ ${count} of ${allPoints(data).length} without a value: ${lacking[0]?.reason}`;
  const text = inHand ?? failed ?? (isConstant(data) ? `${data.sweep.name} makes no difference here` : hint);
  if (text === "") return [];
  const title = titleOf(data.x);
  const until = sheet.noteLine === sheet.titleLine ? sheet.right - measure(title, small) - 16 : sheet.right;
  // What can be done by hand is no news on paper.
  const name = text === hint ? "note by-hand" : inHand === null && failed ? "figure-moved" : "note";
  return [textAt(name, shorten(text, until - 4, small, measure), { x: 4, y: sheet.noteLine }, small)];
}

const titleOf = ({ name, label, unit }: TradeOffData["x"]): string => axisTitle(label ?? name, unit);
