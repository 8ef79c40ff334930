/**
 * A search for the least of one result, or for the trade-off front of several, by differential evolution: each candidate
 * is set against one made of differences of others (R. Storn and K. Price, Journal of Global Optimization 11 (1997)
 * 341–359), with limits and several results as in its third generalised form (S. Kukkonen and J. Lampinen, IEEE Congress
 * on Evolutionary Computation 2005, 443–450), where what holds the limits beats what does not (K. Deb, Computer Methods
 * in Applied Mechanics and Engineering 186 (2000) 311–338); all from memory. It needs no slopes, bears jumps and gaps, and
 * finds its way along limits.
 */
import type { Draws } from "./draws.ts";

/** A point looked at. `x` runs from 0 to 1 over each range. */
export interface Candidate<D> {
  readonly x: readonly number[];
  /** What is to be small; not looked at where it is not feasible. */
  readonly sizes: readonly number[];
  /** How far it is from holding all limits: 0 where it does, infinite where it cannot be computed. */
  readonly violation: number;
  /** What came with it. */
  readonly data: D;
}

export interface Size {
  readonly candidates: number;
  readonly generations: number;
}

/** How large a search is for so many inputs and results. */
export const sizeOf = (inputs: number, results: number): Size =>
  results > 1
    ? { candidates: 40, generations: 60 + 30 * inputs }
    : { candidates: 10 + 6 * inputs, generations: 60 + 60 * inputs };

/** Gives the last candidates: none better, or none dominated, feasible ones before others. Pauses after each one computed. */
export function* evolve<D>(
  inputs: number,
  { candidates, generations }: Size,
  evaluate: (x: readonly number[]) => Candidate<D>,
  draws: Draws,
) {
  let all: Candidate<D>[] = [];
  for (const x of spread(inputs, candidates, draws)) {
    all.push(evaluate(x));
    yield null;
  }
  for (let generation = 0; generation < generations && !isSettled(all); generation++) {
    const next: Candidate<D>[] = [];
    // A factor drawn anew for each generation keeps a small population from getting stuck (Price, Storn and Lampinen, 2005).
    const factor = 0.5 + 0.5 * draws.next();
    for (const [index, candidate] of all.entries()) {
      const trial = evaluate(trialOf(all, index, factor, draws));
      yield null;
      const order = compare(trial, candidate);
      if (order <= 0) next.push(trial);
      if (order > 0 || (order === 0 && !isSame(trial, candidate))) next.push(candidate);
    }
    all = next.length > candidates ? thinned(next, candidates) : next;
  }
  return all;
}

/** Negative where a is better or as good in all, positive where it is worse, 0 where neither is better in all. */
export function compare<D>(a: Candidate<D>, b: Candidate<D>): number {
  if (a.violation > 0 || b.violation > 0) return a.violation <= b.violation ? -1 : 1;
  if (a.sizes.every((size, index) => size <= (b.sizes[index] as number))) return -1;
  return b.sizes.every((size, index) => size <= (a.sizes[index] as number)) ? 1 : 0;
}

/** Those that no other one beats, each place once, in order of the first result. */
export function front<D>(all: readonly Candidate<D>[]): Candidate<D>[] {
  const unbeaten = all.filter(
    (a, index) => !all.some((b, other) => other !== index && compare(b, a) < 0 && (compare(a, b) > 0 || other < index)),
  );
  return unbeaten.sort((a, b) => (a.sizes[0] as number) - (b.sizes[0] as number));
}

/**
 * Places that leave no part of any range out: each range is cut into as many slices, each slice is taken once (M. D. McKay,
 * R. J. Beckman and W. J. Conover, Technometrics 21 (1979) 239–245; from memory).
 */
function spread(inputs: number, count: number, draws: Draws): number[][] {
  const axes = Array.from({ length: inputs }, () => {
    const slices = Array.from({ length: count }, (_, slice) => slice);
    for (let last = count - 1; last > 0; last--) {
      const other = Math.floor(draws.next() * (last + 1));
      [slices[last], slices[other]] = [slices[other] as number, slices[last] as number];
    }
    return slices.map((slice) => (slice + draws.next()) / count);
  });
  return Array.from({ length: count }, (_, index) => axes.map((axis) => axis[index] as number));
}

/** All feasible and, but for a billionth of their ranges, at one place. */
function isSettled<D>(all: readonly Candidate<D>[]): boolean {
  const [first] = all;
  if (!first || first.sizes.length > 1) return false;
  return all.every(
    ({ x, violation }) => violation === 0 && x.every((at, axis) => Math.abs(at - (first.x[axis] as number)) < 1e-9),
  );
}

const isSame = <D>(a: Candidate<D>, b: Candidate<D>): boolean => a.x.every((at, axis) => at === b.x[axis]);

/** A candidate's place with most of its inputs replaced by those of another one, moved along the difference of two more. */
function trialOf<D>(all: readonly Candidate<D>[], index: number, factor: number, draws: Draws): number[] {
  const others: number[] = [];
  while (others.length < 3) {
    const other = Math.floor(draws.next() * all.length);
    if (other !== index && !others.includes(other)) others.push(other);
  }
  const [base, from, to] = others.map((other) => (all[other] as Candidate<D>).x) as [
    readonly number[],
    readonly number[],
    readonly number[],
  ];
  const own = (all[index] as Candidate<D>).x;
  const certain = Math.floor(draws.next() * own.length);
  return own.map((at, axis) => {
    if (axis !== certain && draws.next() >= 0.9) return at;
    const start = base[axis] as number;
    const moved = start + factor * ((to[axis] as number) - (from[axis] as number));
    // Beyond an end: somewhere between there and where it started.
    return moved < 0 ? start * draws.next() : moved > 1 ? start + (1 - start) * draws.next() : moved;
  });
}

/** The best ones: front after front, and of the front that is too many those that stand apart. */
function thinned<D>(all: readonly Candidate<D>[], count: number): Candidate<D>[] {
  const kept: Candidate<D>[] = [];
  let rest = [...all];
  while (rest.length > 0) {
    const best = rest.filter((a) => !rest.some((b) => b !== a && compare(b, a) < 0 && compare(a, b) > 0));
    if (kept.length + best.length > count) return [...kept, ...apart(best, count - kept.length)];
    kept.push(...best);
    rest = rest.filter((each) => !best.includes(each));
    if (kept.length === count) break;
  }
  return kept;
}

/** Takes away, one by one, the candidate that stands closest to its neighbours on the front. */
function apart<D>(all: readonly Candidate<D>[], count: number): Candidate<D>[] {
  const rest = [...all].sort((a, b) => (a.sizes[0] ?? 0) - (b.sizes[0] ?? 0));
  const [first, last] = [rest[0], rest.at(-1)];
  const spans = (first?.sizes ?? []).map((size, index) => Math.abs((last?.sizes[index] ?? size) - size) || 1);
  const gap = (place: number): number => {
    const [before, after] = [rest[place - 1], rest[place + 1]];
    if (!before || !after) return Number.POSITIVE_INFINITY;
    return spans.reduce(
      (sum, span, index) => sum + Math.abs((after.sizes[index] ?? 0) - (before.sizes[index] ?? 0)) / span,
      0,
    );
  };
  while (rest.length > count) {
    let closest = 0;
    for (let place = 1; place < rest.length; place++) if (gap(place) < gap(closest)) closest = place;
    rest.splice(closest === 0 ? rest.length - 1 : closest, 1);
  }
  return rest;
}
