/** One panel of a sweep: where checks fail, the band, a curve for each trial, the points, the designs and their labels. */
import type { SweepOutcome } from "../../../cells/index.ts";
import { type Line, linesThrough, type Point } from "../../drawings/geometry.ts";
import { type Label, placeLabels } from "../../drawings/labels.ts";
import { type Mark, mark, round } from "../../drawings/sketch.ts";
import { ring, type Stroke } from "../../drawings/strokes.ts";
import { type Measure, shorten } from "../../drawings/text-size.ts";
import { gridStrokes } from "../axes.ts";
import { besideCurve } from "../beside-curve.ts";
import { curveClass } from "../curve-class.ts";
import { hatching } from "../hatch.ts";
import type { Panel, PanelSheet } from "../panels.ts";
import { circlePath, crossPath, pointRadius, standApart } from "../points.ts";
import { outlineOf, type Span } from "./check-rows.ts";
import { curvePieces, valueAt } from "./curve-pieces.ts";
import { teller } from "./study-chart.ts";
import { curveName } from "./sweep-words.ts";

/** Where a point of the present design is drawn. */
export interface SweepSpot extends Point {
  readonly isGap: boolean;
  /** It has not been computed yet. */
  readonly isDue: boolean;
}

/** Draws a panel but for its axes. `failing` are px along x; `near` and `chosen` count points. */
export function sweepPanel(
  panel: Panel,
  data: SweepOutcome,
  sheet: PanelSheet,
  { band, failing, near, chosen }: { band: number | null; failing: readonly Span[]; near: number; chosen: number },
  measure: Measure,
) {
  const x = data.input.values.map(sheet.x.place);
  const curves = data.curves.map(({ results }) =>
    curvePieces(data.input.values, results[panel.index] ?? [], sheet.x.place, panel.axis.place),
  );
  const designs = data.curves.map(({ at, results }) => {
    const value = at === null ? null : valueAt(data.input.values, results[panel.index] ?? [], at);
    return at === null || value === null ? null : { x: sheet.x.place(at), y: panel.axis.place(value), value };
  });
  const spots = spotsOf(x, data, panel);
  const drawn = spots.filter(({ isGap, isDue }) => !isGap && !isDue);
  const crosses = standApart(
    spots.filter(({ isGap }) => isGap),
    9,
  );
  const lines: Line[] = curves.flat().flatMap(linesThrough);
  const radius = pointRadius((curves[0] ?? []).flatMap(linesThrough));
  const showsPoints = radius > 1.9;
  const [present = null, ...trials] = designs;
  const ground = {
    sheet: { left: sheet.left + 3, top: panel.top - 4, right: sheet.width - 4, bottom: panel.bottom - 2 },
    lines: [
      ...lines,
      ...spots.flatMap((spot) => (spot.isDue ? [] : ring(spot, spot.isGap ? 5 : radius, 4))),
      ...(present ? ring(present, presentRadius) : []),
      ...trials.flatMap((design) => (design ? ring(design, trialRadius) : [])),
      ...(spots[chosen] ? ring(spots[chosen], presentRadius + 3) : []),
    ],
    measure,
  };
  const labels = placeLabels(wantedLabels(panel, data, sheet, { curves, present }, measure), ground).placed;
  const boxes = labels.map(({ box }) => ({
    left: box.left - 3,
    right: box.right + 3,
    top: box.top - 3,
    bottom: box.bottom + 3,
  }));
  const field = { left: sheet.left, right: sheet.right, top: panel.top, bottom: panel.bottom };
  return {
    areas: band === null || present === null ? [] : [bandMark(panel, field, present.value, band)],
    hatch: hatching(
      failing.map(([left, right]) => outlineOf({ ...field, left, right })),
      boxes,
    ),
    grid: gridStrokes(panel, sheet, boxes),
    curves: curves.flatMap((pieces, index): Stroke[] => pieces.map((points) => ({ class: curveClass(index), points }))),
    points: [
      mark("path", {
        class: "point",
        d: showsPoints ? drawn.map((spot) => circlePath(spot, radius)).join("") : "",
      }),
      ...crosses.map((spot) => mark("path", { class: "failed", d: crossPath(spot, 2.6) })),
      ...inHand(spots[near], "point near", Math.max(3, radius)),
    ],
    designs: [
      ...trials.flatMap((design) => (design ? [circle("design-ring", design, trialRadius)] : [])),
      ...(present ? [circle("present", present, presentRadius)] : []),
      ...inHand(spots[chosen], "chosen-ring", presentRadius + 2.5),
    ],
    labels,
    spots,
  };
}

