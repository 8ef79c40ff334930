/**
 * Three places within an interval, as shares of it, with weights that add up to 1: the weighted sum integrates any
 * polynomial up to the fifth degree exactly (Gauss–Legendre quadrature; Abramowitz and Stegun, 1964, table 25.4).
 */
export const threePoints: readonly (readonly [share: number, weight: number])[] = [
  [0.5 - Math.sqrt(0.15), 5 / 18],
  [0.5, 8 / 18],
  [0.5 + Math.sqrt(0.15), 5 / 18],
];
