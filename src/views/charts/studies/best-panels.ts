/** The panels of a best: the front of two results, and how the searches for one came to its best. */
import type { BestOutcome } from "../../../cells/index.ts";
import { linesThrough, type Point } from "../../drawings/geometry.ts";
import { type Label, placeLabels } from "../../drawings/labels.ts";
import { layer, type Mark, mark, round } from "../../drawings/sketch.ts";
import { labelMarks, leaderStrokes, ring, strokeMarks } from "../../drawings/strokes.ts";
import type { Measure } from "../../drawings/text-size.ts";
import { axisTexts, gridStrokes } from "../axes.ts";
import { besideCurve } from "../beside-curve.ts";
import { type Panel, type PanelSheet, panelSheet } from "../panels.ts";
import { circlePath, pointRadius } from "../points.ts";
import { type LegendItem, legendMarks } from "./legend.ts";
import { bandName, titled } from "./study-chart.ts";

interface Around {
  /** Where the panel may begin, px. */
  readonly top: number;
  readonly width: number;
  readonly panelHeight: number | undefined;
}

/** The designs none of which is better than another in both results, with the present design and its band. */
export function frontPanel(
  data: BestOutcome,
  {
    top,
    width,
    panelHeight,
    bands,
    near,
    chosen,
  }: Around & { bands: readonly (number | null)[]; near: number; chosen: number },
  measure: Measure,
) {
  const [across, up] = data.results;
  const at = (results: readonly (number | string)[]): Point | null => {
    const [x, y] = results;
    return typeof x === "number" && typeof y === "number" ? { x, y } : null;
  };
  const designs = data.designs.flatMap(({ results }) => at(results) ?? []);
  const now = at(data.present.results);
  const all = [...designs, ...(now ? [now] : [])];
  const laid = panelSheet(
    { values: all.map(({ x }) => x), limits: [], unit: across?.unit ?? "1" },
    [{ values: all.map(({ y }) => y), limits: [], unit: up?.unit ?? "1" }],
    width,
    panelHeight,
    measure,
  );
  const { sheet, panel } = moved(laid, top);
  const place = ({ x, y }: Point): Point => ({ x: sheet.x.place(x), y: panel.axis.place(y) });
  const spots = designs.map(place);
  const present = now && place(now);
  const curve = linesThrough(spots);
  const isNear = (index: number): Point[] => (spots[index] ? [spots[index]] : []);
  const radius = pointRadius(curve);
  const labels = placeLabels(
    present
      ? [
          {
            size: 13,
            weight: 600,
            class: "figure-moved",
            text: "as it is",
            at: present,
            own: 5.5,
            gap: 10,
            places: besideCurve(present, curve),
          } satisfies Label,
        ]
      : [],
    {
      sheet: { left: sheet.left + 3, top: panel.top - 4, right: sheet.width - 4, bottom: panel.bottom - 2 },
      lines: [
        ...curve,
        ...spots.flatMap((spot) => ring(spot, radius, 4)),
        ...(present ? ring(present, 5.5) : []),
        ...isNear(chosen).flatMap((spot) => ring(spot, 8)),
      ],
      measure,
    },
  ).placed;
  const boxes = labels.map(({ box }) => box);
  const [wide = null, high = null] = bands;
  const band = now && (wide !== null || high !== null) ? bandMark(now, wide, high, sheet, panel) : null;
  const legend = legendMarks(
    [
      { sample: "disc", class: "present", text: "the present design" },
      { sample: "ring", class: "point", text: "no other is better in both" },
      ...(band ? [{ sample: "area", class: "band", text: bandName } as const] : []),
    ],
    { left: 4, right: sheet.right, top: sheet.titleLine + 8 },
    measure,
  );
  return {
    spots,
    bottom: legend.bottom + 2,
    layers: [
      layer("area-layer", band ? [band] : []),
      layer("grid-layer", strokeMarks(gridStrokes(panel, sheet, boxes))),
      layer("curve-layer", strokeMarks(spots.length > 1 ? [{ class: "ghost", points: spots }] : [])),
      layer("leader-layer", strokeMarks(leaderStrokes(labels))),
      layer("point-layer", [
        mark("path", { class: "point", d: spots.map((spot) => circlePath(spot, radius)).join("") }),
        ...isNear(near).map((spot) => circle("point near", spot, Math.max(3, radius))),
      ]),
      layer("design-layer", [
        ...(present ? [circle("present", present, 5.5)] : []),
        ...isNear(chosen).map((spot) => circle("chosen-ring", spot, 8)),
      ]),
      layer("figure-layer", labelMarks(labels)),
      layer("axis-layer", axisTexts({ x: aimed(data, 0), y: [aimed(data, 1)] }, sheet, measure)),
      layer("legend-layer", legend.marks),
    ],
  };
}

