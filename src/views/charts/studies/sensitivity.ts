/** The chart of a sensitivity: for each result the inputs ranked by how far they move it, either way. */
import { bandOf, type Effect, type SensitivityOutcome } from "../../../cells/index.ts";
import { type LiveDrawing, layer, type Mark, type Surroundings } from "../../drawings/sketch.ts";
import { straight, strokeMarks, textAt } from "../../drawings/strokes.ts";
import { type Measure, shorten } from "../../drawings/text-size.ts";
import { axisFor } from "../axis.ts";
import { type ChartState, liveChart, type SketchedChart } from "../live-chart.ts";
import { small } from "../panels.ts";
import { type BarRow, barRows } from "./bar-rows.ts";
import { type LegendItem, legendMarks } from "./legend.ts";
import { noteMark } from "./note-line.ts";
import {
  fallenText,
  movedText,
  sensitivityGaps,
  sensitivityTitle,
  sensitivityWords,
  slopeText,
} from "./sensitivity-words.ts";
import { bandName, chartMark, readOptions, type StudyOptions, teller, titled } from "./study-chart.ts";

/** Draws the chart of a sensitivity, also of one that is still going. Throws on an option it does not know. */
export const sensitivityChart = (
  data: SensitivityOutcome,
  options: StudyOptions,
  surroundings: Surroundings,
): SVGSVGElement => liveSensitivityChart(data, options, surroundings).element;

/** Draws the chart of a sensitivity that follows new data in place. */
export const liveSensitivityChart = (
  data: SensitivityOutcome,
  options: StudyOptions,
  surroundings: Surroundings,
): LiveDrawing<SensitivityOutcome, StudyOptions> =>
  liveChart(sketchSensitivity, () => undefined, data, options, surroundings);

type Ranked = SensitivityOutcome["results"][number];

function sketchSensitivity({ data, options }: ChartState<SensitivityOutcome, StudyOptions>): SketchedChart {
  const { width, measure } = readOptions(options, "chart of a sensitivity");
  const sides = { left: 4, right: width - 12 };
  const marks: Mark[] = [];
  let y = 6;
  for (const result of data.results) {
    const panel = resultPanel(data, result, { ...sides, top: y }, measure);
    marks.push(...panel.marks);
    y = panel.bottom + 14;
  }
  const legend = legendMarks(legendOf(data), { ...sides, top: y - 4 }, measure);
  const fallen = barRows(
    data.fallen.slice(0, mostFallen).map((each): BarRow => ({ text: `✕ ${fallenText(each)}`, class: "figure-moved" })),
    { ...sides, top: legend.bottom + 4 },
    measure,
  );
  const noteLine = fallen.bottom + 16;
  const gaps = sensitivityGaps(data);
  const note = noteMark(
    {
      inHand: null,
      failed: gaps[0] ? `✕ without a value: ${gaps[0].where}, ${gaps[0].reason}` : null,
      hint: data.fallen.length > mostFallen ? `and ${data.fallen.length - mostFallen} more that fall` : "",
    },
    { ...sides, y: noteLine },
    measure,
  );
  const layers = [
    layer("bar-layer", marks),
    layer("legend-layer", legend.marks),
    layer("check-layer", fallen.marks),
    layer("note-layer", note),
  ];
  const size = { width, height: Math.ceil(note.length > 0 ? noteLine + 10 : fallen.bottom + 8) };
  const title = options.title ?? sensitivityTitle(data);
  return { mark: chartMark("sensitivity", size, title, () => sensitivityWords(data), layers), spots: [] };
}

