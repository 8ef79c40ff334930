/** Cuts of a facet into strips, as shares of its width: edges, and between them the places of control points. */
export interface Cuts {
  readonly edges: readonly number[];
  readonly middles: readonly number[];
}

/**
 * Cuts the facets of a surface into strips, `total` of them together, at least two a facet. Strips get narrow towards a
 * free end: on a half wing the distance from the root is sin θ of the half span, on a surface with two free ends
 * (1 − cos θ)/2 of its whole, with equal steps of θ within a facet and control points halfway in θ. The loading falls
 * like a square root to a free end, and there these places integrate it best (as in H. Multhopp 1938; from memory).
 * With `none` all strips of a facet are of one width.
 */
export function cutFacets(widths: readonly number[], total: number, freeEnds: "outer" | "both" | "none"): Cuts[] {
  const whole = widths.reduce((sum, width) => sum + width, 0);
  const [angleOf, placeOf, fullAngle] = mappings[freeEnds];
  const bounds = [0];
  for (const width of widths) bounds.push((bounds.at(-1) ?? 0) + width / whole);
  bounds[widths.length] = 1;
  const angles = bounds.map((place) => angleOf(place));
  const counts = share(
    widths.map((_, i) => ((angles[i + 1] ?? 0) - (angles[i] ?? 0)) / fullAngle),
    total,
  );
  return counts.map((count, i) => {
    const [from = 0, to = 0] = [angles[i], angles[i + 1]];
    const [start = 0, end = 0] = [bounds[i], bounds[i + 1]];
    const at = (step: number) => (placeOf(from + ((to - from) * step) / count) - start) / (end - start);
    const edges = Array.from({ length: count + 1 }, (_, step) => (step === 0 ? 0 : step === count ? 1 : at(step)));
    return { edges, middles: Array.from({ length: count }, (_, step) => at(step + 0.5)) };
  });
}

const mappings = {
  none: [(place: number) => place, (angle: number) => angle, 1],
  outer: [Math.asin, Math.sin, Math.PI / 2],
  both: [(place: number) => Math.acos(1 - 2 * place), (angle: number) => (1 - Math.cos(angle)) / 2, Math.PI],
} as const;

/** Whole numbers of at least two in proportion to the shares, which come to `total` where that is enough. */
function share(shares: readonly number[], total: number): number[] {
  const least = 2;
  const rest = Math.max(0, total - least * shares.length);
  const wanted = shares.map((each) => Math.max(0, each * total - least));
  const sum = wanted.reduce((a, b) => a + b, 0);
  const exact = wanted.map((each) => least + (sum > 0 ? (each / sum) * rest : 0));
  const counts = exact.map(Math.floor);
  const order = exact.map((each, i) => [each - Math.floor(each), i] as const).sort(([a], [b]) => b - a);
  const missing = Math.max(0, least * shares.length + rest - counts.reduce((a, b) => a + b, 0));
  for (const [, i] of order.slice(0, missing)) counts[i] = (counts[i] ?? 0) + 1;
  return counts;
}
