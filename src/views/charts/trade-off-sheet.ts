import { type Measure, shorten, wrapped } from "../drawings/text-size.ts";
import { axisTitle } from "./axis.ts";
import { type Panel, type PanelSheet, panelSheet, small } from "./panels.ts";
import { allPoints, pointIn, type SweepPoint, type TradeOffData } from "./trade-off-data.ts";
import { failureNote } from "./trade-off-words.ts";

/** How a trade-off chart lies on its sheet: panels one above the other that share the axis along x. */
export interface TradeOffSheet extends PanelSheet {
  readonly height: number;
  /** Baseline of the note below, and where it must end, px. */
  readonly noteLine: number;
  readonly noteEnd: number;
  /** What is said of points without a value, line by line; empty where all have one. */
  readonly failed: readonly string[];
}

/** Lays the panels on a sheet of a width; `panelHeight` is that of each. */
export function tradeOffSheet(
  data: TradeOffData,
  width: number,
  panelHeight: number | undefined,
  measure: Measure,
): TradeOffSheet {
  const designs = [
    data.present,
    data.baseline,
    ...(data.marked ?? []),
    ...(data.further ?? []).map(({ present }) => present),
  ];
  const shown = [...allPoints(data), ...designs.flatMap((design) => design ?? [])];
  const along = shown.flatMap((point) => (data.y.some((_, panel) => pointIn(point, panel)) ? (point.x ?? []) : []));
  const sheet = panelSheet(
    { values: along, limits: limitsOf(data, data.x.name), unit: data.x.unit },
    data.y.map(({ name, unit }, index) => ({
      values: shown.flatMap((point) => pointIn(point, index)?.y ?? []),
      limits: limitsOf(data, name),
      unit,
    })),
    width,
    panelHeight,
    measure,
  );
  // On a narrow sheet the note gets a line of its own, and everywhere what is too long to stand beside the axis' words.
  const title = axisTitle(data.x.label ?? data.x.name, data.x.unit);
  const beside = sheet.right - measure(title, small) - 20;
  const failure = failureNote(data);
  const isBelow = width < 560 || measure(failure, small) > beside;
  const noteEnd = isBelow ? sheet.right - 4 : beside;
  const fits = panelHeight === undefined ? wrapped : oneLine;
  const failed = failure === "" ? [] : fits(failure, noteEnd, small, measure);
  const noteLine = sheet.titleLine + (isBelow ? noteStep : 0);
  const height = noteLine + noteStep * Math.max(0, failed.length - 1) + 10;
  return { ...sheet, height, noteLine, noteEnd, failed };
}

/** Where panels have a height to keep to there is none to spare. */
const oneLine: typeof wrapped = (text, ...fitting) => [shorten(text, ...fitting)];

/** From one line of the note to the next, px. */
export const noteStep = 18;

/** The limits that checks set to a quantity. */
const limitsOf = ({ allowed = [] }: TradeOffData, name: string): number[] =>
  allowed.filter(({ quantity }) => quantity === name).flatMap(({ min, max }) => [min ?? [], max ?? []].flat());

/** A point of the sweep where it is drawn in a panel. */
export interface Spot {
  readonly panel: number;
  readonly point: SweepPoint;
  readonly x: number;
  readonly y: number;
  /** True where it has no value: it is then marked at the foot of the panel. */
  readonly failed: boolean;
}

/** Every point of a curve in a panel, those without a value at its foot, between their neighbours. */
export function spotsIn(panel: Panel, points: readonly SweepPoint[], sheet: TradeOffSheet): Spot[] {
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
