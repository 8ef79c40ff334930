/** Whether a difference of two results is larger than what mass, build and model could show: the one place that says so. */
import { deviationOf, type Law } from "./laws.ts";

/** A difference held against a band. */
export interface Difference {
  /** Of the second from the first, in SI. */
  readonly size: number;
  /** The same as a share of the first; null where that is 0. */
  readonly share: number | null;
  /** How large a difference must be to be seen; null where no uncertainty is known. */
  readonly band: number | null;
  /** False for "no difference you could see". Without a band every difference that is one counts as seen. */
  readonly isSeen: boolean;
}

/**
 * Compares two results, each known to ± its band (null: not known). What is off about one is taken to be off apart from
 * the other, so the bands add in squares.
 */
export function differenceOf(first: number, second: number, band: number | null, secondBand = band): Difference {
  const size = second - first;
  const both = band === null || secondBand === null ? null : Math.hypot(band, secondBand);
  // A rounding error in the last figures is no difference.
  const least = both ?? 1e-12 * Math.max(Math.abs(first), Math.abs(second));
  return { size, share: first === 0 ? null : size / Math.abs(first), band: both, isSeen: Math.abs(size) > least };
}

/** What one input adds to a band: the derivative of the result by it, and how far it may be off. */
export interface Share {
  readonly derivative: number | null;
  readonly plusMinus: number | null;
  readonly law?: Law | undefined;
}

/**
 * The band of a result, ± about 95 %: the law of propagation of uncertainty for inputs that are off apart from each other
 * (JCGM 100:2008, 5.1.2, equation 10) with a coverage factor of 2 (6.3.3). Null where a derivative is missing; inputs
 * without a ± add nothing. Uniform where no law is said.
 */
export function bandOf(shares: readonly Share[]): number | null {
  let square = 0;
  for (const { derivative, plusMinus, law = "uniform" } of shares) {
    if (plusMinus === null) continue;
    if (derivative === null) return null;
    square += (derivative * plusMinus * deviationOf[law]) ** 2;
  }
  return 2 * Math.sqrt(square);
}
