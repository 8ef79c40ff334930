import fc from "fast-check";
import { expect, test } from "vitest";
import { crosses, type Line, meet } from "../../../src/views/drawings/geometry.ts";
import { boxAround, indexLines } from "../../../src/views/drawings/line-index.ts";

const sheet = { left: 10, top: 5, right: 230, bottom: 140 };
const at = fc.integer({ min: -60, max: 300 });
const anyLine: fc.Arbitrary<Line> = fc
  .tuple(at, at, at, at)
  .map(([a, b, c, d]) => ({ from: { x: a, y: b }, to: { x: c, y: d } }));

test("finds whatever a walk over all lines finds, on the sheet and beyond its edges", () => {
  fc.assert(
    fc.property(fc.array(anyLine, { maxLength: 20 }), anyLine, (lines, probe) => {
      const index = indexLines(lines, sheet);
      const box = boxAround(probe);
      expect(index.some(box, (line) => crosses(line, box))).toBe(lines.some((line) => crosses(line, box)));
      expect(index.some(box, (line) => meet(line, probe))).toBe(lines.some((line) => meet(line, probe)));
    }),
    { seed: 8, numRuns: 500 },
  );
});

test("asks of lines nearby only", () => {
  const far: Line = { from: { x: 200, y: 130 }, to: { x: 210, y: 135 } };
  const asked: Line[] = [];
  indexLines([far], sheet).some({ left: 10, top: 5, right: 30, bottom: 20 }, (line) => asked.push(line) > 0);
  expect(asked).toEqual([]);
});
