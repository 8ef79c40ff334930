import type { Measure } from "../drawings/text-size.ts";
import { type Axis, axisFor } from "./axis.ts";

/** The panel of one quantity. All in px. */
export interface Panel {
  readonly index: number;
  readonly axis: Axis;
  readonly top: number;
  readonly bottom: number;
  /** Baseline of the words over it. */
  readonly titleLine: number;
}

/** Panels one above the other that share the axis along x. */
export interface PanelSheet {
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly x: Axis;
  readonly panels: readonly Panel[];
  /** Baselines of the ticks along x and of its words. */
  readonly tickLine: number;
  readonly titleLine: number;
}

/** What an axis has to hold: values in SI, limits that are shown where they lie near, and the unit it is told in. */
export interface AxisContent {
  readonly values: readonly number[];
  readonly limits: readonly number[];
  readonly unit: string;
}

/** How ticks, axis titles and notes are set. */
export const small = { size: 12, weight: 400 } as const;

/** Lays the panels of some quantities on a sheet of a width; `panelHeight` is that of each. */
export function panelSheet(
  along: AxisContent,
  up: readonly AxisContent[],
  width: number,
  panelHeight: number | undefined,
  measure: Measure,
): PanelSheet {
  const share = up.length === 1 ? 0.42 : 0.26;
  const high = panelHeight ?? Math.round(Math.max(110, Math.min(up.length === 1 ? 300 : 200, share * width)));
  const panels = up.map(({ values, limits, unit }, index) => {
    const over = edge + index * (words + high + betweenPanels);
    const [top, bottom] = [over + words, over + words + high];
    const axis = axisFor(values, limits, {
      range: [bottom, top],
      unit,
      count: Math.max(3, Math.min(5, Math.round(high / 45))),
    });
    return { index, axis, top, bottom, titleLine: over + 11 };
  });
  const widest = Math.max(0, ...panels.flatMap(({ axis }) => axis.ticks.map(({ text }) => measure(text, small))));
  const left = Math.max(36, Math.ceil(widest) + 14);
  const right = width - rightEdge;
  const bottom = panels.at(-1)?.bottom ?? edge;
  // The last text may be pushed inwards by the edge of the sheet.
  const room = (text: string) => 1.5 * measure(text, small) + 8;
  const x = axisFor(along.values, along.limits, {
    range: [left, right],
    unit: along.unit,
    count: Math.round((right - left) / 100),
    room,
  });
  return { width, left, right, x, panels, tickLine: bottom + 17, titleLine: bottom + 37 };
}

const edge = 8;
const words = 25;
const betweenPanels = 14;
const rightEdge = 18;
