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
 * time and four rows, so that each number is fetched once for several products). Returns null where the matrix is
 * singular or not finite.
 */
export function factorise(matrix: Float64Array, size: number): Factors | null {
  const order = Int32Array.from({ length: size }, (_, i) => i);
  for (let start = 0; start < size; start += 4) {
    const end = Math.min(start + 4, size);
    if (!eliminateColumns(matrix, size, start, end, order)) return null;
    if (end === size) break;
    for (let row = start + 1; row < end; row++) {
      for (let above = start; above < row; above++) subtract(matrix, size, row, above, end);
    }
    let row = end;
    for (; row + 3 < size; row += 4) subtractFourOfFour(matrix, size, row, start);
    for (; row < size; row++) subtractFour(matrix, size, row, start);
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
    for (let row = 0; row < size; row++) reduceFour(factors, four, row, 0, row, 1);
    for (let row = size - 1; row >= 0; row--) {
      reduceFour(factors, four, row, row + 1, size, 1 / (factors.triangles[row * size + row] as number));
    }
    for (let row = 0; row < size; row++) {
      for (let c = 0; c < some; c++) result[row * columns + first + c] = four[row * 4 + c] as number;
    }
  }
  return result;
}

/** Takes from a row of four numbers the rows from start to end, each times its number in the triangles, and scales it. */
function reduceFour(
  { triangles, size }: Factors,
  four: Float64Array,
  row: number,
  start: number,
  end: number,
  scale: number,
): void {
  let a = four[row * 4] as number;
  let b = four[row * 4 + 1] as number;
  let c = four[row * 4 + 2] as number;
  let d = four[row * 4 + 3] as number;
  for (let k = start; k < end; k++) {
    const factor = triangles[row * size + k] as number;
    a -= factor * (four[k * 4] as number);
    b -= factor * (four[k * 4 + 1] as number);
    c -= factor * (four[k * 4 + 2] as number);
    d -= factor * (four[k * 4 + 3] as number);
  }
  four[row * 4] = a * scale;
  four[row * 4 + 1] = b * scale;
  four[row * 4 + 2] = c * scale;
  four[row * 4 + 3] = d * scale;
}

/** Elimination within the columns from start to end alone; whole rows change places. */
function eliminateColumns(m: Float64Array, size: number, start: number, end: number, order: Int32Array): boolean {
  for (let k = start; k < end; k++) {
    let pivot = k;
    let largest = Math.abs(m[k * size + k] as number);
    for (let row = k + 1; row < size; row++) {
      const here = Math.abs(m[row * size + k] as number);
      if (here > largest) {
        largest = here;
        pivot = row;
      }
    }
    if (!(largest > 0 && largest < Number.POSITIVE_INFINITY)) return false;
    if (pivot !== k) {
      for (let j = 0; j < size; j++) {
        const kept = m[k * size + j] as number;
        m[k * size + j] = m[pivot * size + j] as number;
        m[pivot * size + j] = kept;
      }
      const kept = order[k] as number;
      order[k] = order[pivot] as number;
      order[pivot] = kept;
    }
    const head = 1 / (m[k * size + k] as number);
    for (let row = k + 1; row < size; row++) {
      const factor = (m[row * size + k] as number) * head;
      m[row * size + k] = factor;
      for (let j = k + 1; j < end; j++)
        m[row * size + j] = (m[row * size + j] as number) - factor * (m[k * size + j] as number);
    }
  }
  return true;
}

/** Takes its multiple of the row above from a row, from a column on. */
function subtract(m: Float64Array, size: number, row: number, above: number, fromColumn: number): void {
  const factor = m[row * size + above] as number;
  const to = row * size;
  const from = above * size;
  for (let j = fromColumn; j < size; j++) m[to + j] = (m[to + j] as number) - factor * (m[from + j] as number);
}

/** Takes from a row its multiples of the four rows from `start`, in the columns behind them. */
function subtractFour(m: Float64Array, size: number, row: number, start: number): void {
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

/** The same for this row and the three after it. */
function subtractFourOfFour(m: Float64Array, size: number, row: number, start: number): void {
  const to0 = row * size;
  const to1 = to0 + size;
  const to2 = to1 + size;
  const to3 = to2 + size;
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
  for (let j = start + 4; j < size; j++) {
    const ua = m[a + j] as number;
    const ub = m[b + j] as number;
    const uc = m[c + j] as number;
    const ud = m[d + j] as number;
    m[to0 + j] = (m[to0 + j] as number) - f0a * ua - f0b * ub - f0c * uc - f0d * ud;
    m[to1 + j] = (m[to1 + j] as number) - f1a * ua - f1b * ub - f1c * uc - f1d * ud;
    m[to2 + j] = (m[to2 + j] as number) - f2a * ua - f2b * ub - f2c * uc - f2d * ud;
    m[to3 + j] = (m[to3 + j] as number) - f3a * ua - f3b * ub - f3c * uc - f3d * ud;
  }
}
