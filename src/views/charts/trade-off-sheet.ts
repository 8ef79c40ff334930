import type { Measure } from "../drawings/text-size.ts";
import { type Axis, axisFor } from "./axis.ts";
import { pointIn, type SweepPoint, type TradeOffData } from "./trade-off-data.ts";

/** The panel of one quantity. All in px. */
export interface Panel {
  readonly index: number;
  readonly axis: Axis;
  readonly top: number;
  readonly bottom: number;
  /** Baseline of the words over it. */
  readonly titleLine: number;
}

/** How a trade-off chart lies on its sheet: panels one above the other that share the axis along x. */
export interface TradeOffSheet {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly x: Axis;
  readonly panels: readonly Panel[];
  /** Baselines of the ticks along x, of its words, and of the notes below. */
  readonly tickLine: number;
  readonly titleLine: number;
  readonly noteLine: number;
}

/** How ticks, axis titles and notes are set. */
export const small = { size: 12, weight: 400 } as const;

/** Lays the panels on a sheet of a width; `panelHeight` is that of each. */
export function tradeOffSheet(
  data: TradeOffData,
  width: number,
  panelHeight: number | undefined,
  measure: Measure,
): TradeOffSheet {
  const share = data.y.length === 1 ? 0.42 : 0.26;
  const high = panelHeight ?? Math.round(Math.max(110, Math.min(data.y.length === 1 ? 300 : 200, share * width)));
  const shown = [...data.points, ...(data.present ? [data.present] : []), ...(data.baseline ? [data.baseline] : [])];
  const panels = data.y.map(({ name, unit }, index) => {
    const over = edge + index * (words + high + betweenPanels);
    const [top, bottom] = [over + words, over + words + high];
    const values = shown.flatMap((point) => pointIn(point, index)?.y ?? []);
    const axis = axisFor(values, limitsOf(data, name), {
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
  const x = axisFor(
    shown.flatMap((point) => (data.y.some((_, panel) => pointIn(point, panel)) ? (point.x ?? []) : [])),
    limitsOf(data, data.x.name),
    { range: [left, right], unit: data.x.unit, count: Math.round((right - left) / 100), room },
  );
  // On a narrow sheet the notes get a line of their own.
  const noteLine = bottom + (width < 560 ? 55 : 37);
  return {
    width,
    height: noteLine + 10,
    left,
    right,
    x,
    panels,
    tickLine: bottom + 17,
    titleLine: bottom + 37,
    noteLine,
  };
}

/** The limits that checks set to a quantity. */
const limitsOf = ({ allowed = [] }: TradeOffData, name: string): number[] =>
  allowed.filter(({ quantity }) => quantity === name).flatMap(({ min, max }) => [min ?? [], max ?? []].flat());

const edge = 8;
const words = 25;
const betweenPanels = 14;
const rightEdge = 18;

/** A point of the sweep where it is drawn in a panel. */
export interface Spot {
  readonly panel: number;
  readonly point: SweepPoint;
  readonly x: number;
  readonly y: number;
  /** True where it has no value: it is then marked at the foot of the panel. */
  readonly failed: boolean;
}

/** Every point of the sweep in a panel, those without a value at its foot, between their neighbours. */
export function spotsIn(panel: Panel, { points }: TradeOffData, sheet: TradeOffSheet): Spot[] {
  const places = points.map((point) => (point.x !== null && Number.isFinite(point.x) ? sheet.x.place(point.x) : null));
  return points.map((point, index) => {
    const drawn = pointIn(point, panel.index);
    const known = places[index] ?? null;
    const x = known === null ? between(places, index, sheet) : Math.max(sheet.left, Math.min(sheet.right, known));
    const y = drawn ? panel.axis.place(drawn.y) : panel.bottom - 9;
    return { panel: panel.index, point, x, y, failed: drawn === null };
  });
}

/** A place for a point of unknown x, evenly between the nearest on either side that have one. */
function between(places: readonly (number | null)[], index: number, { left, right }: TradeOffSheet): number {
  const before = places.findLastIndex((place, at) => at < index && place !== null);
  const after = places.findIndex((place, at) => at > index && place !== null);
  const from = before < 0 ? null : (places[before] ?? null);
  const to = after < 0 ? null : (places[after] ?? null);
  const clip = (value: number) => Math.max(left + 8, Math.min(right - 8, value));
  if (from !== null && to !== null) return clip(from + ((to - from) * (index - before)) / (after - before));
  // Beyond either end they go on at even steps in the direction of the curve.
  if (from !== null) return clip(from + 14 * (index - before) * heading(places));
  if (to !== null) return clip(to - 14 * (after - index) * heading(places));
  return left + ((right - left) * (index + 0.5)) / places.length;
}

function heading(places: readonly (number | null)[]): 1 | -1 {
  const known = places.filter((place) => place !== null);
  return (known.at(-1) ?? 0) >= (known[0] ?? 0) ? 1 : -1;
}
