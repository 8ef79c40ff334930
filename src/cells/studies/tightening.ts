/** Which input to build more exactly first: what each contributes to the spread, and what halving its ± would do. */
import { type Law, likelihoodOfHalf } from "./laws.ts";
import { correlationOf } from "./statistics.ts";

/** The share of a result's spread (its variance) that goes with an input. */
export interface Influence {
  readonly target: string;
  readonly share: number;
}

export interface Tightening {
  readonly target: string;
  /** The share of builds that would pass every check with the ± of this input halved. */
  readonly passing: number;
  /** How much more that is than now. */
  readonly gain: number;
  /** Larger than what chance alone would show. */
  readonly isSure: boolean;
}

/** As much of a deviation as counts here. */
interface Off {
  readonly input: { readonly target: string };
  readonly pair: object | null;
  readonly law: Law;
}

/**
 * Largest first. `off` has, by input and then by build, how far the input was off, and its pair where it has one. The
 * share is the squared correlation, of both halves of a pair together.
 */
export function influencesOn(
  values: readonly (number | string | undefined)[],
  off: readonly (readonly (readonly number[])[])[],
  inputs: readonly Off[],
): Influence[] {
  const there = values.flatMap((value, build) => (typeof value === "number" ? [build] : []));
  if (there.length < 3) return [];
  const result = there.map((build) => values[build] as number);
  const influences = inputs.map(({ input: { target }, pair }, index) => {
    const column = (half: number): number[] => there.map((build) => off[index]?.[build]?.[half] ?? 0);
    const own = column(0);
    const a = correlationOf(own, result);
    if (!pair) return { target, share: a * a };
    const other = column(1);
    const [b, r] = [correlationOf(other, result), correlationOf(own, other)];
    // Multiple correlation with two variables; where they go as one it is that of the one.
    return { target, share: 1 - r * r < 1e-9 ? a * a : (a * a + b * b - 2 * a * b * r) / (1 - r * r) };
  });
  return influences.sort((a, b) => b.share - a.share);
}

/**
 * What halving each ± would do, from the builds that are there: each counts as much more, or less, as it would be likelier
 * then (importance weights; JCGM 101 builds anew instead). For a pair both halves are taken to be tightened; its weights
 * are exact where the halves are off independently of each other, and close otherwise.
 */
export function tighteningsOf(
  passes: readonly boolean[],
  off: readonly (readonly (readonly number[])[])[],
  inputs: readonly Off[],
): Tightening[] {
  const now = passes.filter(Boolean).length / passes.length;
  const tightenings = inputs.map(({ input: { target }, law }, index): Tightening => {
    let [all, passing, squares] = [0, 0, 0];
    passes.forEach((isPassing, build) => {
      const weight = (off[index]?.[build] ?? []).reduce((product, each) => product * likelihoodOfHalf(law, each), 1);
      all += weight;
      squares += weight * weight;
      if (isPassing) passing += weight;
    });
    const share = all > 0 ? passing / all : now;
    const counted = squares > 0 ? (all * all) / squares : 0;
    const chance = counted > 0 ? Math.sqrt((share * (1 - share) + now * (1 - now)) / counted) : 1;
    return { target, passing: share, gain: share - now, isSure: share - now > 2 * chance };
  });
  return tightenings.sort((a, b) => b.gain - a.gain);
}
