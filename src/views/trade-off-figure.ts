/** A trade-off chart, from the cells: the given swept over its range, every point a whole design. */
import { type ChartCell, editCell, type Result, type Step } from "../cells/index.ts";
import {
  liveTradeOff,
  type Quantity,
  type SweepPoint,
  type TradeOffData,
  type TradeOffOptions,
} from "./charts/trade-off.ts";
import { allowedBy } from "./check-limits.ts";
import type { Figure, FigureContext } from "./figure.ts";
import { formulaAt, positionOf, positionsOver, rangeTrackOf, type Track, valueAt } from "./literal.ts";
import { liveFigure } from "./live-figure.ts";
import { words } from "./words.ts";

export const tradeOffFigure = (first: FigureContext<ChartCell>): Figure | string =>
  liveFigure(first, liveTradeOff, contentsOf);

/** Enough for a smooth curve, few enough to be told apart by eye and finger, and to be computed while a knob moves. */
const mostPoints = 21;

function contentsOf({ desk, cell, result, width, height, measure }: FigureContext<ChartCell>) {
  const { session, baseline } = desk;
  const { program } = session;
  const given = cell.sweep === undefined ? undefined : program.byName.get(cell.sweep);
  const track = rangeTrackOf(given);
  const [sweptNow, xNow, ...ysNow] = result.parts ?? [];
  if (!cell.sweep || !cell.x || !cell.y || !given || !track || !sweptNow || !xNow) return words.chartNeeds;
  const quantities = [cell.x, ...cell.y].map((name, index) => quantityOf(name, [xNow, ...ysNow][index]));
  const [x, ...y] = quantities;
  if (!x) return words.chartNeeds;
  const values = positionsOver(track, mostPoints).map((position) => valueAt(track, position));
  const rows = desk.swept.take(program, (id) => session.result(id), given, values, cell.id);
  const points = rows.map((row, index) => pointOf(values[index] ?? 0, row));
  if (points.every((point) => point.x === null)) return words.nothingToDraw;
  const present = pointOf(numberOf(sweptNow) ?? 0, result);
  const before = baseline.result(cell.id);
  const started = before && pointOf(numberOf(before.parts?.[0]) ?? 0, before);
  const data: TradeOffData = {
    sweep: { name: cell.sweep, unit: track.unit === "1" ? "" : track.unit },
    x,
    y,
    points,
    present,
    baseline: started && !samePoint(started, present) ? { ...started, name: words.baseline } : undefined,
    allowed: allowedBy(
      program,
      quantities.map(({ name }) => name),
    ),
  };
  const options: TradeOffOptions = {
    title: cell.title,
    width,
    panelHeight: height === null ? undefined : Math.max(56, (height - 60) / y.length - 30),
    measure,
    onChoose: (value) => choose(desk, given, track, value),
  };
  return [data, options] as const;
}

function quantityOf(name: string, part: Result | undefined): Quantity {
  const unit = part?.ok && part.shape.kind === "number" ? part.shape.unit : "1";
  return { name, unit: unit === "1" ? "" : unit };
}

/** A design on the chart: the parts of the chart's result are the swept given, x, and each y. */
function pointOf(value: number, result: Result | undefined): SweepPoint {
  const [, x, ...y] = result?.parts ?? [];
  const reason = result && !result.ok ? result.error.message : undefined;
  return { value, x: numberOf(x), y: y.map(numberOf), ...(reason !== undefined && { reason }) };
}

const numberOf = (part: Result | undefined): number | null =>
  part?.ok && typeof part.value === "number" ? part.value : null;

function samePoint(a: SweepPoint, b: SweepPoint): boolean {
  return a.value === b.value && a.x === b.x && a.y.every((each, index) => each === b.y[index]);
}

/** A chosen point becomes the design: the given takes its value. */
function choose({ session }: FigureContext["desk"], given: Step, track: Track, value: number): void {
  const formula = formulaAt(track, positionOf(track, value));
  session.edit((notebook) => editCell(notebook, given.id, { formula }));
}
