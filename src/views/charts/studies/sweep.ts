/** The chart of a sweep: one input over its range, a panel for each result, a curve for the design and one a trial. */
import type { SweepOutcome } from "../../../cells/index.ts";
import { type LiveDrawing, later, layer, type Mark, type Surroundings } from "../../drawings/sketch.ts";
import { labelMarks, leaderStrokes, straight, strokeMarks } from "../../drawings/strokes.ts";
import { axisTexts } from "../axes.ts";
import { choiceLayer } from "../choice-layer.ts";
import type { Choice } from "../choices.ts";
import { curveClass } from "../curve-class.ts";
import { type ChartState, liveChart, type SketchedChart } from "../live-chart.ts";
import { panelSheet } from "../panels.ts";
import { checkRows, type Span, spansOf } from "./check-rows.ts";
import { valueAt } from "./curve-pieces.ts";
import { gapNote } from "./gaps.ts";
import { type LegendItem, legendMarks } from "./legend.ts";
import { noteMark } from "./note-line.ts";
import {
  bandName,
  chartMark,
  chosenAmong,
  hint,
  isSameValue,
  readOptions,
  type StudyOptions,
  titled,
} from "./study-chart.ts";
import { type SweepSpot, sweepPanel } from "./sweep-panel.ts";
import { curveName, failingRows, pointNames, sweepGaps, sweepTitle, sweepWords } from "./sweep-words.ts";

/** Draws the chart of a sweep, also of one that is still going. Throws on an option it does not know. */
export const sweepChart = (data: SweepOutcome, options: StudyOptions, surroundings: Surroundings): SVGSVGElement =>
  liveSweepChart(data, options, surroundings).element;

/** Draws the chart of a sweep that follows new data in place. */
export const liveSweepChart = (
  data: SweepOutcome,
  options: StudyOptions,
  surroundings: Surroundings,
): LiveDrawing<SweepOutcome, StudyOptions> =>
  liveChart(
    sketchSweep,
    ({ index }, state) => {
      const value = state.data.input.values[index];
      if (value !== undefined) state.options.onChoose?.([value]);
    },
    data,
    options,
    surroundings,
  );

function sketchSweep({ data, options, focus, under }: ChartState<SweepOutcome, StudyOptions>): SketchedChart {
  const { width, measure, bands, chosen } = readOptions(options, "chart of a sweep");
  const { input, results, curves } = data;
  const sheet = panelSheet(
    { values: input.values, limits: [], unit: input.unit },
    results.map(({ unit }, index) => ({ values: numbersOf(data, index), limits: edgesOf(data, index, bands), unit })),
    width,
    options.panelHeight,
    measure,
  );
  const x = input.values.map(sheet.x.place);
  const failing = failingSpans(data, x);
  const hand = under ?? focus;
  const chosenPoint = chosenAmong(
    input.values.map((value) => [value]),
    chosen,
  );
  const panels = sheet.panels.map((panel) =>
    sweepPanel(
      panel,
      data,
      sheet,
      { band: bands[panel.index] ?? null, failing, near: hand?.index ?? -1, chosen: chosenPoint },
      measure,
    ),
  );
  const nameOf = pointNames(data);
  const told = hand ? nameOf(hand.index, hand.panel) : null;
  const groups = sweepGaps(data);
  const below = { left: 4, right: sheet.right };
  const legend = legendMarks(legendOf(data, bands, failing), { ...below, top: sheet.titleLine + 10 }, measure);
  const rows = failingRows(data);
  const checks = checkRows(rows.slice(0, mostRows), x, { right: sheet.right, top: legend.bottom + 6 }, measure);
  const noteLine = checks.bottom + 20;
  const handAt = hand === null ? undefined : x[hand.index];
  const spots = panels.map((panel) => panel.spots);
  const layers = [
    layer(
      "area-layer",
      panels.flatMap(({ areas }) => areas),
    ),
    layer("hatch-layer", strokeMarks(panels.flatMap(({ hatch }) => hatch))),
    layer("grid-layer", strokeMarks(panels.flatMap(({ grid }) => grid))),
    layer(
      "guide-layer",
      handAt === undefined
        ? []
        : strokeMarks(
            sheet.panels.map(({ top, bottom }) => straight("guide", { x: handAt, y: top }, { x: handAt, y: bottom })),
          ),
    ),
    layer("curve-layer", strokeMarks(panels.flatMap((panel) => panel.curves))),
    layer("leader-layer", strokeMarks(panels.flatMap(({ labels }) => leaderStrokes(labels)))),
    layer(
      "point-layer",
      panels.flatMap(({ points }) => points),
    ),
    layer(
      "design-layer",
      panels.flatMap(({ designs }) => designs),
    ),
    layer(
      "figure-layer",
      panels.flatMap(({ labels }) => labelMarks(labels)),
    ),
    layer(
      "axis-layer",
      axisTexts(
        { x: titled(input.target, input.unit), y: results.map(({ text, unit }) => titled(text, unit)) },
        sheet,
        measure,
      ),
    ),
    layer("legend-layer", legend.marks),
    layer("check-layer", checks.marks),
    layer(
      "note-layer",
      noteMark(
        {
          inHand: told,
          failed: gapNote(groups, input.values.length * curves.length),
          hint:
            rows.length > mostRows
              ? `and ${rows.length - mostRows} more checks in the table`
              : options.onChoose
                ? hint
                : "",
        },
        { ...below, y: noteLine },
        measure,
      ),
    ),
    later("g", () => choicesOf(spots, data, focus, nameOf)),
  ];
  const size = { width: sheet.width, height: Math.ceil(noteLine + 10) };
  const title = options.title ?? sweepTitle(data);
  return { mark: chartMark("sweep", size, title, () => sweepWords(data, bands), layers), spots };
}

