import { expect, test } from "vitest";
import type { Part } from "../../../src/views/sheets/parts.ts";
import { movedSince, printedNow } from "../../../src/views/sheets/printed.ts";

const part = (name: string, width: number, slot = 10): Part => ({
  ...{ name, thickness: 2, width, height: 40 },
  strokes: [
    {
      layer: "cut",
      points: [
        [0, 0],
        [width, 0],
        [width, 40],
        [0, 40],
        [0, 0],
      ],
    },
    {
      layer: "score",
      points: [
        [slot, 0],
        [slot, 40],
      ],
    },
  ],
  labels: [],
});

test("a part that is still as it was printed is not told of", () => {
  const printed = printedNow([part("left", 100), part("right", 100)], "2026-11-25");
  expect(movedSince(printed, [part("right", 100), part("left", 100)])).toEqual([]);
  // Less than paper shows.
  expect(movedSince(printed, [part("right", 100.001), part("left", 100)])).toEqual([]);
});

test("another size, another line within the same size, a new part and one that is gone are told, then and now", () => {
  const printed = printedNow([part("left", 100), part("right", 100), part("fin", 50)], "2026-11-25");
  expect(movedSince(printed, [part("left", 102), part("right", 100, 12), part("tail", 60)])).toEqual([
    { part: "left", before: "100.0 × 40.0 mm", now: "102.0 × 40.0 mm" },
    { part: "right", before: "100.0 × 40.0 mm", now: "100.0 × 40.0 mm" },
    { part: "tail", before: null, now: "60.0 × 40.0 mm" },
    { part: "fin", before: "50.0 × 40.0 mm", now: null },
  ]);
});
