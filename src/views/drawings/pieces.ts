/** Pieces of wood seen from one side, each an outline with the lines on it. */
import type { Box, Point } from "./geometry.ts";
import { type Mark, mark, round } from "./sketch.ts";
import { pathThrough, type Stroke } from "./strokes.ts";

/** A piece of wood; its points may be in m, or placed on the sheet. */
export interface Piece {
  /** Corner after corner, the last one joined to the first. */
  readonly outline: readonly Point[];
  /** Joint lines on it. */
  readonly joints: readonly (readonly [Point, Point])[];
}

/** A piece without joints. */
export const plainPiece = (outline: readonly Point[]): Piece => ({ outline, joints: [] });

/** The piece as it lies on a sheet. */
export const placePiece = ({ outline, joints }: Piece, place: (point: Point) => Point): Piece => ({
  outline: outline.map(place),
  joints: joints.map(([from, to]) => [place(from), place(to)]),
});

/** The box about all corners of some pieces. */
export function extentOf(pieces: readonly Piece[]): Box {
  const corners = pieces.flatMap(({ outline }) => outline);
  const x = corners.map((corner) => corner.x);
  const y = corners.map((corner) => corner.y);
  return { left: Math.min(...x), top: Math.min(...y), right: Math.max(...x), bottom: Math.max(...y) };
}

/** The wood of a piece, without its edges. */
export const pieceMark = ({ outline }: Piece): Mark => mark("path", { class: "wood", d: pathThrough(outline, "Z") });

/** The edges of a piece all round, and its joint lines. A thin piece gets thin edges, so that its wood still shows. */
export function pieceStrokes(piece: Piece): Stroke[] {
  const { left, top, right, bottom } = extentOf([piece]);
  const width = round(Math.max(0.6, Math.min(1.1, 0.35 * Math.min(right - left, bottom - top))));
  return [
    { class: "edge", width, points: closed(piece.outline) },
    ...piece.joints.map((points) => ({ class: "joint-line", points })),
  ];
}

/** The thin lines that stand for pieces as they were, without those that are as they were. */
export const ghostStrokes = (before: readonly Piece[], now: readonly Piece[], name = "ghost"): Stroke[] =>
  before
    .filter((piece) => !now.some((other) => sameOutline(piece, other)))
    .map(({ outline }) => ({ class: name, points: closed(outline) }));

const closed = (outline: readonly Point[]): readonly Point[] => [...outline, ...outline.slice(0, 1)];

const sameOutline = (a: Piece, b: Piece): boolean =>
  a.outline.length === b.outline.length &&
  a.outline.every(({ x, y }, index) => x === b.outline[index]?.x && y === b.outline[index]?.y);
