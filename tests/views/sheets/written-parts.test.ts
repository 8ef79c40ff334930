import { expect, test } from "vitest";
import { compile, readNotebook, runPlan, type SheetCell } from "../../../src/cells/index.ts";
import { functions } from "../../../src/library/index.ts";
import type { Label, Part, Point } from "../../../src/views/sheets/parts.ts";
import { makeSheet } from "../../../src/views/sheets/sheet-file.ts";
import { writtenParts } from "../../../src/views/sheets/written-parts.ts";
import { blanksNotebook } from "./blanks-notebook.ts";

/** Parts as they stand on the sheet of a formula of the wing. */
function partsOf(formula: string): readonly Part[] {
  const notebook = readNotebook(blanksNotebook().replace("wing_blanks(main_wing)", formula));
  const cell = notebook.cells.find(({ kind }) => kind === "sheet") as SheetCell;
  const result = runPlan(compile(notebook.cells, functions)).get(cell.id);
  if (!result?.ok) throw new Error(result?.error.message ?? "got no result");
  const made = makeSheet(cell, result, { title: "", notebook: "", trial: null, date: "" });
  if (typeof made === "string") throw new Error(made);
  return made.parts;
}

/** True where a point lies in the words, which are taken for half as wide a letter as it is high. */
function isOn({ text, at, angle, size }: Label, [x, y]: Point): boolean {
  const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  const along = (x - at[0]) * cos + (y - at[1]) * sin;
  const up = (y - at[1]) * cos - (x - at[0]) * sin;
  return Math.abs(along) < text.length * 0.25 * size && Math.abs(up) < size / 2;
}

/** Places along all lines of a part, a quarter of a millimetre apart. */
const inked = ({ strokes }: Part): Point[] =>
  strokes.flatMap(({ points }) =>
    points.slice(1).flatMap(([x, y], index) => {
      const [fromX, fromY] = points[index] as Point;
      const count = Math.ceil(Math.hypot(x - fromX, y - fromY) * 4) + 1;
      return Array.from({ length: count + 1 }, (_, i): Point => {
        const share = i / count;
        return [fromX + share * (x - fromX), fromY + share * (y - fromY)];
      });
    }),
  );

test.each([
  ["wing_blanks(main_wing)", 4],
  ["wing_jig(main_wing)", 8],
  ["section_templates(main_wing)", 4],
  ["nested_sheets(wing_blanks(main_wing).pattern)", 1],
])("no words of %s lie across a line or other words, and each part has its name on it", (formula, count) => {
  const parts = partsOf(formula);
  expect(parts.length).toBeGreaterThanOrEqual(count);
  for (const part of parts) {
    const ink = inked(part);
    for (const label of part.labels) {
      expect([part.name, label.text, ink.filter((point) => isOn(label, point))]).toEqual([part.name, label.text, []]);
      for (const other of part.labels) {
        if (other !== label)
          expect([label.text, other.text, isOn(label, other.at)]).toEqual([label.text, other.text, false]);
      }
    }
    expect(part.labels.some(({ text }) => text.includes(part.name))).toBe(true);
  }
});

test("a blank says how thick its sheet is", () => {
  const words = partsOf("wing_blanks(main_wing)").flatMap(({ labels }) => labels.map(({ text }) => text));
  expect(words).toContain("right 1, 2 mm");
  expect(words).toContain("left 2, 2 mm");
});

const square = (labels: readonly Label[], size = 60): Part => ({
  ...{ name: "square", thickness: 3, width: size, height: size, labels },
  strokes: [
    {
      layer: "cut",
      points: [
        [0, 0],
        [size, 0],
        [size, size],
        [0, size],
        [0, 0],
      ],
    },
    {
      layer: "score",
      points: [
        [size / 2, 0],
        [size / 2, size],
      ],
    },
  ],
});

test("words on a scored line move beside it and keep their size, words that stand well stay", () => {
  const free: Label = { text: "square", at: [45, 30], angle: 0, size: 3 };
  const [part] = writtenParts([square([{ text: "fold", at: [30, 10], angle: 0, size: 3 }, free])]);
  const [fold, name] = part?.labels ?? [];
  expect(fold?.size).toBe(3);
  expect(Math.abs((fold?.at[0] ?? 0) - 30)).toBeGreaterThan(3);
  expect(Math.hypot((fold?.at[0] ?? 0) - 30, (fold?.at[1] ?? 0) - 10)).toBeLessThan(8);
  expect(name).toEqual({ ...free, text: "square, 3 mm" });
});

test("on a part too small for its words they become smaller, and what finds no room at all is not lost", () => {
  const [small] = writtenParts([square([{ text: "fold", at: [7, 7], angle: 0, size: 4 }], 14)]);
  expect(small?.labels[0]?.size).toBeLessThan(4);
  const [tiny] = writtenParts([square([{ text: "fold here", at: [2, 2], angle: 0, size: 4 }], 4)]);
  expect(tiny?.labels).toEqual([{ text: "fold here", at: [2, 2], angle: 0, size: 4 }]);
});
