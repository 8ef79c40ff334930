import { line, type Mark, text } from "./marks.ts";
import type { Part, Point } from "./parts.ts";

/** All parts of a sheet laid out below each other at true size for a cutter, mm: x to the right, y down. */
export interface CuttingPlan {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

const gap = 5;
const widest = 900;

/**
 * Parts in rows from the upper left, unturned so that the grain is kept. Each thickness begins a row of its own: what is
 * cut from one sheet lies together.
 */
export function cuttingPlan(parts: readonly Part[]): CuttingPlan {
  const marks: Mark[] = [];
  let [x, top, rowHeight, width] = [gap, gap, 0, 0];
  const hundredths = ({ thickness }: Part) => Math.round(thickness * 100);
  const ordered = [...new Set(parts.map(hundredths))].map((sort) => parts.filter((part) => hundredths(part) === sort));
  for (const part of ordered.flat()) {
    const isNext = ordered.some(([first], index) => index > 0 && first === part);
    if (isNext || (x > gap && x + part.width > widest)) [x, top, rowHeight] = [gap, top + rowHeight + gap, 0];
    const foot = top + part.height;
    const left = x;
    const onPlan = ([px, py]: Point): Point => [left + px, foot - py];
    for (const { layer, points } of part.strokes) marks.push(line(layer, ...points.map(onPlan)));
    for (const { text: words, at, angle, size } of part.labels) {
      marks.push(text(words, onPlan(at), size, { layer: "text", angle, anchor: "middle" }));
    }
    rowHeight = Math.max(rowHeight, part.height);
    x += part.width + gap;
    width = Math.max(width, x);
  }
  return { width: Math.max(width, 2 * gap), height: top + rowHeight + gap, marks };
}
