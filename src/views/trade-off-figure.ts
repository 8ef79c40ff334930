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
import type { Desk } from "./desk.ts";
import type { Figure, FigureContext } from "./figure.ts";
import { formulaAt, positionOf, positionsOver, rangeTrackOf, type Track, valueAt } from "./literal.ts";
import { liveFigure } from "./live-figure.ts";
import { isSlow, mostPoints, sweptPoints } from "./slow-sweep.ts";
import { words } from "./words.ts";

export const tradeOffFigure = (first: FigureContext<ChartCell>): Figure | string =>
  liveFigure(first, liveTradeOff, contentsOf);

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
  const points = pointsOf(desk, cell, given, track);
  if (points === null) return words.pending;
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

/** The designs over the whole range; null where none of them is there yet. */
function pointsOf({ session, swept, studies }: Desk, cell: ChartCell, given: Step, track: Track): SweepPoint[] | null {
  const { program } = session;
  if (isSlow(program, cell)) {
    const news = studies.news(cell.id);
    const points = news ? sweptPoints(news) : [];
    return points.length === 0 && news?.status !== "done" ? null : points;
  }
  const values = positionsOver(track, mostPoints).map((position) => valueAt(track, position));
  const rows = swept.take(program, (id) => session.result(id), given, values, cell.id);
  return rows.map((row, index) => pointOf(values[index] ?? 0, row));
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
function choose({ session }: Desk, given: Step, track: Track, value: number): void {
  const formula = formulaAt(track, positionOf(track, value));
  session.edit((notebook) => editCell(notebook, given.id, { formula }));
}
