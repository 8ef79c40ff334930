/** Any plot as a drawing: panels above each other, with curves, points, limits and bands, their labels kept apart. */
import { type Line, linesThrough } from "../drawings/geometry.ts";
import { type PlacedLabel, placeLabels } from "../drawings/labels.ts";
import {
  checkOptions,
  type LiveDrawing,
  layer,
  liveDrawing,
  type Mark,
  mark,
  round,
  type Surroundings,
  sheetMark,
} from "../drawings/sketch.ts";
import {
  labelMarks,
  leaderStrokes,
  pathThrough,
  ring,
  type Stroke,
  straight,
  strokeLines,
  strokeMarks,
  textAt,
} from "../drawings/strokes.ts";
import { estimateWidth, type Measure, shorten } from "../drawings/text-size.ts";
import { gridStrokes } from "./axes.ts";
import { axisTitle } from "./axis.ts";
import { small } from "./panels.ts";
import type { Curve, PlotData } from "./plot-data.ts";
import { plotLabels, pointsOf, spotRadius } from "./plot-labels.ts";
import { type PlotField, type PlotSheet, plotSheet } from "./plot-sheet.ts";

/** How a plot is drawn. */
export interface PlotOptions {
  /** Width of the sheet in px, 660 unless said, at least 240. */
  readonly width?: number;
  /** Height that there is for it in px; by the width unless said. */
  readonly height?: number | undefined;
  /** How wide texts are; an estimate for the font of the page unless said. */
  readonly measure?: Measure;
}

const known = { width: true, height: true, measure: true } as const;

/** Draws a plot. Throws on an option it does not know. */
export const plot = (data: PlotData, options: PlotOptions, surroundings: Surroundings): SVGSVGElement =>
  livePlot(data, options, surroundings).element;

/** Draws a plot that follows new data in place. */
export const livePlot = (
  data: PlotData,
  options: PlotOptions,
  surroundings: Surroundings,
): LiveDrawing<PlotData, PlotOptions> => liveDrawing(sketchPlot, data, options, surroundings);

function sketchPlot(data: PlotData, options: PlotOptions): Mark {
  checkOptions(options, known, "plot");
  const { width = 660, height, measure = estimateWidth } = options;
  const sheet = plotSheet(data, Math.max(240, width), height, measure);
  const panels = sheet.panels.map((panel) => panelParts(panel, sheet, measure));
  const all = <Part>(of: (parts: (typeof panels)[number]) => readonly Part[]): Part[] => panels.flatMap(of);
  return sheetMark(data.view, sheet, data.title, data.description, [
    layer(
      "area-layer",
      all(({ areas }) => areas),
    ),
    layer("grid-layer", strokeMarks(all(({ grid }) => grid))),
    layer("limit-layer", strokeMarks(all(({ limits }) => limits))),
    layer(
      "curve-layer",
      all(({ curves }) => curves),
    ),
    layer("leader-layer", strokeMarks(all(({ labels }) => leaderStrokes(labels)))),
    layer(
      "point-layer",
      all(({ spots }) => spots),
    ),
    layer(
      "figure-layer",
      all(({ labels }) => labelMarks(labels)),
    ),
    layer("axis-layer", axisMarks(data, sheet, measure)),
    layer(
      "note-layer",
      sheet.notes.map(({ text, y }) => textAt("note", text, { x: 4, y }, small)),
    ),
  ]);
}

interface PanelParts {
  readonly areas: readonly Mark[];
  readonly grid: readonly Stroke[];
  readonly limits: readonly Stroke[];
  readonly curves: readonly Mark[];
  readonly spots: readonly Mark[];
  readonly labels: readonly PlacedLabel[];
}

function panelParts(at: PlotField, sheet: PlotSheet, measure: Measure): PanelParts {
  const { panel, x, axis, top, bottom } = at;
  const limits = limitStrokes(at, sheet);
  const spots = (panel.spots ?? []).map((spot) => ({ ...spot, at: { x: x.place(spot.x), y: axis.place(spot.y) } }));
  const lines: Line[] = [
    ...strokeLines(limits),
    ...panel.curves.flatMap((curve) => linesThrough(pointsOf(curve, at))),
    ...spots.flatMap((spot) => ring(spot.at, spotRadius)),
  ];
  const room = { left: sheet.left + 3, top: top - 3, right: sheet.width - 4, bottom: bottom - 2 };
  const { placed: labels } = placeLabels(plotLabels(at, sheet, measure), { sheet: room, lines, measure });
  const boxes = labels.map(({ box }) => box);
  return {
    areas: [...goodMarks(at, sheet), ...bandMarks(at)],
    grid: gridStrokes(at, { ...sheet, x }, boxes),
    limits,
    curves: panel.curves.map((curve) => mark("path", { class: lookOf(curve), d: pathThrough(pointsOf(curve, at)) })),
    spots: spots.map(({ look, at: { x: cx, y: cy } }) =>
      mark("circle", {
        class: { point: "mark", root: "mark-filled", before: "baseline" }[look],
        cx: round(cx),
        cy: round(cy),
        r: spotRadius,
      }),
    ),
    labels,
  };
}

