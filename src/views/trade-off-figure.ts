/** A trade-off chart, from the cells: the given swept over its range, every point a whole design. */
import { type ChartCell, chartPaths, editCell, type Result, type Step } from "../cells/index.ts";
import {
  type FurtherCurve,
  liveTradeOff,
  type Quantity,
  type SweepPoint,
  type TradeOffData,
  type TradeOffOptions,
} from "./charts/trade-off.ts";
import { allowedBy } from "./check-limits.ts";
import type { Desk } from "./desk.ts";
import type { Figure, FigureContext, Ok } from "./figure.ts";
import { formulaAt, positionOf, positionsOver, rangeTrackOf, type Track, valueAt } from "./literal.ts";
import { liveFigure } from "./live-figure.ts";
import { isSlow, pointsOn, sweptPoints } from "./slow-sweep.ts";
import { words } from "./words.ts";

export const tradeOffFigure = (first: FigureContext<ChartCell>): Figure | string =>
  liveFigure(first, liveTradeOff, contentsOf, (data) => ({ sort: "trade-off", data }));

function contentsOf({ desk, cell, result, width, height, measure }: FigureContext<ChartCell>) {
  const { session, baseline } = desk;
  const { program } = session;
  // While what draws it was loading, another notebook may have been opened.
  if (!program.byId.get(cell.id)) return words.pending;
  const given = cell.sweep === undefined ? undefined : program.byName.get(cell.sweep);
  const track = rangeTrackOf(given);
  if (!cell.sweep || !cell.x || !cell.y?.length || !given || !track) return words.chartNeeds;
  const paths = chartPaths(cell);
  const swept = pointsOf(desk, cell, given, track);
  if (swept === null) return words.pending;
  const [points = [], ...others] = swept;
  if (swept.flat().every((point) => point.x === null)) return words.nothingToDraw;
  const [present, ...presents] = designsOf(cell, result);
  const [started] = designsOf(cell, baseline.result(cell.id));
  const trials = cell.curves ? [] : trialCurves(desk, cell, track, points);
  const [x, ...y] = [cell.x, ...cell.y].map((name, index) => quantityOf(cell, name, index, result));
  if (!x || !present) return words.chartNeeds;
  const data: TradeOffData = {
    sweep: { name: cell.sweep, unit: track.unit === "1" ? "" : track.unit },
    x,
    y,
    points,
    present,
    baseline: started && !samePoint(started, present) ? { ...started, name: words.baseline } : undefined,
    marked: desk.ghosts.lines(cell.id).flatMap(({ name, result: other }) => {
      const [design] = designsOf(cell, other);
      return design && !trials.some((curve) => curve.name === name) ? [{ ...design, name }] : [];
    }),
    allowed: allowedBy(
      program,
      [x, ...y].map(({ name }) => name),
    ),
    ...(cell.curves && {
      curve: cell.curves[0],
      further: others.map((each, index) => ({
        name: paths.curves[index + 1]?.name ?? "",
        points: each,
        present: presents[index] ?? null,
      })),
    }),
    ...(trials.length > 0 && { curve: session.trial?.name ?? words.baseline, further: trials }),
    band: bandOf(cell, result, present),
  };
  const options: TradeOffOptions = {
    title: cell.title,
    width,
    panelHeight: height === null ? undefined : Math.max(leastHeight(cell), (height - 60) / y.length - 30),
    measure,
    onChoose: (value) => choose(desk, given, track, value),
  };
  return [data, options] as const;
}

/** Of a panel above the page, px: several curves need more to be told apart than one, even if the last panel is scrolled to. */
const leastHeight = ({ curves = [] }: ChartCell): number => (curves.length > 1 ? 110 : 56);

