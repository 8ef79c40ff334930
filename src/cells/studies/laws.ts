/**
 * The laws by which a value is off, in units of its ±. Uniform and triangular ones end at ±1; of a normal one ± is two
 * standard deviations, so that about 95 % lie within (the expanded uncertainty with a coverage factor of 2 of JCGM
 * 100:2008, 6.3.3). Where only limits are known, the uniform law is the one to take (JCGM 100:2008, 4.3.7).
 */
import type { StudyInput } from "../cell.ts";
import type { Draws } from "./draws.ts";

export type Law = NonNullable<StudyInput["law"]>;

/** How many random numbers a deviation takes, or two of a pair; always as many, so that streams can be passed over. */
export const drawsFor = (law: Law, isPair: boolean): number =>
  law === "normal" ? 2 : (law === "uniform" ? 1 : 2) * (isPair ? 2 : 1);

/** A standard deviation in units of ±. */
export const deviationOf: Readonly<Record<Law, number>> = {
  uniform: 1 / Math.sqrt(3),
  triangular: 1 / Math.sqrt(6),
  normal: 0.5,
};

/** One deviation. */
export function deviate(law: Law, draws: Draws): number {
  switch (law) {
    case "uniform":
      return 2 * draws.next() - 1;
    case "triangular":
      return draws.next() + draws.next() - 1;
    case "normal":
      return normalPair(draws)[0] / 2;
  }
}

/** Two deviations of the same law with that correlation. */
export function deviatePair(law: Law, correlation: number, draws: Draws): readonly [number, number] {
  switch (law) {
    case "uniform":
      return uniformPair(correlation, draws);
    case "triangular": {
      // Each is the mean of two uniform ones, so the correlation stays.
      const [a, b] = uniformPair(correlation, draws);
      const [c, d] = uniformPair(correlation, draws);
      return [(a + c) / 2, (b + d) / 2];
    }
    case "normal": {
      const [a, b] = correlated(correlation, normalPair(draws));
      return [a / 2, b / 2];
    }
  }
}

/** How many times as likely a deviation is where the ± is halved. */
export function likelihoodOfHalf(law: Law, deviation: number): number {
  const size = Math.abs(deviation);
  switch (law) {
    case "uniform":
      return size <= 0.5 ? 2 : 0;
    case "triangular":
      return size < 0.5 ? (2 * (1 - 2 * size)) / (1 - size) : 0;
    case "normal":
      return 2 * Math.exp(-6 * deviation * deviation);
  }
}

/**
 * Two uniform deviations with a correlation: normal ones of the correlation 2·sin(π·r/6), each put through its
 * distribution function, have the correlation r (W. H. Kruskal, Journal of the American Statistical Association 53 (1958)
 * 814–861, after Pearson 1907; from memory).
 */
function uniformPair(correlation: number, draws: Draws): readonly [number, number] {
  const [a, b] = correlated(2 * Math.sin((Math.PI * correlation) / 6), normalPair(draws));
  return [2 * normalShare(a) - 1, 2 * normalShare(b) - 1];
}

/** Two independent standard normal numbers (G. E. P. Box and M. E. Muller, Annals of Mathematical Statistics 29 (1958) 610). */
function normalPair(draws: Draws): readonly [number, number] {
  const radius = Math.sqrt(-2 * Math.log(1 - draws.next()));
  const angle = 2 * Math.PI * draws.next();
  return [radius * Math.cos(angle), radius * Math.sin(angle)];
}

const correlated = (r: number, [a, b]: readonly [number, number]): readonly [number, number] => [
  a,
  // A correlation of 1 that is so but for rounding leaves nothing for the second.
  r * a + (1 - r * r < 1e-12 ? 0 : Math.sqrt(1 - r * r)) * b,
];

/**
 * The share of a standard normal law below a value: ½ + φ(x)·(x + x³/3 + x⁵/(3·5) + …) (G. Marsaglia, Journal of
 * Statistical Software 11 (2004), no. 4; from memory).
 */
export function normalShare(x: number): number {
  if (x < -8) return 0;
  if (x > 8) return 1;
  let sum = x;
  let term = x;
  for (let odd = 3; Math.abs(term) > 1e-17 * Math.abs(sum); odd += 2) {
    term *= (x * x) / odd;
    sum += term;
  }
  return 0.5 + (sum * Math.exp(-0.5 * x * x)) / Math.sqrt(2 * Math.PI);
}
