/** A place on a curve. */
export type Point = readonly [x: number, y: number];

/**
 * A curve through points with rising x, smooth to its first derivative, that overshoots none of them (monotone cubic:
 * F. N. Fritsch and R. E. Carlson, SIAM Journal on Numerical Analysis 17 (1980) 238–246; slopes by Fritsch and
 * J. Butland, SIAM Journal on Scientific and Statistical Computing 5 (1984) 300–304; both from memory). Before the first
 * and beyond the last point it goes on straight. End slopes that are not given are those of the straight lines there.
 */
export function smoothCurve(points: readonly Point[], startSlope?: number, endSlope?: number): (x: number) => number {
  const [first] = points;
  const last = points.at(-1);
  if (!first || !last) throw new Error("got no points, expected at least one");
  if (points.length === 1) return () => first[1];
  const slopes = points.map((_, i) => innerSlope(points, i));
  slopes[0] = startSlope ?? secant(points, 0);
  slopes[points.length - 1] = endSlope ?? secant(points, points.length - 2);
  return (x) => {
    if (x <= first[0]) return first[1] + (slopes[0] ?? 0) * (x - first[0]);
    if (x >= last[0]) return last[1] + (slopes.at(-1) ?? 0) * (x - last[0]);
    let i = 0;
    while (x > (points[i + 1]?.[0] ?? x)) i++;
    return hermite(points[i] ?? first, points[i + 1] ?? last, slopes[i] ?? 0, slopes[i + 1] ?? 0, x);
  };
}

/** From 0 to 1 as t goes from 0 to 1, level at both ends and beyond them. */
export function smoothStep(t: number): number {
  const within = Math.max(0, Math.min(1, t));
  return within * within * (3 - 2 * within);
}

/** Weighted harmonic mean of the slopes on both sides; none at a peak. */
function innerSlope(points: readonly Point[], i: number): number {
  if (i === 0 || i === points.length - 1) return 0;
  const [before, after] = [secant(points, i - 1), secant(points, i)];
  if (before * after <= 0) return 0;
  const [narrow, wide] = [width(points, i - 1), width(points, i)];
  const [a, b] = [2 * wide + narrow, wide + 2 * narrow];
  return (a + b) / (a / before + b / after);
}

const width = (points: readonly Point[], i: number) => (points[i + 1]?.[0] ?? 0) - (points[i]?.[0] ?? 0);
const secant = (points: readonly Point[], i: number) =>
  ((points[i + 1]?.[1] ?? 0) - (points[i]?.[1] ?? 0)) / width(points, i);

/** The cubic through two points with given slopes. */
function hermite(from: Point, to: Point, startSlope: number, endSlope: number, x: number): number {
  const step = to[0] - from[0];
  const t = (x - from[0]) / step;
  const rest = 1 - t;
  return (
    from[1] * rest * rest * (1 + 2 * t) +
    to[1] * t * t * (3 - 2 * t) +
    step * t * rest * (startSlope * rest - endSlope * t)
  );
}
