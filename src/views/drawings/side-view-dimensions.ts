/** The dimensions of a side view: what is drawn for each, and the labels still to be placed. */
import { degreesFigure, type LengthFormat, partFigure } from "./dimension-text.ts";
import { type Dimensions, dimensionLine, extension, figure, strong, together } from "./dimensions.ts";
import type { Point } from "./geometry.ts";
import type { GliderOnPaper } from "./glider.ts";
import type { Label } from "./labels.ts";
import type { SideOutline } from "./side-view-outline.ts";
import type { SideViewSheet } from "./side-view-sheet.ts";
import { arc, straight } from "./strokes.ts";

/** How figures of a drawing are told: all to the decimals that suit a whole. */
export interface Telling {
  readonly whole: number;
  readonly format: LengthFormat;
}

/** Heights of seat and tip before the wing and of the fin behind it, the angles, and the decalage between. */
export function sideDimensions(
  { fin, seat_angle, tailplane, decalage }: GliderOnPaper,
  outline: SideOutline,
  sheet: SideViewSheet,
  telling: Telling,
): Dimensions {
  const { root, tip, tailplane: tail } = outline;
  const before = sheet.place(root[0]).x;
  const finTip = fin && { x: fin.stations.x[1] ?? 0, y: fin.stations.z[1] ?? 0 };
  const beforeFin = Math.min(...[...(fin?.stations.x ?? []), ...(tail ? [tail[0].x] : [])]);
  return together([
    heightMarks(tip, before - 44, sheet, telling),
    heightMarks(root[0], before - 16, sheet, telling),
    ...(finTip ? [heightMarks(finTip, sheet.place({ x: beforeFin, y: 0 }).x - 16, sheet, telling)] : []),
    incidenceMarks(root, seat_angle, 34, sheet),
    ...(tailplane && tail ? [incidenceMarks(tail, tailplane.incidence, 24, sheet)] : []),
    ...(tail && decalage !== undefined
      ? [{ strokes: [], labels: [decalageLabel(root[1], tail[0], decalage, sheet)] }]
      : []),
  ]);
}

/** What the wing stands steeper than the tailplane, told between the two. */
function decalageLabel(wing: Point, tail: Point, decalage: number, sheet: SideViewSheet): Label {
  const [from, to] = [sheet.place(wing), sheet.place(tail)];
  const y = Math.min(from.y, to.y);
  const places = [-10, -24, -38, -54, -70, -86].flatMap((by) =>
    [0.55, 0.45, 0.65, 0.35].map((share) => ({ x: from.x + (to.x - from.x) * share, y: y + by })),
  );
  const [at = from, ...elsewhere] = places;
  return { ...strong, text: `decalage ${degreesFigure(decalage)}°`, at, elsewhere, places: ["above"], leader: false };
}

/** How high a place lies over the datum, on an upright line at x, in px. */
function heightMarks(place: Point, x: number, sheet: SideViewSheet, telling: Telling): Dimensions {
  const from = sheet.place(place);
  const [top, datum] = [
    { x, y: from.y },
    { x, y: sheet.place({ x: 0, y: 0 }).y },
  ];
  if (Math.abs(top.y - datum.y) < 1) return { strokes: [], labels: [] };
  const outward = Math.sign(x - from.x);
  return {
    strokes: [extension(from, top), ...dimensionLine(datum, top)],
    labels: [
      {
        ...figure,
        text: partFigure(place.y, telling.whole, telling.format),
        at: { x, y: (top.y + datum.y) / 2 },
        places: outward < 0 ? ["left", "above", "right", "below"] : ["right", "above", "left", "below"],
        elsewhere: [top],
        gap: 9,
      },
    ],
  };
}

/** The nose-up angle of a chord, between its line and the level, both drawn out behind it by some px. */
function incidenceMarks(chord: readonly [Point, Point], angle: number, arm: number, sheet: SideViewSheet): Dimensions {
  const [leading, trailing] = chord.map(sheet.place) as [Point, Point];
  const length = Math.hypot(trailing.x - leading.x, trailing.y - leading.y);
  const out = (by: number, turn: number): Point => ({
    x: leading.x + (length + by) * Math.cos(turn),
    y: leading.y + (length + by) * Math.sin(turn),
  });
  const isTurned = Math.abs(angle) > 1e-4;
  return {
    strokes: [
      straight("guide", out(6, 0), out(arm, 0)),
      ...(isTurned
        ? [straight("guide", out(6, angle), out(arm, angle)), arc("angle", leading, length + arm - 8, 0, -angle)]
        : []),
    ],
    labels: [
      {
        ...figure,
        text: `${degreesFigure(angle)}°`,
        at: out(arm, angle / 2),
        places: ["right", "above", "below"],
        gap: 5,
      },
    ],
  };
}
