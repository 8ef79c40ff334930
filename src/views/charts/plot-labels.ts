/** The labels within a panel of a plot, still to be placed. */
import { type Line, linesThrough, type Point } from "../drawings/geometry.ts";
import type { Label, Place } from "../drawings/labels.ts";
import { type Measure, shorten } from "../drawings/text-size.ts";
import { besideCurve } from "./beside-curve.ts";
import type { Curve } from "./plot-data.ts";
import { isNarrow, type PlotField, type PlotSheet } from "./plot-sheet.ts";
import { thinned } from "./thinned.ts";

const plain = { size: 12, weight: 400 } as const;
const strong = { size: 13, weight: 600 } as const;
/** Radius of a point, px. */
export const spotRadius = 4;

/** In the order of their choice: points, then curves, then limits. */
export function plotLabels(at: PlotField, sheet: PlotSheet, measure: Measure): Label[] {
  const { panel } = at;
  const pieces = panel.curves.flatMap((curve) => linesThrough(pointsOf(curve, at)));
  return [
    ...(panel.spots ?? []).flatMap((spot): Label[] => {
      const says = (isNarrow(sheet.width) ? spot.brief : undefined) ?? spot.text;
      if (says === "") return [];
      const point = { x: at.x.place(spot.x), y: at.axis.place(spot.y) };
      const style = spot.look === "before" ? plain : strong;
      const text = shorten(says, 0.7 * (sheet.right - sheet.left), style, measure);
      const places = besideCurve(point, pieces);
      return [
        {
          ...style,
          class: spot.look === "before" ? "note" : "figure",
          text,
          at: point,
          own: spotRadius + 1,
          gap: spotRadius + 5,
          places,
        },
      ];
    }),
    ...panel.curves.flatMap((curve) => curveLabel(curve, at, sheet, measure)),
    ...limitLabels(at, sheet, measure),
  ];
}

/** Where a curve runs, px. */
export const pointsOf = ({ places }: Curve, { x, axis }: PlotField): Point[] =>
  thinned(
    places
      .filter((place) => Number.isFinite(place.x) && Number.isFinite(place.y))
      .map((place) => ({ x: x.place(place.x), y: axis.place(place.y) })),
  );

function curveLabel(curve: Curve, at: PlotField, sheet: PlotSheet, measure: Measure): Label[] {
  if (!curve.name) return [];
  const pieces: Line[] = linesThrough(pointsOf(curve, at));
  const style = curve.look === "curve" ? strong : plain;
  // A straight line is one piece: its name may stand anywhere along it, best where it does not yet meet a curve.
  const tries =
    pieces.length === 1
      ? [0.35, 0.25, 0.5, 0.75].flatMap((share) => pieces.map((piece) => along(piece, share)))
      : [0.75, 0.6, 0.88, 0.45, 0.3, 0.15, 0.97].flatMap((share) => {
          const piece = pieces[Math.floor(share * pieces.length)];
          return piece ? along(piece, 0.5) : [];
        });
  const [first, ...elsewhere] = tries;
  if (!first) return [];
  const text = shorten(curve.name, (sheet.right - sheet.left) / 2, style, measure);
  const look = curve.look === "curve" ? "figure" : "note";
  return [{ ...style, class: look, text, at: first, elsewhere, places: besideCurve(first, pieces), gap: 7 }];
}

const along = ({ from, to }: Line, share: number): Point => ({
  x: from.x + share * (to.x - from.x),
  y: from.y + share * (to.y - from.y),
});

/** At its limit, near one end of it, on the side that has room. */
function limitLabels(
  { panel, x, axis, top, bottom }: PlotField,
  { left, right }: PlotSheet,
  measure: Measure,
): Label[] {
  return (panel.limits ?? []).flatMap((limit): Label[] => {
    if (limit.text === "") return [];
    const isUpright = limit.axis === "x";
    const place = isUpright ? x.place(limit.at) : axis.place(limit.at);
    if (isUpright ? place < left || place > right : place < top - 1 || place > bottom + 1) return [];
    const text = shorten(limit.text, (right - left) / 2, plain, measure);
    const half = measure(text, plain) / 2 + 6;
    const ways = isUpright
      ? [top + 11, bottom - 11, (top + bottom) / 2]
      : [right - half, left + half, (left + right) / 2];
    const [first, ...elsewhere] = ways.map((way) => (isUpright ? { x: place, y: way } : { x: way, y: place }));
    if (!first) return [];
    const places: Place[] = isUpright ? ["right", "left"] : ["above", "below"];
    const look = limit.look === "holds" ? "figure-holds" : "figure-moved";
    return [{ ...plain, class: look, text, at: first, elsewhere, places, gap: 5, leader: false }];
  });
}
