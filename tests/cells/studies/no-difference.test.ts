import { describe, expect, test } from "vitest";
import { bandOf, differenceOf } from "../../../src/cells/studies/no-difference.ts";

describe("a difference of two results", () => {
  test("is seen where it is larger than their bands together, which add in squares", () => {
    expect(differenceOf(10, 10.4, 0.3)).toMatchObject({
      size: expect.closeTo(0.4, 12),
      share: expect.closeTo(0.04, 12),
      isSeen: false,
    });
    expect(differenceOf(10, 10.4, 0.3).band).toBeCloseTo(0.3 * Math.SQRT2, 12);
    expect(differenceOf(10, 10.43, 0.3).isSeen).toBe(true);
    expect(differenceOf(10, 9.4, 0.3, 0.4)).toMatchObject({ band: 0.5, isSeen: true });
  });

  test("without a band is seen wherever there is one, but for rounding", () => {
    expect(differenceOf(1, 1.001, null)).toMatchObject({ band: null, isSeen: true });
    expect(differenceOf(0.3, 0.1 + 0.2, null).isSeen).toBe(false);
    expect(differenceOf(0, 0, null)).toMatchObject({ share: null, isSeen: false });
    expect(differenceOf(10, 11, 0.3, null).isSeen).toBe(true);
  });
});

describe("the band of a result", () => {
  test("is twice the combined standard uncertainty of its inputs", () => {
    const shares = [
      { derivative: 2, plusMinus: 0.3, law: "uniform" as const },
      { derivative: -1, plusMinus: 0.5, law: "normal" as const },
      { derivative: 4, plusMinus: 0.1, law: "triangular" as const },
      { derivative: 7, plusMinus: null },
    ];
    expect(bandOf(shares)).toBeCloseTo(2 * Math.sqrt(0.6 ** 2 / 3 + 0.25 ** 2 + 0.4 ** 2 / 6), 12);
  });

  test("is not known where a derivative is missing", () => {
    expect(bandOf([{ derivative: null, plusMinus: 1 }])).toBeNull();
    expect(bandOf([])).toBe(0);
  });
});
