import fc from "fast-check";
import { expect, test } from "vitest";
import { inverse } from "../../../src/library/numerics/inverse.ts";

test("a matrix times its inverse is one", () => {
  const entry = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(fc.array(entry, { minLength: 25, maxLength: 25 }), (entries) => {
      const matrix = Float64Array.from(entries);
      for (let i = 0; i < 5; i++) matrix[i * 6] = (matrix[i * 6] as number) + 17;
      const other = inverse(matrix, 5);
      for (let i = 0; i < 5; i++) {
        for (let j = 0; j < 5; j++) {
          let sum = 0;
          for (let k = 0; k < 5; k++) sum += (matrix[i * 5 + k] as number) * (other[k * 5 + j] as number);
          expect(sum).toBeCloseTo(i === j ? 1 : 0, 12);
        }
      }
    }),
    { seed: 3, numRuns: 100 },
  );
});

test("rows are exchanged where a pivot is zero", () => {
  expect([...inverse(Float64Array.from([0, 2, 4, 0]), 2)]).toEqual([0, 0.25, 0.5, 0]);
});

test("a singular matrix is refused", () => {
  expect(() => inverse(Float64Array.from([1, 2, 2, 4]), 2)).toThrow("singular");
});
