/** The chart of a solve: the result over the range, what it is to reach, and every value at which it does. */
import type { SolveOutcome } from "../../../cells/index.ts";
import { linesThrough, type Point } from "../../drawings/geometry.ts";
import { type Label, placeLabels } from "../../drawings/labels.ts";
import { type LiveDrawing, later, layer, type Mark, mark, round, type Surroundings } from "../../drawings/sketch.ts";
import {
  labelMarks,
  leaderStrokes,
  ring,
  type Stroke,
  straight,
  strokeLines,
  strokeMarks,
  textAt,
} from "../../drawings/strokes.ts";
import { type Measure, shorten } from "../../drawings/text-size.ts";
import { axisTexts, gridStrokes } from "../axes.ts";
import { besideCurve } from "../beside-curve.ts";
import { choiceLayer } from "../choice-layer.ts";
import { type ChartState, liveChart, type SketchedChart } from "../live-chart.ts";
import { type Panel, type PanelSheet, panelSheet } from "../panels.ts";
import { crossPath, standApart } from "../points.ts";
import { curvePieces, valueAt } from "./curve-pieces.ts";
import { gapNote } from "./gaps.ts";
import { noteMark } from "./note-line.ts";
import { solutionNames, solveGaps, solveTitle, solveWords, targetText, verdict } from "./solve-words.ts";
import { chartMark, chosenAmong, hint, readOptions, type StudyOptions, teller, titled } from "./study-chart.ts";

/** Draws the chart of a solve, also of one that is still going. Throws on an option it does not know. */
export const solveChart = (data: SolveOutcome, options: StudyOptions, surroundings: Surroundings): SVGSVGElement =>
  liveSolveChart(data, options, surroundings).element;

/** Draws the chart of a solve that follows new data in place. */
export const liveSolveChart = (
  data: SolveOutcome,
  options: StudyOptions,
  surroundings: Surroundings,
): LiveDrawing<SolveOutcome, StudyOptions> =>
  liveChart(
    sketchSolve,
    ({ index }, state) => {
      const at = candidatesOf(state.data)[index];
      if (at !== undefined) state.options.onChoose?.([at]);
    },
    data,
    options,
    surroundings,
  );

/** What can be chosen: the solutions, else what comes nearest. */
const candidatesOf = ({ solutions, nearest }: SolveOutcome): number[] =>
  solutions.length > 0 ? solutions.map(({ at }) => at) : nearest ? [nearest.at] : [];

function sketchSolve({ data, options, focus, under }: ChartState<SolveOutcome, StudyOptions>): SketchedChart {
  const { width, measure, chosen } = readOptions(options, "chart of a solve");
  const { input, result, goal, curve } = data;
  const sheet = panelSheet(
    { values: curve.x, limits: [], unit: input.unit },
    [{ values: [...curve.y.flatMap((value) => value ?? []), goal], limits: [], unit: result.unit }],
    width,
    options.panelHeight,
    measure,
  );
  const panel = sheet.panels[0] as Panel;
  const content = contentOf(data, sheet, panel);
  const ground = {
    sheet: { left: sheet.left + 3, top: panel.top - 4, right: sheet.width - 4, bottom: panel.bottom - 2 },
    lines: [
      ...content.pieces.flatMap(linesThrough),
      ...strokeLines(content.limits),
      ...[...content.spots, ...(content.present ? [content.present] : [])].flatMap((spot) =>
        ring(spot, solutionRadius),
      ),
      ...content.gaps.flatMap((gap) => ring(gap, 5, 4)),
    ],
    measure,
  };
  const labels = placeLabels(labelsOf(data, sheet, panel, content, measure), ground).placed;
  const hand = under ?? focus;
  const names = solutionNames(data);
  const chosenSpot =
    content.spots[
      chosenAmong(
        candidatesOf(data).map((at) => [at]),
        chosen,
      )
    ];
  const near = hand ? content.spots[hand.index] : undefined;
  const saysLine = sheet.titleLine + 22;
  const noteLine = saysLine + 20;
  const isReached = data.solutions.length > 0;
  const layers = [
    layer(
      "grid-layer",
      strokeMarks(
        gridStrokes(
          panel,
          sheet,
          labels.map(({ box }) => box),
        ),
      ),
    ),
    layer("limit-layer", strokeMarks(content.limits)),
    layer("curve-layer", strokeMarks(content.pieces.map((points): Stroke => ({ class: "curve", points })))),
    layer("leader-layer", strokeMarks(leaderStrokes(labels))),
    layer(
      "point-layer",
      content.gaps.map((gap) => mark("path", { class: "failed", d: crossPath(gap, 2.6) })),
    ),
    layer("design-layer", [
      ...(content.present ? [circle("baseline", content.present, solutionRadius)] : []),
      ...content.spots.map((spot) => circle(isReached ? "solution" : "point", spot, solutionRadius)),
      ...(near ? [circle("point near", near, 4)] : []),
      ...(chosenSpot ? [circle("chosen-ring", chosenSpot, solutionRadius + 3)] : []),
    ]),
    layer("figure-layer", labelMarks(labels)),
    layer(
      "axis-layer",
      axisTexts({ x: titled(input.target, input.unit), y: [titled(result.text, result.unit)] }, sheet, measure),
    ),
    layer("verdict-layer", [
      textAt(
        isReached ? "figure" : "figure-moved",
        shorten(verdict(data), sheet.right - 4, strong, measure),
        { x: 4, y: saysLine },
        strong,
      ),
    ]),
    layer(
      "note-layer",
      noteMark(
        {
          inHand: hand ? (names[hand.index] ?? null) : null,
          failed: gapNote(solveGaps(data), curve.x.length),
          hint: options.onChoose && content.spots.length > 0 ? hint : "",
        },
        { left: 4, right: sheet.right, y: noteLine },
        measure,
      ),
    ),
    later("g", () => choicesOf(content.spots, names, focus?.index ?? 0)),
  ];
  const size = { width: sheet.width, height: noteLine + 10 };
  return {
    mark: chartMark("solve", size, options.title ?? solveTitle(data), () => solveWords(data), layers),
    spots: [content.spots],
  };
}

