/** The sweep of a chart that would take too long where a knob moves: it is studied elsewhere, like a study of its own. */
import {
  type ChartCell,
  chartPaths,
  isSlowSweep,
  type Program,
  type StudyCell,
  type StudyNews,
  type StudyOf,
} from "../cells/index.ts";
import type { SweepPoint } from "./charts/trade-off.ts";
import { positionsOver, rangeTrackOf } from "./literal.ts";

/** Enough for a smooth curve, few enough to be told apart by eye and finger, and to be computed while a knob moves. */
const mostPoints = 21;
const mostOfEach = 11;

/** How many designs a curve has at most: fewer where there are several. */
export const pointsOn = (curves: ChartCell["curves"]): number => (curves ? mostOfEach : mostPoints);

/** The sweep of the chart of that id as a study, as the notebook now has it; null where it is none, or quick. */
export function slowSweepOf(program: Program, id: string): ReturnType<StudyOf> {
  const cell = program.byId.get(id)?.cell;
  const study = cell?.kind === "chart" ? studyOf(program, cell) : null;
  const given = study && program.byName.get(study.name);
  return study && { study, ...(given && { without: given.id }) };
}

/** True where the sweep of a chart is no matter for the thread that draws. */
export function isSlow(program: Program, { id, sweep }: ChartCell): boolean {
  const [given, step] = [sweep === undefined ? undefined : program.byName.get(sweep), program.byId.get(id)];
  return given !== undefined && step !== undefined && isSlowSweep(program, given, step);
}

/**
 * The designs that the study has come to so far, those left out that are still to come: of each curve of the chart, whose
 * results stand one after the other, so many a curve.
 */
export function sweptPoints({ outcome }: StudyNews, each = Number.POSITIVE_INFINITY): SweepPoint[][] {
  if (outcome?.study !== "sweep") return [];
  const [swept] = outcome.curves;
  const results = swept?.results ?? [];
  const count = Math.min(each, results.length);
  return Array.from({ length: Math.ceil(results.length / count) }, (_, curve) => {
    const own = results.slice(curve * count, (curve + 1) * count);
    const names = new Set(outcome.results.slice(curve * count, (curve + 1) * count).map(({ text }) => text));
    return outcome.input.values.flatMap((value, point): SweepPoint[] => {
      const [x = null, ...y] = own.map((values) => values[point] ?? null);
      const reason = swept?.gaps.find((gap) => gap.point === point && names.has(gap.of))?.reason;
      if (x === null && reason === undefined) return [];
      return [{ value, x, y, ...(reason !== undefined && { reason }) }];
    });
  });
}

function studyOf(program: Program, cell: ChartCell): StudyCell | null {
  const { id, sweep, x, y, curves } = cell;
  const track = rangeTrackOf(sweep === undefined ? undefined : program.byName.get(sweep));
  if (sweep === undefined || x === undefined || !y || !track || !isSlow(program, cell)) return null;
  const positions = positionsOver(track, pointsOn(curves));
  const results = chartPaths(cell).curves.flatMap(({ paths }) => paths);
  const told = (position: number): string => `${position} ${track.unit === "1" ? "" : track.unit}`.trim();
  const [from = 0, next = 0] = positions;
  return {
    ...{ id, kind: "study", name: sweep, study: "sweep", results, checks: [] },
    inputs: [{ input: sweep, range: [told(from), told(positions.at(-1) ?? 0), told(next - from)] }],
  };
}