/** Every point of the present design; one without a value stands at the foot of the panel. Points not yet there have none. */
function spotsOf(x: readonly number[], { curves, results }: SweepOutcome, panel: Panel): SweepSpot[] {
  const [present] = curves;
  const values = present?.results[panel.index] ?? [];
  const gaps = new Set(
    (present?.gaps ?? []).flatMap(({ point, of }) => (of === results[panel.index]?.text ? [point] : [])),
  );
  return x.map((at, point) => {
    const value = values[point] ?? null;
    return value === null
      ? { x: at, y: panel.bottom - 9, isGap: gaps.has(point), isDue: !gaps.has(point) }
      : { x: at, y: panel.axis.place(value), isGap: false, isDue: false };
  });
}

function wantedLabels(
  { index }: Panel,
  data: SweepOutcome,
  { left, right }: PanelSheet,
  { curves, present }: { curves: readonly Point[][][]; present: Point | null },
  measure: Measure,
): Label[] {
  const { input } = data;
  const at = data.curves[0]?.at ?? null;
  const own = (curves[0] ?? []).flatMap(linesThrough);
  const value = at === null ? "" : teller(input.unit)(at);
  const named = `${input.target} ${value}`;
  const text = index === 0 && measure(named, strong) < (right - left) / 2 ? named : value;
  const presentLabel: Label[] = present
    ? [
        {
          ...strong,
          class: "figure-moved",
          text,
          at: present,
          own: presentRadius,
          gap: presentRadius + 5,
          places: besideCurve(present, own),
        },
      ]
    : [];
  if (data.curves.length < 2) return presentLabel;
  const names = data.curves.flatMap((curve, count): Label[] => {
    const pieces = (curves[count] ?? []).flatMap(linesThrough);
    const middles = [0.85, 0.7, 0.55, 0.93, 0.4, 0.25, 0.1].flatMap((share) => {
      const piece = pieces[Math.floor(share * pieces.length)];
      return piece ? [{ x: (piece.from.x + piece.to.x) / 2, y: (piece.from.y + piece.to.y) / 2 }] : [];
    });
    const [first, ...elsewhere] = middles;
    if (!first) return [];
    const name = shorten(curveName(curve), (right - left) / 3, plain, measure);
    return [{ ...plain, text: name, at: first, elsewhere, places: besideCurve(first, pieces), gap: 6, leader: false }];
  });
  return [...presentLabel, ...names];
}

const bandMark = (
  { axis }: Panel,
  field: { left: number; right: number; top: number; bottom: number },
  value: number,
  band: number,
): Mark => {
  const within = (y: number) => Math.max(field.top, Math.min(field.bottom, y));
  const [top, bottom] = [within(axis.place(value + band)), within(axis.place(value - band))];
  return mark("rect", {
    class: "band",
    x: round(field.left),
    y: round(top),
    width: round(field.right - field.left),
    height: round(Math.max(0, bottom - top)),
  });
};

const inHand = (spot: SweepSpot | undefined, name: string, radius: number): Mark[] =>
  spot && !spot.isGap && !spot.isDue ? [circle(name, spot, radius)] : [];

const circle = (name: string, { x, y }: Point, r: number): Mark =>
  mark("circle", { class: name, cx: round(x), cy: round(y), r });

const presentRadius = 5.5;
const trialRadius = 4.5;
const plain = { size: 12, weight: 400, class: "note" } as const;
const strong = { size: 13, weight: 600 } as const;
