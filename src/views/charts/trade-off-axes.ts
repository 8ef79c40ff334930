/** What a trade-off chart says at its axes and below. */
import type { Mark } from "../drawings/sketch.ts";
import { textAt } from "../drawings/strokes.ts";
import { type Measure, shorten } from "../drawings/text-size.ts";
import { axisTexts } from "./axes.ts";
import { axisTitle } from "./axis.ts";
import { small } from "./panels.ts";
import type { TradeOffData } from "./trade-off-data.ts";
import { noteStep, type TradeOffSheet } from "./trade-off-sheet.ts";
import { isConstant } from "./trade-off-words.ts";

/** The ticks along both axes and what each axis says. */
export const tradeOffAxes = ({ x, y }: TradeOffData, sheet: TradeOffSheet, measure: Measure): Mark[] =>
  axisTexts({ x: titleOf(x), y: y.map(titleOf) }, sheet, measure);

/** Below: what the point in hand says, else which points have no value and why, else what can be done. */
export function noteText(
  data: TradeOffData,
  { noteLine, noteEnd, failed }: TradeOffSheet,
  inHand: string | null,
  hint: string,
  measure: Measure,
): Mark[] {
  if (inHand === null && failed.length > 0) {
    return failed.map((text, index) => textAt("figure-moved", text, { x: 4, y: noteLine + index * noteStep }, small));
  }
  const text = inHand ?? (isConstant(data) ? `${data.sweep.name} makes no difference here` : hint);
  if (text === "") return [];
  // What can be done by hand is no news on paper.
  const name = text === hint ? "note by-hand" : "note";
  return [textAt(name, shorten(text, noteEnd, small, measure), { x: 4, y: noteLine }, small)];
}

const titleOf = ({ name, label, unit }: TradeOffData["x"]): string => axisTitle(label ?? name, unit);
