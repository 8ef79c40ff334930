/** The lines of lengths under a side view. */
import { lengthText, partFigure } from "./dimension-text.ts";
import { brokenDimension, type Dimensions, extension, figure, type SetDimension, strong } from "./dimensions.ts";
import type { Box, Point } from "./geometry.ts";
import { share } from "./glider-words.ts";
import type { Telling } from "./side-view-dimensions.ts";
import type { SideOutline } from "./side-view-outline.ts";
import type { SideViewSheet } from "./side-view-sheet.ts";
import { straight, tick } from "./strokes.ts";
import type { Measure } from "./text-size.ts";

/** What the lines tell, the nearest first. */
export interface Rows {
  /** From the wing to the balance point, and on to the neutral point. */
  readonly balance: readonly Point[];
  /** From the nose to the wing, and on to the tailplane; along the root of a wing alone. */
  readonly places: readonly Point[];
  /** The whole length; undefined of a wing alone. */
  readonly whole: readonly [Point, Point] | undefined;
}

/** The lines that a glider needs; `extent` is that of its pieces, in m. */
export function rowsUnder({ root, nose, tailplane, balance, neutral }: SideOutline, extent: Box): Rows {
  const [leading, trailing] = root;
  const before = nose && nose.x < leading.x ? [nose] : [];
  const behind = tailplane ? tailplane.slice(0, 1) : [];
  const isAlone = before.length + behind.length === 0;
  const low = { x: extent.left, y: extent.top };
  return {
    balance: balance || neutral ? [leading, ...(balance ? [balance] : []), ...(neutral ? [neutral] : [])] : [],
    places: isAlone ? [leading, trailing] : [...before, leading, ...behind],
    whole: isAlone ? undefined : [low, { x: extent.right, y: extent.top }],
  };
}

/** How many lines these are. */
export const countRows = ({ balance, whole }: Rows): number => (balance.length > 0 ? 1 : 0) + 1 + (whole ? 1 : 0);

/**
 * The lines of distances. The static margin, if it is known, is told behind the neutral point instead of a distance
 * before it, in fewer words where the line to the tailplane leaves no room for all.
 */
export function rowMarks(
  { balance, places }: Rows,
  margin: number | undefined,
  sheet: SideViewSheet,
  telling: Telling,
  measure: Measure,
): Dimensions[] {
  const [behind, last] = [balance, places].map((line) => Math.max(...line.map((place) => sheet.place(place).x)));
  const text = `static margin ${share(margin ?? 0)}`;
  const isRoomy =
    last === undefined || behind === undefined || last < behind || behind + measure(text, figure) + 15 < last;
  const closing = margin === undefined ? undefined : isRoomy ? text : text.replace("static ", "");
  const lines = balance.length > 0 ? [balance, places] : [places];
  return lines.map((line, index) => {
    const y = sheet.rows[index] ?? sheet.height;
    return chainMarks(line, line === balance ? closing : undefined, y, sheet, telling);
  });
}

/** The whole length, on the lowest line, broken for its figure. */
export function wholeMarks(
  { whole }: Rows,
  sheet: SideViewSheet,
  { format }: Telling,
  measure: Measure,
): SetDimension[] {
  if (!whole) return [];
  const [from, to] = whole;
  const text = `${lengthText(to.x - from.x, format)} long`;
  const ends = [sheet.place(from), sheet.place(to)] as const;
  return [brokenDimension(ends, sheet.rows.at(-1) ?? sheet.height, text, strong, sheet.room, measure)];
}

/** Distances from place to place on one line; a closing text stands behind the last place for its distance. */
function chainMarks(
  places: readonly Point[],
  closing: string | undefined,
  y: number,
  sheet: SideViewSheet,
  { whole, format }: Telling,
): Dimensions {
  const points = places.map(sheet.place);
  const x = points.map((point) => point.x);
  const [left, right] = [Math.min(...x), Math.max(...x)];
  const distances = places.slice(1, closing === undefined ? undefined : -1).map((place, index) => {
    const [from, to] = [x[index] ?? 0, x[index + 1] ?? 0];
    const text = partFigure(place.x - (places[index]?.x ?? 0), whole, format);
    return { ...figure, text, at: { x: (from + to) / 2, y }, places: ["above", "below"] as const, gap: 5 };
  });
  return {
    strokes: [
      ...points.map((point) => extension(point, { x: point.x, y })),
      straight("dimension", { x: left, y }, { x: right, y }),
      ...x.map((each) => tick({ x: each, y })),
    ],
    labels: [
      // It has the one place behind the line; the distances have two each.
      ...(closing === undefined
        ? []
        : [{ ...figure, text: closing, at: { x: right, y }, places: ["right", "left"] as const, gap: 9 }]),
      ...distances,
    ],
  };
}