/** The best of each search after so many designs tried. */
export function coursePanel(data: BestOutcome, { top, width, panelHeight }: Around, measure: Measure) {
  const [result] = data.results;
  const courses = data.courses.filter((course) => course.some((value) => value !== null));
  if (courses.length === 0 || !result) return { layers: [], bottom: top };
  const tried = (index: number): number => (index + 1) * data.candidates;
  const longest = Math.max(...courses.map((course) => course.length));
  const laid = panelSheet(
    { values: [0, tried(longest - 1)], limits: [], unit: "1" },
    [{ values: courses.flatMap((course) => course.flatMap((value) => value ?? [])), limits: [], unit: result.unit }],
    width,
    panelHeight ?? 110,
    measure,
  );
  const { sheet, panel } = moved(laid, top);
  const lines = courses.map((course, search) => ({
    class: search === 0 ? "curve" : `trial-${search}`,
    points: course.flatMap((value, index): Point[] =>
      value === null ? [] : [{ x: sheet.x.place(tried(index)), y: panel.axis.place(value) }],
    ),
  }));
  const legend = legendMarks(
    lines.map(({ class: name }, search): LegendItem => ({ sample: "line", class: name, text: `search ${search + 1}` })),
    { left: 4, right: sheet.right, top: sheet.titleLine + 8 },
    measure,
  );
  return {
    layers: [
      layer("grid-layer", strokeMarks(gridStrokes(panel, sheet, []))),
      layer("curve-layer", strokeMarks(lines)),
      layer(
        "axis-layer",
        axisTexts({ x: "designs tried", y: [`best so far, ${titled(result.text, result.unit)}`] }, sheet, measure),
      ),
      layer("legend-layer", legend.marks),
    ] as Mark[],
    bottom: legend.bottom + 2,
  };
}

/** "least loss, %". */
const aimed = ({ results }: BestOutcome, index: number): string => {
  const result = results[index];
  return result ? `${result.goal} ${titled(result.text, result.unit)}` : "";
};

/** A sheet and its only panel further down. */
function moved(laid: PanelSheet, by: number): { sheet: PanelSheet; panel: Panel } {
  const [first] = laid.panels;
  if (!first) throw new Error("got no panel, expected one");
  const panel: Panel = {
    ...first,
    axis: {
      place: (value) => first.axis.place(value) + by,
      ticks: first.axis.ticks.map(({ at, text }) => ({ at: at + by, text })),
    },
    top: first.top + by,
    bottom: first.bottom + by,
    titleLine: first.titleLine + by,
  };
  return { panel, sheet: { ...laid, panels: [panel], tickLine: laid.tickLine + by, titleLine: laid.titleLine + by } };
}

/** What lies about the present design closer than could be seen, in the results for which that is known. */
function bandMark(now: Point, wide: number | null, high: number | null, sheet: PanelSheet, panel: Panel): Mark {
  const within = (value: number, least: number, most: number): number => Math.max(least, Math.min(most, value));
  const [left, right] =
    wide === null
      ? [sheet.left, sheet.right]
      : [-1, 1].map((sign) => within(sheet.x.place(now.x + sign * wide), sheet.left, sheet.right));
  const [bottom, top] =
    high === null
      ? [panel.bottom, panel.top]
      : [-1, 1].map((sign) => within(panel.axis.place(now.y + sign * high), panel.top, panel.bottom));
  return mark("rect", {
    class: "band",
    x: round(Math.min(left ?? 0, right ?? 0)),
    y: round(Math.min(top ?? 0, bottom ?? 0)),
    width: round(Math.abs((right ?? 0) - (left ?? 0))),
    height: round(Math.abs((bottom ?? 0) - (top ?? 0))),
  });
}

const circle = (name: string, { x, y }: Point, r: number): Mark =>
  mark("circle", { class: name, cx: round(x), cy: round(y), r });
