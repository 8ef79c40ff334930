import { expect, test } from "vitest";
import { drawnLines } from "../../../src/views/sheets/drawn-lines.ts";
import type { Part, Point } from "../../../src/views/sheets/parts.ts";

const part = (...scores: (readonly Point[])[]): Part => ({
  ...{ name: "right 1", thickness: 3, width: 100, height: 60, labels: [] },
  strokes: [
    {
      layer: "cut",
      points: [
        [0, 0],
        [100, 0],
        [95, 60],
        [0, 60],
        [0, 0],
      ],
    },
    ...scores.map((points) => ({ layer: "score" as const, points })),
  ],
});
const kept = (...scores: (readonly Point[])[]) =>
  drawnLines(part(...scores))
    .strokes.slice(1)
    .map(({ points }) => points);

test("a scored line that cannot be told from the cut beside it is left out, one farther off stays", () => {
  const hair: Point[] = [
    [99.8, 0.1],
    [94.8, 59.9],
  ];
  const bevel: Point[] = [
    [99.2, 0],
    [94.2, 60],
  ];
  expect(kept(hair, bevel)).toEqual([bevel]);
});

test("a scored line that only meets the edge stays", () => {
  const across: Point[] = [
    [50, 0],
    [50, 60],
  ];
  const slanting: Point[] = [
    [0.1, 0],
    [3, 60],
  ];
  expect(kept(across, slanting)).toEqual([across, slanting]);
});
