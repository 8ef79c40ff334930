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
 * time, so that each number is fetched once for four products). Returns null where the matrix is singular or not finite.
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
    for (let row = end; row < size; row++) subtractFour(matrix, size, row, start);
  }
  return { triangles: matrix, size, order };
}

/**
 * Solves for several right-hand sides at once: `sides` holds them row by row, `columns` numbers a row. The result has
 * the same layout.
 */
export function solveFactored({ triangles, size, order }: Factors, sides: Float64Array, columns: number): Float64Array {
  const result = new Float64Array(size * columns);
  for (let row = 0; row < size; row++) {
    const from = (order[row] as number) * columns;
    for (let c = 0; c < columns; c++) result[row * columns + c] = sides[from + c] as number;
    for (let k = 0; k < row; k++) takeAway(result, columns, row, k, triangles[row * size + k] as number);
  }
  for (let row = size - 1; row >= 0; row--) {
    for (let k = row + 1; k < size; k++) takeAway(result, columns, row, k, triangles[row * size + k] as number);
    const head = 1 / (triangles[row * size + row] as number);
    for (let c = 0; c < columns; c++) result[row * columns + c] = (result[row * columns + c] as number) * head;
  }
  return result;
}

function takeAway(rows: Float64Array, columns: number, row: number, other: number, factor: number): void {
  const to = row * columns;
  const from = other * columns;
  for (let c = 0; c < columns; c++) rows[to + c] = (rows[to + c] as number) - factor * (rows[from + c] as number);
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
  const [a, b, c, d] = [start * size, (start + 1) * size, (start + 2) * size, (start + 3) * size];
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