const lookOf = ({ look }: Curve): string => ({ curve: "curve", aside: "aside", ghost: "ghost" })[look];

function limitStrokes({ panel, x, axis, top, bottom }: PlotField, { left, right }: PlotSheet): Stroke[] {
  return (panel.limits ?? []).flatMap(({ axis: of, at, look }) => {
    const name = look === "holds" ? "limit" : "passed";
    const place = of === "x" ? x.place(at) : axis.place(at);
    if (of === "x") {
      return place < left || place > right ? [] : [straight(name, { x: place, y: top }, { x: place, y: bottom })];
    }
    return place < top - 1 || place > bottom + 1 ? [] : [straight(name, { x: left, y: place }, { x: right, y: place })];
  });
}

function goodMarks({ panel, x, top, bottom }: PlotField, { left, right }: PlotSheet): Mark[] {
  if (!panel.good) return [];
  const clip = (at: number, edge: number): number =>
    Number.isFinite(at) ? Math.min(right, Math.max(left, x.place(at))) : edge;
  const [a, b] = [clip(panel.good.from, left), clip(panel.good.to, right)];
  if (b <= a) return [];
  return [
    mark("rect", { class: "area", x: round(a), y: round(top), width: round(b - a), height: round(bottom - top) }),
  ];
}

function bandMarks(at: PlotField): Mark[] {
  return (at.panel.bands ?? []).map(({ low, high }) => {
    const points = [...low, ...high.toReversed()].map((each) => ({ x: at.x.place(each.x), y: at.axis.place(each.y) }));
    return mark("path", { class: "band", d: pathThrough(points, "Z") });
  });
}

/** Ticks and words of all axes, and what the ghosts are. */
function axisMarks(data: PlotData, { left, right, width, panels }: PlotSheet, measure: Measure): Mark[] {
  const legend = data.before === undefined ? "" : shorten(data.before, (right - left) / 3, small, measure);
  const legendStart = right - measure(legend, small);
  const texts = panels.flatMap(({ panel, x, axis, titleLine, tickLine }, index) => {
    const until = index === 0 && legend !== "" ? legendStart - 46 : right;
    const says = shorten(axisTitle(panel.y.label, panel.y.unit), until - 4, small, measure);
    const up = axis.ticks.map(({ at, text }) =>
      textAt("note", text, { x: left - 8 - measure(text, small), y: at + 4 }, small),
    );
    if (tickLine === null) return [...up, textAt("note", says, { x: 4, y: titleLine }, small)];
    const { label, unit } = panel.x ?? data.x;
    const title = shorten(axisTitle(label, unit), right - 4, small, measure);
    const along = x.ticks.map(({ at, text }) => {
      const wide = measure(text, small);
      return textAt("note", text, { x: Math.min(at - wide / 2, width - 4 - wide), y: tickLine }, small);
    });
    return [
      ...up,
      textAt("note", says, { x: 4, y: titleLine }, small),
      ...along,
      textAt("note", title, { x: right - measure(title, small), y: tickLine + 18 }, small),
    ];
  });
  const [first] = panels;
  return !first || legend === "" ? texts : [...texts, ...legendMarks(first, legend, legendStart)];
}

/** Over the first panel: how what was before is drawn, and its name. */
function legendMarks({ panel, titleLine }: PlotField, text: string, start: number): Mark[] {
  const y = titleLine - 4;
  const sample = panel.curves.some(({ look }) => look === "ghost")
    ? strokeMarks([straight("ghost", { x: start - 30, y }, { x: start - 7, y })])
    : [mark("circle", { class: "baseline", cx: start - 7 - spotRadius, cy: y, r: spotRadius })];
  return [...sample, textAt("note", text, { x: start, y: titleLine }, small)];
}