/** The designs of each curve over the whole range; null where none of them is there yet. */
function pointsOf(
  { session, swept, studies }: Desk,
  cell: ChartCell,
  given: Step,
  track: Track,
): readonly SweepPoint[][] | null {
  const { program } = session;
  if (isSlow(program, cell)) {
    const news = studies.news(cell.id);
    const points = news ? sweptPoints(news, 1 + (cell.y?.length ?? 0)) : [];
    return points.flat().length === 0 && news?.status !== "done" ? null : points;
  }
  const values = positionsOver(track, pointsOn(cell.curves)).map((position) => valueAt(track, position));
  const rows = swept.take(program, (id) => session.result(id), given, values, cell.id);
  return chartPaths(cell).curves.map((_, curve) =>
    rows.map((row, index) => pointOf(values[index] ?? 0, cell, row, curve)),
  );
}

/**
 * A curve for each trial that is drawn thin: the same given swept in its design. None where that is slow, or where the
 * trial only sets the given itself and so lies on the curve that is there.
 */
function trialCurves(desk: Desk, cell: ChartCell, track: Track, shown: readonly SweepPoint[]): FurtherCurve[] {
  const values = shown.map(({ value }) => value);
  return desk.ghosts.lines(cell.id).flatMap(({ name, result, design: { program, result: resultOf } }) => {
    const given = program?.byName.get(cell.sweep ?? "");
    if (!program || !given || isSlow(program, cell) || rangeTrackOf(given)?.unit !== track.unit) return [];
    const rows = desk.swept.take(program, resultOf, given, values, cell.id, name);
    const points = rows.map((row, index) => pointOf(values[index] ?? 0, cell, row, 0));
    if (points.every((point, index) => samePoint(point, shown[index] as SweepPoint))) return [];
    return [{ name, points, present: designsOf(cell, result)[0] ?? null }];
  });
}

/** How a quantity is told, by its first curve that has it; of a record by the name of its field. */
function quantityOf({ curves, y = [] }: ChartCell, name: string, index: number, { parts = [] }: Ok): Quantity {
  const each = 1 + y.length;
  const own = parts.filter((_, at) => at > 0 && (at - 1) % each === index).find((part) => part.ok);
  const unit = own?.ok && own.shape.kind === "number" ? own.shape.unit : "1";
  return { name, unit: unit === "1" ? "" : unit, label: curves ? name.replaceAll(/[._]/g, " ") : undefined };
}

/** The design on each curve of a chart as it is now; none where the chart has not been computed. */
function designsOf(cell: ChartCell, result: Result | undefined): SweepPoint[] {
  if (!result) return [];
  const value = numberOf(result.parts?.[0]) ?? 0;
  return chartPaths(cell).curves.map((_, curve) => pointOf(value, cell, result, curve));
}

/** A design on a curve: the parts of a chart's result are the swept given, then for each curve x and each y. */
function pointOf(value: number, { y = [] }: ChartCell, result: Result | undefined, curve: number): SweepPoint {
  const each = 1 + y.length;
  const own = (result?.parts ?? []).slice(1 + curve * each, 1 + (curve + 1) * each);
  const failed = own.find((part) => !part.ok) ?? (own.length === 0 ? result : undefined);
  const reason = failed && !failed.ok ? failed.error.message : undefined;
  const [x, ...up] = own;
  return {
    value,
    x: numberOf(x),
    y: y.map((_, index) => numberOf(up[index])),
    ...(reason !== undefined && { reason }),
  };
}

/** How far from the present design nothing can be seen: what the cell names, or that share of x. */
function bandOf({ band, curves, y = [] }: ChartCell, { parts = [] }: Ok, { x }: SweepPoint): number | undefined {
  if (band === undefined || x === null) return undefined;
  const part = parts[1 + (curves?.length ?? 1) * (1 + y.length)];
  if (!part?.ok || part.shape.kind !== "number" || typeof part.value !== "number") return undefined;
  const isShare = part.shape.unit === "%" || part.shape.unit === "1";
  return Math.abs(isShare ? part.value * x : part.value);
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
