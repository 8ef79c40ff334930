/** A square matrix split into its triangles, ready to solve with. */
export interface Factors {
  /** Row by row: above and on the diagonal the upper triangle, below it the multipliers of the lower one. */
  readonly triangles: Float64Array;
  readonly size: number;
  /** Row `order[i]` of the matrix has become row i. */
  readonly order: Int32Array;
}

/**
 * Splits a matrix (row by row, overwritten) into triangles, with row exchange (Gaussian elimination; four pivots at a
 * time and eight rows, so that each number is fetched once for several products). Returns null where the matrix is
 * singular or not finite.
 */
export function factorise(matrix: Float64Array, size: number): Factors | null {
  const order = Int32Array.from({ length: size }, (_, i) => i);
  for (let start = 0; start < size; start += 4) {
    const end = Math.min(start + 4, size);
    if (!eliminateColumns(matrix, size, start, end, order)) return null;
    if (end === size) break;
    subtractWithinFour(matrix, size, start);
    let row = end;
    for (; row + 7 < size; row += 8) subtractFromEight(matrix, size, row, start);
    for (; row < size; row++) subtractFrom(matrix, size, row, start);
  }
  return { triangles: matrix, size, order };
}

/**
 * Solves for several right-hand sides at once: `sides` holds them row by row, `columns` numbers a row. The result has
 * the same layout.
 */
export function solveFactored(factors: Factors, sides: Float64Array, columns: number): Float64Array {
  const { size, order } = factors;
  const result = new Float64Array(size * columns);
  const four = new Float64Array(size * 4);
  for (let first = 0; first < columns; first += 4) {
    const some = Math.min(4, columns - first);
    for (let row = 0; row < size; row++) {
      for (let c = 0; c < some; c++) four[row * 4 + c] = sides[(order[row] as number) * columns + first + c] as number;
    }
    // Two rows at a time; where their number is odd, the last one by itself.
    const paired = size - (size % 2);
    for (let row = 0; row < paired; row += 2) {
      reduceTwo(factors, four, row, 0, row);
      reduce(factors, four, row + 1, row, row + 1, 1);
    }
    if (paired < size) {
      reduce(factors, four, paired, 0, paired, 1);
      reduce(factors, four, paired, size, size, perDiagonal(factors, paired));
    }
    for (let row = paired - 2; row >= 0; row -= 2) {
      reduceTwo(factors, four, row, row + 2, size);
      reduce(factors, four, row + 1, size, size, perDiagonal(factors, row + 1));
      reduce(factors, four, row, row + 1, row + 2, perDiagonal(factors, row));
    }
    for (let row = 0; row < size; row++) {
      for (let c = 0; c < some; c++) result[row * columns + first + c] = four[row * 4 + c] as number;
    }
  }
  return result;
}

const perDiagonal = ({ triangles, size }: Factors, row: number): number => 1 / (triangles[row * size + row] as number);

/** Takes from a row of four numbers the rows from start to end, each times its number in the triangles, and scales it. */
function reduce(
  { triangles, size }: Factors,
  four: Float64Array,
  row: number,
  start: number,
  end: number,
  scale: number,
): void {
  for (let c = row * 4; c < row * 4 + 4; c++) {
    let sum = four[c] as number;
    for (let k = start; k < end; k++) sum -= (triangles[row * size + k] as number) * (four[k * 4 + (c % 4)] as number);
    four[c] = sum * scale;
  }
}

