import fc from "fast-check";
import { Matrix, solve } from "ml-matrix";
import { describe, expect, test } from "vitest";
import { factorise, solveFactored } from "../../../src/library/numerics/lu.ts";
import { runs } from "../panel-arbitraries.ts";

const filled = (length: number, seed: number) =>
  Float64Array.from({ length }, (_, i) => Math.sin((i + 1) * 12.9898 + seed) * ((i * 7919) % 13));

describe("the split into triangles", () => {
  test("solves for several right-hand sides at once, whatever the size is to four", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 23 }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer(),
        (size, columns, seed) => {
          const matrix = filled(size * size, seed % 1000).map((value, i) => value + (i % (size + 1) === 0 ? 0.5 : 0));
          const wanted = filled(size * columns, (seed % 77) + 1);
          const sides = new Float64Array(size * columns);
          for (let i = 0; i < size; i++) {
            for (let c = 0; c < columns; c++) {
              for (let k = 0; k < size; k++) {
                sides[i * columns + c] =
                  (sides[i * columns + c] ?? 0) + (matrix[i * size + k] ?? 0) * (wanted[k * columns + c] ?? 0);
              }
            }
          }
          const factors = factorise(Float64Array.from(matrix), size);
          if (!factors) return;
          const smallest = Math.min(...factors.triangles.filter((_, i) => i % (size + 1) === 0).map(Math.abs));
          const solved = solveFactored(factors, sides, columns);
          solved.forEach((value, i) => {
            expect(Math.abs(value - (wanted[i] ?? 0))).toBeLessThan(1e-9 / Math.min(1, smallest) ** 2);
          });
        },
      ),
      runs,
    );
  });
  test("agrees with a general-purpose library on a matrix of 90 rows, whose pivots must be looked for", () => {
    const size = 90;
    const matrix = Float64Array.from({ length: size * size }, (_, i) => (Math.sin(i + 1) * 43758.5) % 1);
    const sides = filled(size * 5, 8);
    const factors = factorise(Float64Array.from(matrix), size);
    const ours = factors && solveFactored(factors, sides, 5);
    const theirs = solve(Matrix.from1DArray(size, size, matrix), Matrix.from1DArray(size, 5, sides)).to1DArray();
    const largest = Math.max(...theirs.map(Math.abs));
    theirs.forEach((value, i) => {
      expect(Math.abs((ours?.[i] ?? Number.NaN) - value)).toBeLessThan(1e-10 * largest);
    });
    expect(factors?.order.some((row, i) => row !== i)).toBe(true);
  });
  test("exchanges rows where a pivot is 0", () => {
    const factors = factorise(Float64Array.from([0, 2, 3, 0]), 2);
    expect(factors && [...solveFactored(factors, Float64Array.from([4, 9]), 1)]).toEqual([3, 2]);
  });
  test("has no answer for a singular matrix, nor for one that is not finite", () => {
    expect(factorise(Float64Array.from([1, 2, 2, 4]), 2)).toBe(null);
    expect(factorise(Float64Array.from([1, Number.NaN, 2, 4]), 2)).toBe(null);
  });
});
