import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addBlockProduct } from "../../../src/library/numerics/block-product.ts";
import { runs } from "../panel-arbitraries.ts";

const filled = (length: number, seed: number) => Float64Array.from({ length }, (_, i) => Math.sin(i * 7.3 + seed));

describe("the product of two lists of rows, four columns of each", () => {
  test("is added to what stands there, for any strides, starts, counts and weights", () => {
    const room = fc.record({ start: fc.integer({ min: 0, max: 5 }), stride: fc.integer({ min: 4, max: 9 }) });
    fc.assert(
      fc.property(
        room,
        room,
        fc.integer({ min: 0, max: 12 }),
        fc.integer({ min: -3, max: 3 }),
        (a, b, count, weight) => {
          const left = filled(a.start + a.stride * count, 1);
          const right = filled(b.start + b.stride * count, 2);
          const into = filled(40, 3);
          const before = into.slice();
          addBlockProduct({ numbers: left, ...a }, { numbers: right, ...b }, count, weight, {
            numbers: into,
            start: 2,
            stride: 6,
          });
          const wanted = before.slice();
          for (let k = 0; k < 4; k++) {
            for (let l = 0; l < 4; l++) {
              for (let row = 0; row < count; row++) {
                const product = (left[a.start + row * a.stride + k] ?? 0) * (right[b.start + row * b.stride + l] ?? 0);
                wanted[2 + 6 * k + l] = (wanted[2 + 6 * k + l] ?? 0) + weight * product;
              }
            }
          }
          into.forEach((value, i) => {
            expect(value).toBeCloseTo(wanted[i] ?? Number.NaN, 12);
          });
        },
      ),
      runs,
    );
  });
});