/** Takes such rows from this row and the one after it. */
function reduceTwo({ triangles, size }: Factors, four: Float64Array, row: number, start: number, end: number): void {
  const into = row * 4;
  const one = row * size;
  const other = one + size;
  let a0 = four[into] as number;
  let b0 = four[into + 1] as number;
  let c0 = four[into + 2] as number;
  let d0 = four[into + 3] as number;
  let a1 = four[into + 4] as number;
  let b1 = four[into + 5] as number;
  let c1 = four[into + 6] as number;
  let d1 = four[into + 7] as number;
  for (let k = start; k < end; k++) {
    const at = k * 4;
    const a = four[at] as number;
    const b = four[at + 1] as number;
    const c = four[at + 2] as number;
    const d = four[at + 3] as number;
    const factor0 = triangles[one + k] as number;
    a0 -= factor0 * a;
    b0 -= factor0 * b;
    c0 -= factor0 * c;
    d0 -= factor0 * d;
    const factor1 = triangles[other + k] as number;
    a1 -= factor1 * a;
    b1 -= factor1 * b;
    c1 -= factor1 * c;
    d1 -= factor1 * d;
  }
  four[into] = a0;
  four[into + 1] = b0;
  four[into + 2] = c0;
  four[into + 3] = d0;
  four[into + 4] = a1;
  four[into + 5] = b1;
  four[into + 6] = c1;
  four[into + 7] = d1;
}

/**
 * Elimination within the columns from start to end alone, at most four; whole rows change places. Each column is brought
 * up to date by those before it only when its turn comes, in the same pass that finds its pivot.
 */
function eliminateColumns(m: Float64Array, size: number, start: number, end: number, order: Int32Array): boolean {
  for (let k = start; k < end; k++) {
    const before = k - start;
    const above = start * size + k;
    const ua = before > 0 ? (m[above] as number) : 0;
    let ub = 0;
    let uc = 0;
    if (before > 1) {
      const row = (start + 1) * size + start;
      ub = (m[above + size] as number) - (m[row] as number) * ua;
      m[above + size] = ub;
    }
    if (before > 2) {
      const row = (start + 2) * size + start;
      uc = (m[above + 2 * size] as number) - (m[row] as number) * ua - (m[row + 1] as number) * ub;
      m[above + 2 * size] = uc;
    }
    let pivot = k;
    let largest = 0;
    for (let row = k; row < size; row++) {
      const at = row * size + start;
      let value = m[at + before] as number;
      if (before > 0) value -= (m[at] as number) * ua;
      if (before > 1) value -= (m[at + 1] as number) * ub;
      if (before > 2) value -= (m[at + 2] as number) * uc;
      m[at + before] = value;
      const here = Math.abs(value);
      if (!(here <= largest)) {
        largest = here;
        pivot = row;
      }
      // Not a number stays the largest.
      if (!(largest < Number.POSITIVE_INFINITY)) return false;
    }
    if (largest === 0) return false;
    if (pivot !== k) exchangeRows(m, size, k, pivot, order);
    const head = 1 / (m[k * size + k] as number);
    for (let row = k + 1; row < size; row++) m[row * size + k] = (m[row * size + k] as number) * head;
  }
  return true;
}

function exchangeRows(m: Float64Array, size: number, a: number, b: number, order: Int32Array): void {
  for (let j = 0; j < size; j++) {
    const kept = m[a * size + j] as number;
    m[a * size + j] = m[b * size + j] as number;
    m[b * size + j] = kept;
  }
  const kept = order[a] as number;
  order[a] = order[b] as number;
  order[b] = kept;
}

/** Takes from each of the four rows from `start` its multiples of those above it, in the columns behind them. */
function subtractWithinFour(m: Float64Array, size: number, start: number): void {
  const a = start * size;
  const b = a + size;
  const c = b + size;
  const d = c + size;
  const ba = m[b + start] as number;
  const ca = m[c + start] as number;
  const cb = m[c + start + 1] as number;
  const da = m[d + start] as number;
  const db = m[d + start + 1] as number;
  const dc = m[d + start + 2] as number;
  for (let j = start + 4; j < size; j++) {
    const ua = m[a + j] as number;
    const ub = (m[b + j] as number) - ba * ua;
    const uc = (m[c + j] as number) - ca * ua - cb * ub;
    m[b + j] = ub;
    m[c + j] = uc;
    m[d + j] = (m[d + j] as number) - da * ua - db * ub - dc * uc;
  }
}

