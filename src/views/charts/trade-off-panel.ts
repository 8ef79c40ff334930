/** One panel of a trade-off chart: what checks allow, the grid, the curve, its points, the designs and their labels. */
import { type Box, type Line, linesThrough, type Point } from "../drawings/geometry.ts";
import { type PlacedLabel, placeLabels } from "../drawings/labels.ts";
import { type Mark, mark, round } from "../drawings/sketch.ts";
import { pathThrough, ring, type Stroke, straight, strokeLines } from "../drawings/strokes.ts";
import type { Measure } from "../drawings/text-size.ts";
import { allowedArea, type Limit } from "./allowed-area.ts";
import { gridStrokes } from "./axes.ts";
import { curveClass } from "./curve-class.ts";
import type { Panel } from "./panels.ts";
import { circlePath, crossPath, crossReach, pointRadius, standApart } from "./points.ts";
import type { SweepPoint, TradeOffData } from "./trade-off-data.ts";
import { baselineRadius, markedRadius, panelLabels, presentRadius } from "./trade-off-labels.ts";
import { type Spot, spotsIn, type TradeOffSheet } from "./trade-off-sheet.ts";

/** The parts of a panel, layer by layer. */
export interface PanelParts {
  readonly areas: readonly Mark[];
  readonly grid: readonly Stroke[];
  readonly limits: readonly Stroke[];
  readonly curves: readonly Mark[];
  /** Of all curves, one after the other. */
  readonly spots: readonly Spot[];
  readonly points: readonly Mark[];
  readonly designs: readonly Mark[];
  readonly labels: readonly PlacedLabel[];
}

/**
 * Draws a panel but for its axes; labels that found no room are left out, their points still tell it. `near` counts the
 * point that is in hand.
 */
export function panelParts(
  panel: Panel,
  data: TradeOffData,
  sheet: TradeOffSheet,
  measure: Measure,
  near: number | null,
): PanelParts {
  const spots = spotsIn(panel, data.points, sheet);
  const further = (data.further ?? []).map((each) => ({
    name: each.name,
    spots: spotsIn(panel, each.points, sheet),
    present: placeOf(each.present, panel, sheet),
  }));
  const every = [spots, ...further.map((each) => each.spots)].flat();
  const radius = pointRadius(curvePieces(spots)) * (further.length > 0 ? 0.7 : 1);
  const area = allowedArea(panel, data, sheet);
  const limits = area.limits.map((limit) => limitStroke(limit, panel, sheet));
  const present = placeOf(data.present, panel, sheet);
  const baseline = placeOf(data.baseline ?? null, panel, sheet);
  const marked = (data.marked ?? []).flatMap((design) => {
    const at = placeOf(design, panel, sheet);
    return at ? [{ name: design.name, at }] : [];
  });
  const curve = curvePieces(spots);
  const lines: Line[] = [
    ...strokeLines(limits),
    ...curve,
    ...further.flatMap((each) => curvePieces(each.spots)),
    ...every.flatMap((spot) => ring(spot, spot.failed ? crossReach(radius) + 1 : radius, 4)),
    ...(present ? ring(present, presentRadius) : []),
    ...further.flatMap((each) => (each.present ? ring(each.present, furtherRadius) : [])),
    ...(baseline ? ring(baseline, baselineRadius) : []),
    ...marked.flatMap(({ at }) => ring(at, markedRadius)),
  ];
  const room = { left: sheet.left + 3, top: panel.top - 4, right: sheet.width - 4, bottom: panel.bottom - 2 };
  const others = further.map((each) => ({ name: each.name, curve: curvePieces(each.spots) }));
  const content = { spots, radius, curve, area, present, baseline, marked, further: others };
  const wanted = panelLabels(panel, data, sheet, content, measure);
  const { placed: labels } = placeLabels(wanted, { sheet: room, lines, measure });
  const boxes = labels.map(({ box }) => box);
  return {
    areas: [...(area.box ? [areaMark("area", area.box)] : []), ...bandMarks(panel, data, sheet)],
    grid: gridStrokes(panel, sheet, boxes),
    limits,
    curves: [...further.map((each) => each.spots).toReversed(), spots].map((each, index, all) =>
      mark("path", { class: curveClass(all.length - 1 - index), d: curvePath(each) }),
    ),
    spots: every,
    points: pointMarks(every, crossesOf(every, further.length > 0), radius, near),
    designs: [
      ...further.flatMap((each) => (each.present ? [circle("design-ring", each.present, furtherRadius)] : [])),
      ...(baseline ? [circle("baseline", baseline, baselineRadius)] : []),
      ...marked.map(({ at }) => circle("design-ring", at, markedRadius)),
      ...(present ? [circle("present", present, presentRadius)] : []),
    ],
    labels,
  };
}

