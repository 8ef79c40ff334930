/** Real matrices of a few rows, row by row in one list; the only file that knows the package which computes with them. */
import { EigenvalueDecomposition, LuDecomposition, Matrix } from "ml-matrix";

/** A root of a real matrix, with the sizes of the parts of its vector. */
export interface Root {
  /** Rate of growth, and angular speed of its oscillation; of a pair the one with a positive speed comes first. */
  readonly real: number;
  readonly imaginary: number;
  /** Size of each part of its eigenvector; only their ratios mean anything. */
  readonly sizes: readonly number[];
}

/**
 * Roots and vectors of a square matrix, in any order, the two of a complex pair next to each other (by reduction to
 * Hessenberg form and shifted QR steps, as ml-matrix does it). The matrix must be finite.
 */
export function rootsOf(entries: readonly number[]): readonly Root[] {
  const size = Math.sqrt(entries.length);
  if (!entries.every(Number.isFinite)) throw new Error("got a matrix that is not finite, expected finite numbers");
  const found = new EigenvalueDecomposition(Matrix.from1DArray(size, size, [...entries]), { assumeSymmetric: false });
  const { realEigenvalues: real, imaginaryEigenvalues: imaginary, eigenvectorMatrix: vectors } = found;
  return real.map((each, i) => {
    const turning = imaginary[i] ?? 0;
    // A pair shares two columns, the real and the imaginary part of its vector.
    const [a, b] = turning > 0 ? [i, i + 1] : turning < 0 ? [i - 1, i] : [i, i];
    const sizes = Array.from({ length: size }, (_, row) =>
      turning === 0 ? Math.abs(vectors.get(row, i)) : Math.hypot(vectors.get(row, a), vectors.get(row, b)),
    );
    return { real: each, imaginary: turning, sizes };
  });
}

/** The matrix X of A·X = B, row by row; A is square, B has as many rows. Not finite where A has no inverse. */
export function solveMatrix(a: readonly number[], b: readonly number[]): readonly number[] {
  const rows = Math.sqrt(a.length);
  const [left, right] = [Matrix.from1DArray(rows, rows, [...a]), Matrix.from1DArray(rows, b.length / rows, [...b])];
  const parts = new LuDecomposition(left);
  return parts.isSingular() ? b.map(() => Number.NaN) : parts.solve(right).to1DArray();
}