const numbersOf = ({ curves }: SweepOutcome, result: number): number[] =>
  curves.flatMap(({ results }) => (results[result] ?? []).flatMap((value) => value ?? []));

/** The ends of the band about the present design. */
function edgesOf({ input, curves }: SweepOutcome, result: number, bands: readonly (number | null)[]): number[] {
  const band = bands[result] ?? null;
  const [present] = curves;
  if (band === null || !present || present.at === null) return [];
  const value = valueAt(input.values, present.results[result] ?? [], present.at);
  return value === null ? [] : [value - band, value + band];
}

/** Where at least one check of the present design fails, px. */
function failingSpans({ curves }: SweepOutcome, x: readonly number[]): Span[] {
  return spansOf(x, (point) => curves[0]?.checks.some((holds) => holds[point] === false) ?? false);
}

function legendOf({ curves }: SweepOutcome, bands: readonly (number | null)[], failing: readonly Span[]): LegendItem[] {
  const isTold = bands.some((band) => band !== null) && curves[0]?.at !== null;
  return [
    ...(curves.length < 2
      ? []
      : curves.map(
          (curve, index): LegendItem => ({ sample: "line", class: curveClass(index), text: curveName(curve) }),
        )),
    ...(isTold ? [{ sample: "area", class: "band", text: bandName } as const] : []),
    ...(failing.length > 0 ? [{ sample: "hatch", class: "hatch", text: "a check fails" } as const] : []),
  ];
}

/** A target for each point; the Tab key reaches the one in focus, else the one nearest to the present design. */
function choicesOf(
  spots: readonly (readonly SweepSpot[])[],
  { input, curves }: SweepOutcome,
  focus: Choice | null,
  nameOf: (point: number, panel: number) => string,
): Mark {
  const at = curves[0]?.at ?? null;
  const away = input.values.map((value) => (at === null ? 0 : Math.abs(value - at)));
  const nearest = Math.max(0, away.indexOf(Math.min(...away)));
  const targets = spots.map((panelSpots, panel) =>
    panelSpots.map(({ x, y }, index) => ({
      x,
      y,
      name: nameOf(index, panel),
      isCurrent: at !== null && isSameValue(input.values[index] ?? Number.NaN, at),
    })),
  );
  return choiceLayer(targets, focus ?? { panel: 0, index: nearest });
}

/** Rows of checks below a chart; the table has them all. */
const mostRows = 6;
