import fc from "fast-check";
import { expect, test } from "vitest";
import { mostPages, overlap, pagesOf } from "../../../src/views/sheets/pages.ts";
import { paperNames, paperOf } from "../../../src/views/sheets/paper.ts";
import type { Part } from "../../../src/views/sheets/parts.ts";

const part = (name: string, width: number, height: number): Part => ({
  ...{ name, thickness: 2, width, height },
  strokes: [],
  labels: [],
});
const sizes = fc.record({
  width: fc.double({ min: 2, max: 700, noNaN: true }),
  height: fc.integer({ min: 2, max: 500 }),
});
const papers = fc.record({
  paper: fc.constantFrom(...paperNames),
  lies: fc.constantFrom("upright" as const, "across" as const),
});

test("papers have the sizes of ISO 216 and ANSI/ASME Y14.1, and lie either way", () => {
  // ISO 216:2007 table 1: A4 210 mm by 297 mm, A3 297 mm by 420 mm. ANSI/ASME Y14.1 size A: 8.5 in by 11 in.
  expect([paperOf({}).width, paperOf({}).height]).toEqual([210, 297]);
  const across = paperOf({ paper: "A3", lies: "across" });
  expect([across.width, across.height]).toEqual([420, 297]);
  expect(paperOf({ paper: "Letter" }).width).toBeCloseTo(8.5 * 25.4, 9);
  expect(paperOf({ paper: "Letter" }).height).toBeCloseTo(11 * 25.4, 9);
});

test("whatever the parts, each that fits stands whole on one page, clear of the others and of the edge", () => {
  fc.assert(
    fc.property(papers, fc.array(sizes, { minLength: 1, maxLength: 14 }), (how, all) => {
      const paper = paperOf(how);
      const { area } = paper;
      const parts = all.map(({ width, height }, i) => part(`p${i}`, width, height));
      const pages = pagesOf(parts, paper);
      if (!pages) return;
      expect(pages.length).toBeLessThanOrEqual(mostPages);
      const shown = pages.flatMap(({ placed }) => placed.map(({ part: { name } }) => name));
      for (const { name } of parts) expect(shown).toContain(name);
      for (const { placed, piece } of pages) {
        if (piece) continue;
        placed.forEach((one, index) => {
          expect(one.x).toBeGreaterThan(0);
          expect(one.y).toBeGreaterThan(0);
          expect(one.x + one.part.width).toBeLessThan(area.width);
          expect(one.y + one.part.height).toBeLessThan(area.height);
          for (const other of placed.slice(index + 1)) {
            const apart =
              one.x + one.part.width < other.x ||
              other.x + other.part.width < one.x ||
              one.y + one.part.height < other.y ||
              other.y + other.part.height < one.y;
            expect(apart).toBe(true);
          }
        });
      }
      const whole = pages.filter(({ piece }) => !piece).flatMap(({ placed }) => placed.map((each) => each.part.name));
      expect(new Set(whole).size).toBe(whole.length);
    }),
    { seed: 11, numRuns: 300 },
  );
});

test("the pages of a part too large for one show all of it, and two neighbours the same over the overlap", () => {
  fc.assert(
    fc.property(papers, sizes, (how, { width, height }) => {
      const paper = paperOf(how);
      const { area } = paper;
      const pages = pagesOf([part("large", width, height)], paper);
      if (!pages || pages.length === 1) return;
      // What a page shows of the part, in the part's own frame.
      const windows = pages.map(({ placed: [at], piece }) => ({
        left: -(at?.x ?? 0),
        below: -(at?.y ?? 0),
        piece,
      }));
      const lefts = windows.map(({ left }) => left);
      const belows = windows.map(({ below }) => below);
      expect(Math.min(...lefts)).toBeLessThan(0);
      expect(Math.max(...lefts) + area.width).toBeGreaterThan(width);
      expect(Math.min(...belows)).toBeLessThan(0);
      expect(Math.max(...belows) + area.height).toBeGreaterThan(height);
      for (const { left, below, piece } of windows) {
        const next = windows.find(
          (each) => each.piece?.column === (piece?.column ?? 0) + 1 && each.piece.row === piece?.row,
        );
        if (next) expect(left + area.width - next.left).toBeCloseTo(overlap, 9);
        const above = windows.find(
          (each) => each.piece?.row === (piece?.row ?? 0) + 1 && each.piece.column === piece?.column,
        );
        if (above) expect(below + area.height - above.below).toBeCloseTo(overlap, 9);
      }
    }),
    { seed: 12, numRuns: 300 },
  );
});

test("long parts share their pages, each of them whole over all of these and clear of the others", () => {
  const paper = paperOf({ lies: "across" });
  const pages = pagesOf([part("front rail", 480, 62), part("rear rail", 460, 61), part("base", 500, 78)], paper) ?? [];
  // The area is 168 mm high: both rails on two pages, the base on two of its own.
  expect(pages.map(({ placed }) => placed.map(({ part: { name } }) => name))).toEqual([
    ["front rail", "rear rail"],
    ["front rail", "rear rail"],
    ["base"],
    ["base"],
  ]);
  const [left, right] = pages;
  const [front, rear] = left?.placed ?? [];
  expect((rear?.y ?? 0) - (front?.y ?? 0) - 62).toBeGreaterThan(3);
  expect((rear?.y ?? 0) + 61).toBeLessThan(paper.area.height);
  left?.placed.forEach(({ part: { width }, x, y }, index) => {
    const other = right?.placed[index];
    expect(other?.y).toBe(y);
    expect(x - (other?.x ?? 0)).toBeCloseTo(paper.area.width - overlap, 9);
    expect((other?.x ?? 0) + width).toBeLessThan(paper.area.width);
  });
});

test("what would take too many pages is refused, not cut short", () => {
  expect(pagesOf([part("barn door", 5000, 5000)], paperOf({}))).toBe(null);
  const many = Array.from({ length: 80 }, (_, i) => part(`p${i}`, 150, 200));
  expect(pagesOf(many, paperOf({}))).toBe(null);
});
