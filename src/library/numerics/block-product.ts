/** Rows of numbers within a longer list: the first begins at `start`, each next one `stride` further on. */
export interface Rows {
  readonly numbers: Float64Array;
  readonly start: number;
  readonly stride: number;
}

/**
 * Adds Aᵀ·B, times a weight, to a block of four by four numbers: the sums over `count` rows of the products of the first
 * four numbers of each row of A with those of B. Reads each number once for four products.
 */
export function addBlockProduct(a: Rows, b: Rows, count: number, weight: number, into: Rows): void {
  const left = a.numbers;
  const right = b.numbers;
  let i = a.start;
  let j = b.start;
  let s00 = 0;
  let s01 = 0;
  let s02 = 0;
  let s03 = 0;
  let s10 = 0;
  let s11 = 0;
  let s12 = 0;
  let s13 = 0;
  let s20 = 0;
  let s21 = 0;
  let s22 = 0;
  let s23 = 0;
  let s30 = 0;
  let s31 = 0;
  let s32 = 0;
  let s33 = 0;
  for (let row = 0; row < count; row++) {
    const b0 = right[j] as number;
    const b1 = right[j + 1] as number;
    const b2 = right[j + 2] as number;
    const b3 = right[j + 3] as number;
    const a0 = left[i] as number;
    s00 += a0 * b0;
    s01 += a0 * b1;
    s02 += a0 * b2;
    s03 += a0 * b3;
    const a1 = left[i + 1] as number;
    s10 += a1 * b0;
    s11 += a1 * b1;
    s12 += a1 * b2;
    s13 += a1 * b3;
    const a2 = left[i + 2] as number;
    s20 += a2 * b0;
    s21 += a2 * b1;
    s22 += a2 * b2;
    s23 += a2 * b3;
    const a3 = left[i + 3] as number;
    s30 += a3 * b0;
    s31 += a3 * b1;
    s32 += a3 * b2;
    s33 += a3 * b3;
    i += a.stride;
    j += b.stride;
  }
  addFour(into.numbers, into.start, weight, s00, s01, s02, s03);
  addFour(into.numbers, into.start + into.stride, weight, s10, s11, s12, s13);
  addFour(into.numbers, into.start + 2 * into.stride, weight, s20, s21, s22, s23);
  addFour(into.numbers, into.start + 3 * into.stride, weight, s30, s31, s32, s33);
}

function addFour(into: Float64Array, at: number, weight: number, a: number, b: number, c: number, d: number): void {
  into[at] = (into[at] as number) + weight * a;
  into[at + 1] = (into[at + 1] as number) + weight * b;
  into[at + 2] = (into[at + 2] as number) + weight * c;
  into[at + 3] = (into[at + 3] as number) + weight * d;
}