/** Takes from a row its multiples of the four rows from `start`, in the columns behind them. */
function subtractFrom(m: Float64Array, size: number, row: number, start: number): void {
  const to = row * size;
  const a = start * size;
  const b = a + size;
  const c = b + size;
  const d = c + size;
  const fa = m[to + start] as number;
  const fb = m[to + start + 1] as number;
  const fc = m[to + start + 2] as number;
  const fd = m[to + start + 3] as number;
  for (let j = start + 4; j < size; j++) {
    m[to + j] =
      (m[to + j] as number) -
      fa * (m[a + j] as number) -
      fb * (m[b + j] as number) -
      fc * (m[c + j] as number) -
      fd * (m[d + j] as number);
  }
}

/** The same for this row and the seven after it. */
function subtractFromEight(m: Float64Array, size: number, row: number, start: number): void {
  const to0 = row * size;
  const to1 = to0 + size;
  const to2 = to1 + size;
  const to3 = to2 + size;
  const to4 = to3 + size;
  const to5 = to4 + size;
  const to6 = to5 + size;
  const to7 = to6 + size;
  const a = start * size;
  const b = a + size;
  const c = b + size;
  const d = c + size;
  const f0a = m[to0 + start] as number;
  const f0b = m[to0 + start + 1] as number;
  const f0c = m[to0 + start + 2] as number;
  const f0d = m[to0 + start + 3] as number;
  const f1a = m[to1 + start] as number;
  const f1b = m[to1 + start + 1] as number;
  const f1c = m[to1 + start + 2] as number;
  const f1d = m[to1 + start + 3] as number;
  const f2a = m[to2 + start] as number;
  const f2b = m[to2 + start + 1] as number;
  const f2c = m[to2 + start + 2] as number;
  const f2d = m[to2 + start + 3] as number;
  const f3a = m[to3 + start] as number;
  const f3b = m[to3 + start + 1] as number;
  const f3c = m[to3 + start + 2] as number;
  const f3d = m[to3 + start + 3] as number;
  const f4a = m[to4 + start] as number;
  const f4b = m[to4 + start + 1] as number;
  const f4c = m[to4 + start + 2] as number;
  const f4d = m[to4 + start + 3] as number;
  const f5a = m[to5 + start] as number;
  const f5b = m[to5 + start + 1] as number;
  const f5c = m[to5 + start + 2] as number;
  const f5d = m[to5 + start + 3] as number;
  const f6a = m[to6 + start] as number;
  const f6b = m[to6 + start + 1] as number;
  const f6c = m[to6 + start + 2] as number;
  const f6d = m[to6 + start + 3] as number;
  const f7a = m[to7 + start] as number;
  const f7b = m[to7 + start + 1] as number;
  const f7c = m[to7 + start + 2] as number;
  const f7d = m[to7 + start + 3] as number;
  for (let j = start + 4; j < size; j++) {
    const ua = m[a + j] as number;
    const ub = m[b + j] as number;
    const uc = m[c + j] as number;
    const ud = m[d + j] as number;
    m[to0 + j] = (m[to0 + j] as number) - f0a * ua - f0b * ub - f0c * uc - f0d * ud;
    m[to1 + j] = (m[to1 + j] as number) - f1a * ua - f1b * ub - f1c * uc - f1d * ud;
    m[to2 + j] = (m[to2 + j] as number) - f2a * ua - f2b * ub - f2c * uc - f2d * ud;
    m[to3 + j] = (m[to3 + j] as number) - f3a * ua - f3b * ub - f3c * uc - f3d * ud;
    m[to4 + j] = (m[to4 + j] as number) - f4a * ua - f4b * ub - f4c * uc - f4d * ud;
    m[to5 + j] = (m[to5 + j] as number) - f5a * ua - f5b * ub - f5c * uc - f5d * ud;
    m[to6 + j] = (m[to6 + j] as number) - f6a * ua - f6b * ub - f6c * uc - f6d * ud;
    m[to7 + j] = (m[to7 + j] as number) - f7a * ua - f7b * ub - f7c * uc - f7d * ud;
  }
}
