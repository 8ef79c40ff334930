import type { Point } from "../../drawings/geometry.ts";

/** A curve on the sheet, piece by piece, between neighbouring points that both have a value. */
export function curvePieces(
  x: readonly number[],
  y: readonly (number | null)[],
  placeX: (value: number) => number,
  placeY: (value: number) => number,
): Point[][] {
  const pieces: Point[][] = [];
  let piece: Point[] = [];
  x.forEach((at, index) => {
    const value = y[index] ?? null;
    if (value !== null) piece.push({ x: placeX(at), y: placeY(value) });
    if ((value === null || index === x.length - 1) && piece.length > 0) {
      pieces.push(piece);
      piece = [];
    }
  });
  return pieces;
}

/** A curve's value, straight between the two points about it; null beyond the ends and in gaps. */
export function valueAt(x: readonly number[], y: readonly (number | null)[], at: number): number | null {
  const isAt = (value: number): boolean => Math.abs(value - at) <= 1e-9 * Math.max(Math.abs(value), Math.abs(at));
  const same = x.findIndex(isAt);
  if (same >= 0) return y[same] ?? null;
  const after = x.findIndex((value) => value > at);
  const [from, to] = [x[after - 1], x[after]];
  const [here, there] = [y[after - 1] ?? null, y[after] ?? null];
  if (from === undefined || to === undefined || here === null || there === null) return null;
  return here + ((there - here) * (at - from)) / (to - from);
}
