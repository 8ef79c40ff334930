/** What a sample of numbers comes to. */

export interface Sample {
  readonly count: number;
  readonly mean: number;
  /** The standard deviation, of a sample (divided by n − 1); 0 where all values are the same. */
  readonly deviation: number;
  readonly least: number;
  readonly most: number;
  /** By the share in per cent below: 2.5 and 97.5 are the ends of the interval that holds 95 %. */
  readonly percentiles: { readonly [share: string]: number };
  readonly histogram: Histogram;
}

export interface Histogram {
  readonly from: number;
  readonly width: number;
  readonly counts: readonly number[];
}

const told = [1, 2.5, 5, 10, 25, 50, 75, 90, 95, 97.5, 99] as const;

/** Null where there are no values. */
export function sampleOf(values: readonly number[]): Sample | null {
  const [first] = values;
  if (first === undefined) return null;
  const sorted = Float64Array.from(values).sort();
  const mean = meanOf(values);
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return {
    count: values.length,
    mean,
    deviation: (sorted.at(-1) as number) > (sorted[0] as number) ? Math.sqrt(squares / (values.length - 1)) : 0,
    least: sorted[0] ?? first,
    most: sorted.at(-1) ?? first,
    percentiles: Object.fromEntries(told.map((share) => [String(share), percentile(sorted, share)])),
    histogram: histogramOf(sorted),
  };
}

export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** The value below which so many per cent of sorted values lie, straight between them (R. J. Hyndman and Y. Fan, The American Statistician 50 (1996) 361, definition 7). */
export function percentile(sorted: ArrayLike<number>, share: number): number {
  const place = ((sorted.length - 1) * share) / 100;
  const [below, above] = [sorted[Math.floor(place)] as number, sorted[Math.ceil(place)] as number];
  return below + (above - below) * (place - Math.floor(place));
}

/** The share of successes and the interval that holds the true one at 95 % (E. B. Wilson, Journal of the American Statistical Association 22 (1927) 209). */
export function shareOf(successes: number, all: number): { share: number; between: readonly [number, number] } {
  const share = successes / all;
  const z = 1.959964;
  const middle = share + (z * z) / (2 * all);
  const half = z * Math.sqrt((share * (1 - share)) / all + (z * z) / (4 * all * all));
  const whole = 1 + (z * z) / all;
  return { share, between: [Math.max(0, (middle - half) / whole), Math.min(1, (middle + half) / whole)] };
}

/** How closely two lists go together, from −1 to 1; 0 where one does not move. */
export function correlationOf(a: readonly number[], b: readonly number[]): number {
  const [meanA, meanB] = [meanOf(a), meanOf(b)];
  let [both, squareA, squareB] = [0, 0, 0];
  a.forEach((value, index) => {
    const [x, y] = [value - meanA, (b[index] as number) - meanB];
    both += x * y;
    squareA += x * x;
    squareB += y * y;
  });
  return squareA > 0 && squareB > 0 ? both / Math.sqrt(squareA * squareB) : 0;
}

/** Bars as wide as twice the middle half over the cube root of the count (D. Freedman and P. Diaconis, 1981), 8 to 60 of them. */
function histogramOf(sorted: Float64Array): Histogram {
  const [least, most] = [sorted[0] as number, sorted.at(-1) as number];
  if (!(most > least)) return { from: least, width: 0, counts: [sorted.length] };
  const middle = percentile(sorted, 75) - percentile(sorted, 25);
  const wanted = middle > 0 ? ((most - least) * Math.cbrt(sorted.length)) / (2 * middle) : 8;
  const bars = Math.min(60, Math.max(8, Math.ceil(wanted)));
  const width = (most - least) / bars;
  const counts = new Array<number>(bars).fill(0);
  for (const value of sorted) {
    const bar = Math.min(bars - 1, Math.floor((value - least) / width));
    counts[bar] = (counts[bar] ?? 0) + 1;
  }
  return { from: least, width, counts };
}
