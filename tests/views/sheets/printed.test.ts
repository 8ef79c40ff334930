import { expect, test } from "vitest";
import { words } from "../../../src/views/sheet-cell-words.ts";
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

const changed = { written: [], gone: [] };

test("another size, another line within the same size, a new part and one that is gone are told, then and now", () => {
  const printed = printedNow([part("left", 100), part("right", 100), part("fin", 50)], "2026-11-25");
  expect(movedSince(printed, [part("left", 102), part("right", 100, 12), part("tail", 60)])).toEqual([
    { part: "left", before: "100.0 × 40.0 × 2 mm", now: "102.0 × 40.0 × 2 mm", ...changed },
    { part: "right", before: "100.0 × 40.0 × 2 mm", now: "100.0 × 40.0 × 2 mm", ...changed },
    { part: "tail", before: null, now: "60.0 × 40.0 × 2 mm", ...changed },
    { part: "fin", before: "50.0 × 40.0 × 2 mm", now: null, ...changed },
  ]);
});

test("a part whose outline stays but whose wood or bevel changes is told of", () => {
  const bevelled = (bevel: string, thickness: number): Part => ({
    ...part("left", 100),
    thickness,
    labels: [`left, ${thickness} mm`, bevel].map((text) => ({ text, at: [50, 20], angle: 0, size: 3 })),
  });
  const printed = printedNow([bevelled("bevel 3 deg above", 2)], "2026-11-25");
  expect(movedSince(printed, [bevelled("bevel 3 deg above", 2)])).toEqual([]);
  const thicker = movedSince(printed, [bevelled("bevel 3 deg above", 2.4)]);
  expect(thicker.map(words.moved)).toEqual(["left: was 100.0 × 40.0 × 2 mm, is 100.0 × 40.0 × 2.4 mm"]);
  const steeper = movedSince(printed, [bevelled("bevel 4 deg above", 2)]);
  expect(steeper.map(words.moved)).toEqual([
    "left (100.0 × 40.0 × 2 mm); it said “bevel 3 deg above”; now it says “bevel 4 deg above”",
  ]);
});