/**
 * The points: one outline for all that have a value, since it moves as one, a hollow cross for each that has none, and
 * the one in hand once more, filled.
 */
function pointMarks(spots: readonly Spot[], crosses: readonly Spot[], radius: number, near: number | null): Mark[] {
  const drawn = spots.filter(({ failed }) => !failed);
  const inHand = near === null ? undefined : spots[near];
  return [
    mark("path", { class: "point", d: drawn.map((spot) => circlePath(spot, radius)).join("") }),
    ...crosses.map((spot) => mark("path", { class: "failed", d: crossPath(spot, radius) })),
    ...(inHand && !inHand.failed ? [circle("point near", inHand, radius)] : []),
  ];
}

/** The points without a value; those of several curves that stand upon each other are one. */
function crossesOf(spots: readonly Spot[], isShared: boolean): readonly Spot[] {
  const failed = spots.filter((spot) => spot.failed);
  return isShared
    ? standApart(
        failed.toSorted((a, b) => a.x - b.x),
        3,
      )
    : failed;
}

/** The pieces of the curve between neighbouring points that both have a value. */
const curvePieces = (spots: readonly Spot[]): Line[] =>
  linesThrough(spots).filter((_, index) => !spots[index]?.failed && !spots[index + 1]?.failed);

/** The curve breaks off at a point without a value; one between two of them is a dot. */
function curvePath(spots: readonly Spot[]): string {
  const runs: Spot[][] = [[]];
  for (const spot of spots) {
    if (spot.failed) runs.push([]);
    else runs.at(-1)?.push(spot);
  }
  return runs.map((run) => pathThrough(run, run.length === 1 ? "Z" : "")).join("");
}

function placeOf(point: SweepPoint | null, { index, axis }: Panel, { x }: TradeOffSheet): Point | null {
  const up = point?.y[index] ?? Number.NaN;
  const along = point?.x ?? Number.NaN;
  return Number.isFinite(up) && Number.isFinite(along) ? { x: x.place(along), y: axis.place(up) } : null;
}

const circle = (name: string, { x, y }: Point, r: number): Mark =>
  mark("circle", { class: name, cx: round(x), cy: round(y), r });

/** What cannot be told from the present design along x. */
function bandMarks({ top, bottom }: Panel, { present, band }: TradeOffData, { left, right, x }: TradeOffSheet): Mark[] {
  const at = present?.x ?? Number.NaN;
  if (band === undefined || !Number.isFinite(at)) return [];
  const clip = (value: number): number => Math.min(right, Math.max(left, x.place(value)));
  return [areaMark("band", { left: clip(at - band), right: clip(at + band), top, bottom })];
}

const furtherRadius = 4.5;

const areaMark = (name: "area" | "band", { left, top, right, bottom }: Box): Mark =>
  mark("rect", {
    class: name,
    x: round(left),
    y: round(top),
    width: round(right - left),
    height: round(bottom - top),
  });

const limitStroke = ({ edge, at }: Limit, { top, bottom }: Panel, { left, right }: TradeOffSheet): Stroke =>
  edge === "left" || edge === "right"
    ? straight("limit", { x: at, y: top }, { x: at, y: bottom })
    : straight("limit", { x: left, y: at }, { x: right, y: at });
