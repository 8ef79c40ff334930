/** The chart of a best: the trade-off front of two results, or of one where each input came to stand and how it was found. */
import type { BestOutcome } from "../../../cells/index.ts";
import { type LiveDrawing, later, layer, type Mark, type Surroundings } from "../../drawings/sketch.ts";
import type { Measure } from "../../drawings/text-size.ts";
import { choiceLayer } from "../choice-layer.ts";
import { type ChartState, liveChart, type SketchedChart } from "../live-chart.ts";
import { type BarRow, barRows } from "./bar-rows.ts";
import { coursePanel, frontPanel } from "./best-panels.ts";
import { bestTitle, bestWords, designNames, endText, verdict } from "./best-words.ts";
import { noteMark } from "./note-line.ts";
import { chartMark, chosenAmong, hint, readOptions, type StudyOptions, teller } from "./study-chart.ts";

/** Draws the chart of a best, also of one that is still going. Throws on an option it does not know. */
export const bestChart = (data: BestOutcome, options: StudyOptions, surroundings: Surroundings): SVGSVGElement =>
  liveBestChart(data, options, surroundings).element;

/** Draws the chart of a best that follows new data in place. */
export const liveBestChart = (
  data: BestOutcome,
  options: StudyOptions,
  surroundings: Surroundings,
): LiveDrawing<BestOutcome, StudyOptions> =>
  liveChart(
    sketchBest,
    ({ index }, state) => {
      const design = state.data.designs[index];
      if (design) state.options.onChoose?.(design.inputs);
    },
    data,
    options,
    surroundings,
  );

function sketchBest({ data, options, focus, under }: ChartState<BestOutcome, StudyOptions>): SketchedChart {
  const { width, measure, bands, chosen } = readOptions(options, "chart of a best");
  const sides = { left: 4, right: width - 12 };
  const hand = under ?? focus;
  const names = designNames(data);
  const isFront = data.results.length > 1 && data.isFound;
  const says = verdict(data);
  const head = barRows(
    [
      { text: says.text, class: says.isGood ? "figure" : "figure-moved", isStrong: true },
      ...(says.more === "" ? [] : [{ text: says.more }]),
    ],
    { ...sides, top: 6 },
    measure,
  );
  const chosenIndex = chosenAmong(
    data.designs.map(({ inputs }) => inputs),
    chosen,
  );
  const panel = isFront
    ? frontPanel(
        data,
        {
          top: head.bottom,
          width,
          panelHeight: options.panelHeight,
          bands,
          near: hand?.index ?? -1,
          chosen: chosenIndex,
        },
        measure,
      )
    : inputsPanel(
        data,
        { ...sides, top: head.bottom + 4 },
        { width, panelHeight: options.panelHeight, chosen: chosenIndex },
        measure,
      );
  const noteLine = panel.bottom + 18;
  const note = noteMark(
    {
      inHand: hand ? (names[hand.index] ?? null) : null,
      failed: null,
      hint: options.onChoose && panel.spots.length > 0 ? hint : "",
    },
    { ...sides, y: noteLine },
    measure,
  );
  const layers = [
    layer("head-layer", head.marks),
    ...panel.layers,
    layer("note-layer", note),
    later("g", () =>
      choiceLayer([panel.spots.map((spot, index) => ({ ...spot, name: names[index] ?? "" }))], {
        panel: 0,
        index: Math.min(focus?.index ?? 0, Math.max(0, panel.spots.length - 1)),
      }),
    ),
  ];
  const title = options.title ?? bestTitle(data);
  const size = { width, height: Math.ceil(noteLine + 10) };
  return {
    mark: chartMark("best", size, title, () => bestWords(data, bands), layers),
    spots: [panel.spots],
  };
}

/** Where each input of the best design stands in its range, and how the searches came to it. */
function inputsPanel(
  data: BestOutcome,
  sides: { left: number; right: number; top: number },
  options: { width: number; panelHeight: number | undefined; chosen: number },
  measure: Measure,
) {
  const [design] = data.designs;
  const [from, to] = [sides.left + 8, sides.right - 8];
  const rows = data.inputs.map(({ target, unit, from: low, to: high, nominal }, axis): BarRow => {
    const tell = teller(unit);
    const value = design?.inputs[axis];
    const place = (at: number): number => from + ((at - low) / (high - low)) * (to - from);
    const isEnd = data.atEnds.find((each) => each.target === target);
    return {
      text: `${target}${value === undefined ? "" : ` ${tell(value)}`}${nominal === null ? "" : `, now ${tell(nominal)}`}${isEnd ? ` — ${endText}` : ""}`,
      class: "figure",
      right: `${tell(low)} to ${tell(high)}`,
      whiskers: [{ from, to, class: "grid" }],
      points: [
        ...(nominal === null || nominal < low || nominal > high
          ? []
          : [{ at: place(nominal), class: "baseline", radius: 5 }]),
        ...(value === undefined ? [] : [{ at: place(value), class: data.isFound ? "solution" : "point", radius: 5 }]),
        ...(value !== undefined && options.chosen === 0 ? [{ at: place(value), class: "chosen-ring", radius: 8 }] : []),
      ],
    };
  });
  const made = barRows(rows, sides, measure);
  const course = coursePanel(
    data,
    { top: made.bottom, width: options.width, panelHeight: options.panelHeight },
    measure,
  );
  const marks: Mark[] = [...made.marks];
  const first = marks.find(
    ({ attributes }) => attributes.class === "solution" || attributes.class === "point",
  )?.attributes;
  return {
    layers: [layer("bar-layer", marks), ...course.layers],
    spots: first ? [{ x: Number(first.cx), y: Number(first.cy) }] : [],
    bottom: course.bottom,
  };
}
