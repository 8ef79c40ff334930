import type { Pattern } from "../../../src/library/build/pattern-record.ts";

/** The strokes of one layer of a part, as lists of points. */
export function strokesOf({ lines }: Pattern, part: string, layer: string): (readonly [number, number])[][] {
  const strokes = new Map<number, [number, number][]>();
  lines.part.forEach((name, index) => {
    if (name !== part || lines.layer[index] !== layer) return;
    const stroke = lines.stroke[index] ?? 0;
    strokes.set(stroke, [...(strokes.get(stroke) ?? []), [lines.x[index] ?? 0, lines.y[index] ?? 0]]);
  });
  return [...strokes.values()];
}

/** Area within a closed stroke. */
export const areaOf = (points: readonly (readonly [number, number])[]): number =>
  Math.abs(
    points.reduce((sum, [x, y], index) => {
      const [u, v] = points[(index + 1) % points.length] ?? [0, 0];
      return sum + (x * v - u * y) / 2;
    }, 0),
  );
