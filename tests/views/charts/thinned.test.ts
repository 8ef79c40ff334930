import { describe, expect, it } from "vitest";
import { thinned } from "../../../src/views/charts/thinned.ts";

const wave = Array.from({ length: 500 }, (_, x) => ({ x, y: 40 * Math.sin(x / 30) }));

describe("a line that is thinned", () => {
  it("keeps its ends and corners, and nothing that lies straight between", () => {
    const corner = [0, 1, 2, 3, 4].map((x) => ({ x, y: Math.max(0, x - 2) }));
    expect(thinned(corner)).toEqual([corner[0], corner[2], corner[4]]);
  });
  it("stays within what was asked of every point left out", () => {
    const kept = thinned(wave, 0.2);
    expect(kept.length).toBeLessThan(120);
    for (const { x, y } of wave) {
      const next = kept.findIndex((each) => each.x >= x);
      const [a, b] = [kept[Math.max(0, next - 1)] ?? { x, y }, kept[next] ?? { x, y }];
      const between = a.x === b.x ? a.y : a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x);
      expect(Math.abs(between - y)).toBeLessThan(0.5);
    }
  });
  it("is as it was where it has hardly a point, or turns back on itself", () => {
    expect(thinned([])).toEqual([]);
    expect(thinned([{ x: 1, y: 2 }])).toEqual([{ x: 1, y: 2 }]);
    const loop = [0, 1, 0].map((x) => ({ x, y: 0 }));
    expect(thinned(loop)).toEqual(loop);
  });
});
