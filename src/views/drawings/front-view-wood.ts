/** The wing itself in a front view: its wood, edges and joints, the datum and the centre line. */
import type { FrontViewSheet } from "./front-view-sheet.ts";
import type { Point } from "./geometry.ts";
import { type Mark, mark, round } from "./sketch.ts";
import { pathThrough, type Stroke, straight } from "./strokes.ts";
import { isContinuous, type Outline, type PanelOutline, type WingInFront } from "./wing-outline.ts";

/** The wood of one panel. */
export const woodMark = ({ lower, upper }: PanelOutline, { place }: FrontViewSheet): Mark =>
  mark("path", { class: "wood", d: pathThrough([lower[0], lower[1], upper[1], upper[0]].map(place), "Z") });

/** The lower face from the left tip to the right. */
export const lowerFace = ({ right, left }: Outline): Point[] => [
  ...left.map(({ lower }) => lower[1]).reverse(),
  ...right.map(({ lower }) => lower[0]),
  ...right.slice(-1).map(({ lower }) => lower[1]),
];

/** The lower face in one, each upper face with its step down to the joint, the tips. */
export function edgeStrokes(outline: Outline, wing: WingInFront, { place, scale }: FrontViewSheet): Stroke[] {
  // Thin wood on a narrow sheet gets thin edges, so that it still shows between them.
  const thinnest = Math.min(...wing.right.thickness, ...wing.left.thickness) * scale;
  const width = round(Math.max(0.6, Math.min(1.1, 0.35 * thinnest)));
  const uppers = [outline.right, outline.left].flatMap((half) =>
    half.map(({ lower, upper }, index) => {
      const open = index === 0 && isContinuous(wing);
      return { class: "edge", width, points: [...(open ? [] : [lower[0]]), ...upper, lower[1]].map(place) };
    }),
  );
  return [...uppers, { class: "edge", width, points: lowerFace(outline).map(place) }];
}

/** The joints of both halves, in m. */
export function jointPoints({ right, left }: Outline, wing: WingInFront): Point[] {
  const breaks = [...right.slice(1), ...left.slice(1)].map(({ lower }) => lower[0]);
  const root = right[0]?.lower[0];
  return root && !isContinuous(wing) ? [root, ...breaks] : breaks;
}

/** Datum through the root's lower face, and the centre line. */
export function datumStrokes(outline: Outline, sheet: FrontViewSheet): Stroke[] {
  const root = sheet.place({ x: 0, y: 0 });
  const top = sheet.place(outline.right[0]?.upper[0] ?? { x: 0, y: 0 }).y;
  return [
    straight("datum", { x: sheet.left - 20, y: root.y }, { x: sheet.right + 14, y: root.y }),
    straight("datum", { x: root.x, y: top - 20 }, { x: root.x, y: root.y + 11 }),
  ];
}
