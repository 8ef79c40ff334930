import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contourLines, type Grid, regionAbove } from "../../../src/views/charts/contours.ts";
import type { Point } from "../../../src/views/drawings/geometry.ts";

const gridOf = (columns: number, rows: number, height: (x: number, y: number) => number | null): Grid => ({
  columns,
  rows,
  heights: Array.from({ length: columns * rows }, (_, place) => height(place % columns, Math.floor(place / columns))),
});
const areaOf = (outlines: readonly (readonly Point[])[]): number =>
  Math.abs(
    outlines
      .flatMap((outline) =>
        outline.map(({ x, y }, index) => {
          const next = outline[(index + 1) % outline.length] as Point;
          return (x * next.y - next.x * y) / 2;
        }),
      )
      .reduce((sum, each) => sum + each, 0),
  );

describe("contour lines", () => {
  it("of a plane lie exactly where the plane has that height, from edge to edge", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 2, noNaN: true }),
        fc.double({ min: -2, max: 2, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (a, b, share) => {
          fc.pre(Math.abs(a) + Math.abs(b) > 0.1);
          const height = (x: number, y: number) => a * x + b * y;
          const corners = [height(0, 0), height(6, 0), height(0, 4), height(6, 4)];
          const level = Math.min(...corners) + share * (Math.max(...corners) - Math.min(...corners));
          const lines = contourLines(gridOf(7, 5, height), level);
          for (const { x, y } of lines.flat()) {
            expect(height(x, y)).toBeCloseTo(level, 9);
            expect(x >= 0 && x <= 6 && y >= 0 && y <= 4).toBe(true);
          }
          expect(lines).toHaveLength(1);
        },
      ),
      { seed: 5, numRuns: 100 },
    );
  });
  it("of a round hill close, and come out as round as the grid allows", () => {
    const [ring = [], ...more] = contourLines(
      gridOf(41, 41, (x, y) => -Math.hypot(x - 20, y - 20)),
      -12,
    );
    expect(more).toEqual([]);
    expect(ring[0]).toEqual(ring.at(-1));
    for (const { x, y } of ring) expect(Math.abs(Math.hypot(x - 20, y - 20) - 12)).toBeLessThan(0.02);
  });
  it("stop at a gap, and nothing is drawn along it or along the edge", () => {
    const lines = contourLines(
      gridOf(7, 5, (x, y) => (x === 3 && y === 2 ? null : y)),
      1.5,
    );
    const across = lines.map((line) => line.map(({ x }) => x).sort((a, b) => a - b));
    expect(across.sort(([a = 0], [b = 0]) => a - b)).toEqual([
      [0, 1, 2],
      [4, 5, 6],
    ]);
    for (const { y } of lines.flat()) expect(y).toBeCloseTo(1.5, 9);
  });
  it("are none where all heights are missing", () =>
    expect(
      contourLines(
        gridOf(4, 4, () => null),
        1,
      ),
    ).toEqual([]));
});

describe("the region above a height", () => {
  it("of a plane has the area that lies above, up to the edges of the grid", () => {
    expect(
      areaOf(
        regionAbove(
          gridOf(7, 5, (x) => x),
          2.25,
        ),
      ),
    ).toBeCloseTo((6 - 2.25) * 4, 9);
  });
  it("has holes where it is lower", () => {
    const grid = gridOf(9, 9, (x, y) => (x === 4 && y === 4 ? -1 : 1));
    expect(areaOf(regionAbove(grid, 0))).toBeCloseTo(64 - 2 * 0.5 * 0.5, 9);
  });
  it("leaves gaps out", () => {
    const whole = areaOf(
      regionAbove(
        gridOf(5, 5, () => 1),
        0,
      ),
    );
    expect(whole).toBeCloseTo(16, 9);
    expect(
      areaOf(
        regionAbove(
          gridOf(5, 5, (x) => (x === 4 ? null : 1)),
          0,
        ),
      ),
    ).toBeCloseTo(12, 9);
  });
});
