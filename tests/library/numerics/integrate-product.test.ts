import fc from "fast-check";
import { expect, test } from "vitest";
import { integrateProduct } from "../../../src/library/numerics/integrate-product.ts";
import { runs } from "../panel-arbitraries.ts";

const value = fc.double({ min: -5, max: 5, noNaN: true });

test("the integral of a product of two lines is what Simpson's rule gives, which is exact for it", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 3, noNaN: true }), value, value, value, value, (width, a1, a2, b1, b2) => {
      const middle = ((a1 + a2) / 2) * ((b1 + b2) / 2);
      expect(integrateProduct(width, a1, a2, b1, b2)).toBeCloseTo((width / 6) * (a1 * b1 + 4 * middle + a2 * b2), 10);
    }),
    runs,
  );
});
