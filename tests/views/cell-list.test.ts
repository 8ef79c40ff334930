import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { divide } from "../../src/views/cell-list.ts";

const none = -1;

describe("the stretches that cells belong to", () => {
  test("are cut by number where all are new", () => {
    expect(divide(Array(7).fill(none), 3)).toEqual([0, 0, 0, 1, 1, 1, 2]);
    expect(divide(Array(6).fill(none), 3)).toEqual([0, 0, 0, 0, 0, 0]);
  });
  test("stay, and a new cell goes with the one before it", () => {
    expect(divide([0, 0, none, 1, 1, none, 2], 3)).toEqual([0, 0, 0, 1, 1, 1, 2]);
    expect(divide([none, 0, 0, 1], 3)).toEqual([0, 0, 0, 1]);
  });
  test("take in a cell that comes from elsewhere, and no others move for it", () => {
    expect(divide([0, 2, 0, 1, 1, 2], 3)).toEqual([0, 0, 0, 1, 1, 2]);
    expect(divide([0, 1, 1, 2, 2, 0], 3)).toEqual([0, 1, 1, 2, 2, 2]);
  });
  test("that lose all their cells are left out", () => expect(divide([0, 2, 2], 3)).toEqual([0, 2, 2]));
  test("rise along the page and never grow too long, whatever was done", () => {
    const homes = fc.array(fc.integer({ min: -1, max: 5 }), { maxLength: 40 });
    fc.assert(
      fc.property(homes, (before) => {
        const parts = divide(before, 4);
        expect(parts).toEqual(parts.toSorted((a, b) => a - b));
        for (const part of parts) expect(parts.filter((each) => each === part).length).toBeLessThanOrEqual(8);
      }),
      { seed: 31 },
    );
  });
});
