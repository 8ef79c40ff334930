/**
 * Integral of the product of two linear functions over a width, exact: `a` goes from a1 to a2 while `b` goes from b1 to
 * b2. With b = 1 it is the integral of `a` alone, with b = a that of its square.
 */
export const integrateProduct = (width: number, a1: number, a2: number, b1: number, b2: number): number =>
  (width * (a1 * (2 * b1 + b2) + a2 * (b1 + 2 * b2))) / 6;
