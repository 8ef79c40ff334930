/** The chart of a tolerance: how each result spreads over the builds, how many pass, and what to build more exactly first. */
import type { ToleranceOutcome } from "../../../cells/index.ts";
import { type LiveDrawing, layer, type Surroundings } from "../../drawings/sketch.ts";
import { type ChartState, liveChart, type SketchedChart } from "../live-chart.ts";
import { type BarRow, barRows } from "./bar-rows.ts";
import { gapNote } from "./gaps.ts";
import { histogramPanel } from "./histogram.ts";
import { type LegendItem, legendMarks } from "./legend.ts";
import { noteMark } from "./note-line.ts";
import { chartMark, readOptions, type StudyOptions } from "./study-chart.ts";
import {
  passText,
  percentText,
  sureText,
  tightenText,
  toleranceGaps,
  toleranceTitle,
  toleranceWords,
} from "./tolerance-words.ts";

/** Draws the chart of a tolerance, also of one that is still going. Throws on an option it does not know. */
export const toleranceChart = (
  data: ToleranceOutcome,
  options: StudyOptions,
  surroundings: Surroundings,
): SVGSVGElement => liveToleranceChart(data, options, surroundings).element;

/** Draws the chart of a tolerance that follows new data in place. */
export const liveToleranceChart = (
  data: ToleranceOutcome,
  options: StudyOptions,
  surroundings: Surroundings,
): LiveDrawing<ToleranceOutcome, StudyOptions> =>
  liveChart(sketchTolerance, () => undefined, data, options, surroundings);

function sketchTolerance({ data, options }: ChartState<ToleranceOutcome, StudyOptions>): SketchedChart {
  const { width, measure, allowed } = readOptions(options, "chart of a tolerance");
  const sides = { left: 4, right: width - 12 };
  let y = 6;
  const panels = data.results.map((result) => {
    const limits = allowed.filter(({ quantity }) => quantity === result.text.trim());
    const panel = histogramPanel(result, limits, { ...sides, top: y }, options.panelHeight, measure);
    y = panel.bottom + 12;
    return panel;
  });
  const legend = legendMarks(legendOf(panels.some(({ isHatched }) => isHatched)), { ...sides, top: y - 4 }, measure);
  const passing = barRows(passRows(data, sides), { ...sides, top: legend.bottom + 6 }, measure);
  const noteLine = passing.bottom + 14;
  const note = noteMark(
    {
      inHand: null,
      failed: gapNote(toleranceGaps(data), data.built),
      hint: data.built < data.builds ? `${data.built} of ${data.builds} built so far` : "",
    },
    { ...sides, y: noteLine },
    measure,
  );
  const layers = [
    layer(
      "bar-layer",
      panels.flatMap(({ bars }) => bars),
    ),
    layer(
      "hatch-layer",
      panels.flatMap(({ hatch }) => hatch),
    ),
    layer(
      "limit-layer",
      panels.flatMap(({ lines }) => lines),
    ),
    layer(
      "figure-layer",
      panels.flatMap(({ texts }) => texts),
    ),
    layer("legend-layer", legend.marks),
    layer("check-layer", passing.marks),
    layer("note-layer", note),
  ];
  const size = { width, height: Math.ceil(note.length > 0 ? noteLine + 10 : passing.bottom + 6) };
  const title = options.title ?? toleranceTitle(data);
  return { mark: chartMark("tolerance", size, title, () => toleranceWords(data, allowed), layers), spots: [] };
}

const legendOf = (isHatched: boolean): LegendItem[] => [
  { sample: "line", class: "percentile", text: "2.5%, half and 97.5% of the builds lie below" },
  ...(isHatched ? [{ sample: "hatch", class: "hatch", text: "a check fails" } as const] : []),
];

/** How many pass, check by check where some fail, and what half a ± would do. */
function passRows(data: ToleranceOutcome, { left, right }: { left: number; right: number }): BarRow[] {
  const { passing, checks, tighten, built } = data;
  if (!passing) return [];
  const place = (share: number): number => left + share * (right - left);
  const whole = { from: place(0), to: place(1), class: "share-rest" };
  const [low, high] = passing.between;
  const failing = checks.filter(({ failed, unknown }) => failed + unknown > 0);
  const sure = tighten.filter(({ gain }) => gain > 0).slice(0, mostRows);
  return [
    {
      text: passText(data),
      class: "figure",
      isStrong: true,
      bars: [whole, { from: place(0), to: place(passing.share), class: "share-bar" }],
      whiskers: [{ from: place(low), to: place(high), class: "edge" }],
    },
    { text: sureText(data) },
    ...failing.map(
      ({ name, held, unknown }): BarRow => ({
        text: `✕ ${name} fails in ${percentText(1 - (held + unknown) / built)}${unknown > 0 ? `, not known in ${percentText(unknown / built)}` : ""}`,
        class: "figure-moved",
      }),
    ),
    ...(passing.share === 1 ? [] : [{ text: tightenText(data), class: "figure", isStrong: true }]),
    ...sure.map(
      ({ target, passing: then }): BarRow => ({
        text: `${target} with half its ±`,
        right: `${percentText(then)} would pass`,
        bars: [
          whole,
          { from: place(0), to: place(passing.share), class: "share-bar" },
          { from: place(passing.share), to: place(then), class: "share-gain" },
        ],
      }),
    ),
  ];
}

const mostRows = 5;
