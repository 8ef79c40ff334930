import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crosses, grow, type Line, meet, overlap, within } from "../../../src/views/drawings/geometry.ts";

const box = { left: 10, top: 20, right: 30, bottom: 40 };
const line = (x1: number, y1: number, x2: number, y2: number): Line => ({
  from: { x: x1, y: y1 },
  to: { x: x2, y: y2 },
});
const coordinate = fc.integer({ min: 0, max: 50 });
const anyLine = fc.tuple(coordinate, coordinate, coordinate, coordinate).map((ends) => line(...ends));
/** Many points along a line. */
const along = ({ from, to }: Line) =>
  Array.from({ length: 401 }, (_, step) => ({
    x: from.x + ((to.x - from.x) * step) / 400,
    y: from.y + ((to.y - from.y) * step) / 400,
  }));

describe("a line and a box", () => {
  it("cross where it runs through, ends inside or lies inside", () => {
    expect(crosses(line(0, 30, 50, 30), box)).toBe(true);
    expect(crosses(line(0, 0, 20, 30), box)).toBe(true);
    expect(crosses(line(15, 25, 20, 30), box)).toBe(true);
    expect(crosses(line(0, 30, 24, 0), box)).toBe(false);
    expect(crosses(line(0, 0, 50, 10), box)).toBe(false);
  });
  it("cross wherever a point of the line is in the box", () => {
    fc.assert(
      fc.property(anyLine, (each) => {
        const inside = along(each).some(({ x, y }) => x > 10.01 && x < 29.99 && y > 20.01 && y < 39.99);
        if (inside) expect(crosses(each, box)).toBe(true);
        const near = along(each).some(({ x, y }) => x > 9.8 && x < 30.2 && y > 19.8 && y < 40.2);
        if (!near) expect(crosses(each, box)).toBe(false);
      }),
      { seed: 31, numRuns: 1000 },
    );
  });
});

describe("two lines", () => {
  it("meet where they cross or touch, whichever comes first", () => {
    expect(meet(line(0, 0, 10, 10), line(0, 10, 10, 0))).toBe(true);
    expect(meet(line(0, 0, 10, 10), line(10, 10, 20, 0))).toBe(true);
    expect(meet(line(0, 0, 10, 10), line(6, 5, 20, 5))).toBe(false);
    fc.assert(
      fc.property(anyLine, anyLine, (a, b) => meet(a, b) === meet(b, a)),
      { seed: 32 },
    );
  });
});

describe("two boxes", () => {
  it("overlap by more than an edge, and lie within each other with it", () => {
    expect(overlap(box, { left: 30, top: 20, right: 40, bottom: 40 })).toBe(false);
    expect(overlap(grow(box, 1), { left: 30, top: 20, right: 40, bottom: 40 })).toBe(true);
    expect(within(box, box)).toBe(true);
    expect(within(grow(box, 1), box)).toBe(false);
  });
});