/** What lies in the field, in px. */
function contentOf(data: SolveOutcome, { left, right, x }: PanelSheet, panel: Panel) {
  const { curve, input, goal, solutions, nearest, jumps, gaps } = data;
  const y = panel.axis.place(goal);
  const drops = solutions.map(({ at }) =>
    straight("guide", { x: x.place(at), y }, { x: x.place(at), y: panel.bottom }),
  );
  const steps = jumps.map((at) =>
    straight("jump", { x: x.place(at), y: panel.top }, { x: x.place(at), y: panel.bottom }),
  );
  const now = input.nominal === null ? null : valueAt(curve.x, curve.y, input.nominal);
  const spots =
    solutions.length > 0
      ? solutions.map(({ at }) => ({ x: x.place(at), y }))
      : nearest
        ? [{ x: x.place(nearest.at), y: panel.axis.place(nearest.value) }]
        : [];
  const present =
    input.nominal === null || now === null ? null : { x: x.place(input.nominal), y: panel.axis.place(now) };
  return {
    y,
    pieces: curvePieces(curve.x, curve.y, x.place, panel.axis.place),
    limits: [straight("target", { x: left, y }, { x: right, y }), ...drops, ...steps],
    spots,
    // The present design may be a solution already.
    present: present && spots.some((spot) => Math.hypot(spot.x - present.x, spot.y - present.y) < 2) ? null : present,
    gaps: standApart(
      gaps.map(({ at }) => ({ x: x.place(at), y: panel.bottom - 9 })),
      9,
    ),
  };
}

function labelsOf(
  data: SolveOutcome,
  { left, right, x }: PanelSheet,
  { top, bottom }: Panel,
  { spots, present, pieces, y }: ReturnType<typeof contentOf>,
  measure: Measure,
): Label[] {
  const { input, solutions, jumps } = data;
  const tell = teller(input.unit);
  const lines = pieces.flatMap(linesThrough);
  const isReached = solutions.length > 0;
  const found = spots.map((spot, index): Label => {
    const at = candidatesOf(data)[index] ?? Number.NaN;
    const text = isReached ? tell(at) : `nearest at ${tell(at)}`;
    const places = besideCurve(spot, lines);
    return { ...strong, class: isReached ? "figure-holds" : "figure", text, at: spot, own: 5, gap: 10, places };
  });
  const goal = shorten(targetText(data), (right - left) / 2, plain, measure);
  const half = measure(goal, plain) / 2 + 6;
  const goalLabel: Label = {
    ...plain,
    class: "figure-blue",
    text: goal,
    at: { x: left + half, y },
    elsewhere: [right - half, (left + right) / 2, left + 1.5 * half + 40, right - 1.5 * half - 40].map((at) => ({
      x: at,
      y,
    })),
    places: ["above", "below"],
    gap: 6,
    leader: false,
  };
  return [
    ...found,
    goalLabel,
    ...(present
      ? [{ ...plain, text: "as it is", at: present, own: 5, gap: 9, places: besideCurve(present, lines) }]
      : []),
    ...jumps.map(
      (at): Label => ({
        ...plain,
        text: "jumps past",
        at: { x: x.place(at), y: top + 16 },
        elsewhere: [0.4, 0.6, 0.8].map((share) => ({ x: x.place(at), y: top + share * (bottom - top) })),
        places: ["right", "left"],
        gap: 6,
        leader: false,
      }),
    ),
  ];
}

const choicesOf = (spots: readonly Point[], names: readonly string[], stop: number): Mark =>
  choiceLayer([spots.map((spot, index) => ({ ...spot, name: names[index] ?? "" }))], {
    panel: 0,
    index: Math.min(stop, Math.max(0, spots.length - 1)),
  });

const circle = (name: string, { x, y }: Point, r: number): Mark =>
  mark("circle", { class: name, cx: round(x), cy: round(y), r });

const solutionRadius = 5;
const plain = { size: 12, weight: 400, class: "note" } as const;
const strong = { size: 13, weight: 600 } as const;
