/**
 * The inverse of a small square matrix, row by row (Gauss–Jordan with row exchange). Throws where it has none: "got a
 * singular matrix, expected one that can be inverted".
 */
export function inverse(matrix: Float64Array, size: number): Float64Array {
  const left = Float64Array.from(matrix);
  const right = new Float64Array(size * size);
  for (let i = 0; i < size; i++) right[i * size + i] = 1;
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let row = column + 1; row < size; row++) {
      if (Math.abs(left[row * size + column] as number) > Math.abs(left[pivot * size + column] as number)) pivot = row;
    }
    const head = left[pivot * size + column] as number;
    if (!(Math.abs(head) > 0)) throw new Error("got a singular matrix, expected one that can be inverted");
    for (const half of [left, right]) {
      exchange(half, size, column, pivot);
      for (let i = 0; i < size; i++) half[column * size + i] = (half[column * size + i] as number) / head;
    }
    for (let row = 0; row < size; row++) {
      const factor = left[row * size + column] as number;
      if (row === column || factor === 0) continue;
      for (const half of [left, right]) {
        for (let i = 0; i < size; i++) {
          half[row * size + i] = (half[row * size + i] as number) - factor * (half[column * size + i] as number);
        }
      }
    }
  }
  return right;
}

function exchange(matrix: Float64Array, size: number, a: number, b: number): void {
  if (a === b) return;
  for (let i = 0; i < size; i++) {
    const kept = matrix[a * size + i] as number;
    matrix[a * size + i] = matrix[b * size + i] as number;
    matrix[b * size + i] = kept;
  }
}