/** The rows of one result over one axis of its values. */
function resultPanel(
  data: SensitivityOutcome,
  result: Ranked,
  sides: { left: number; right: number; top: number },
  measure: Measure,
): { marks: Mark[]; bottom: number } {
  const { text, unit, nominal, ranked } = result;
  const band = bandOfResult(data, result);
  const shown = ranked.slice(0, mostRows);
  const values = [
    ...shown.flatMap(({ less, more }) => [less ?? [], more ?? []].flat()),
    ...(nominal === null ? [] : [nominal]),
    ...(nominal === null || !band ? [] : [nominal - band, nominal + band]),
  ];
  const [left, right] = [sides.left + 4, sides.right - 4];
  const axis = axisFor(values, [], {
    range: [left, right],
    unit,
    count: Math.max(2, Math.round((right - left) / 100)),
    room: (tick) => 1.5 * measure(tick, small) + 8,
  });
  const centre = nominal === null ? null : axis.place(nominal);
  const name = nominal === null ? text : `${text} ${teller(unit)(nominal)}`;
  const head: BarRow = { text: name, class: "figure", isStrong: true };
  const rows = shown.map((effect) => effectRow(data, result, effect, axis.place, centre));
  const more = ranked.length - shown.length;
  const together: BarRow[] =
    band && nominal !== null && centre !== null
      ? [
          {
            text: `all that is stated together, ± ${teller(unit, 3)(band)}`,
            bars: [{ from: axis.place(nominal - band), to: axis.place(nominal + band), class: "band" }],
            ticks: [{ at: centre, class: "edge" }],
          },
        ]
      : [];
  const hidden: BarRow[] = more > 0 ? [{ text: `and ${more} more in the table` }] : [];
  const made = barRows([head, ...rows, ...together, ...hidden], sides, measure);
  const line = made.bottom + 2;
  const ticks = axis.ticks.flatMap(({ at, text: tick }) => {
    const wide = measure(tick, small);
    const x = Math.max(sides.left, Math.min(at - wide / 2, sides.right + 8 - wide));
    return [textAt("note", tick, { x, y: line + 18 }, small)];
  });
  const title = shorten(titled(text, unit), right - left, small, measure);
  return {
    marks: [
      ...made.marks,
      ...strokeMarks([
        straight("grid", { x: left, y: line }, { x: right, y: line }),
        ...axis.ticks.map(({ at }) => straight("grid", { x: at, y: line }, { x: at, y: line + 5 })),
      ]),
      ...ticks,
      textAt("note", title, { x: right - measure(title, small), y: line + 36 }, small),
    ],
    bottom: line + 40,
  };
}

function effectRow(
  data: SensitivityOutcome,
  result: Ranked,
  effect: Effect,
  place: (value: number) => number,
  centre: number | null,
): BarRow {
  const { target, less, more } = effect;
  const input = data.inputs.find((each) => each.target === target);
  const gap = data.gaps.find((each) => each.target === target);
  const text = `${target} ${input ? movedText(input) : ""}`;
  if (centre === null || (less === null && more === null)) {
    return { text: `${text}: ${gap ? `no value, ${gap.reason}` : "not yet"}`, class: gap ? "figure-moved" : "note" };
  }
  const lacking = gap && (less === null || more === null) ? `, ✕ no value with ${less === null ? "less" : "more"}` : "";
  const way = (name: string) => (input?.isAssumed ? `${name}-assumed` : name);
  return {
    text: `${text}${lacking}`,
    class: lacking === "" ? "figure" : "figure-moved",
    right: slopeText(result, effect, input),
    bars: [
      ...(less === null ? [] : [{ from: centre, to: place(less), class: way("bar-less") }]),
      ...(more === null ? [] : [{ from: centre, to: place(more), class: way("bar-more") }]),
    ],
    ticks: [{ at: centre, class: "edge" }],
  };
}

/** The band of a result by all that its inputs state; null where none states a ±, or a slope is missing. */
export function bandOfResult({ inputs }: SensitivityOutcome, { ranked }: Ranked): number | null {
  const stated = ranked.flatMap(({ target, derivative }) => {
    const input = inputs.find((each) => each.target === target);
    return input && !input.isAssumed && input.amount !== null ? [{ derivative, plusMinus: input.amount }] : [];
  });
  return stated.length === 0 ? null : bandOf(stated);
}

function legendOf(data: SensitivityOutcome): LegendItem[] {
  const isAssumed = data.inputs.some((input) => input.isAssumed);
  const isStated = data.inputs.some((input) => !input.isAssumed);
  return [
    ...(isStated
      ? ([
          { sample: "area", class: "bar-less", text: "with less of it" },
          { sample: "area", class: "bar-more", text: "with more" },
        ] as const)
      : []),
    ...(isAssumed
      ? ([
          { sample: "area", class: "bar-less-assumed", text: "1% less, where no ± is stated" },
          { sample: "area", class: "bar-more-assumed", text: "1% more" },
        ] as const)
      : []),
    ...(data.results.some((result) => bandOfResult(data, result) !== null)
      ? [{ sample: "area", class: "band", text: bandName } as const]
      : []),
  ];
}

const mostRows = 12;
const mostFallen = 5;
