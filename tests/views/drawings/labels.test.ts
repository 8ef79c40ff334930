import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crosses, type Line, overlap, within } from "../../../src/views/drawings/geometry.ts";
import { type Label, placeLabels } from "../../../src/views/drawings/labels.ts";

/** Every character 6 px wide, so that places can be told by hand: a text of 12 px has figures 8.64 + 0.24 px high. */
const measure = (text: string) => 6 * text.length;
const sheet = { left: 0, top: 0, right: 200, bottom: 100 };
const label = (at: Label["at"], more: Partial<Label> = {}): Label => ({
  text: "12",
  class: "figure",
  size: 12,
  weight: 400,
  at,
  ...more,
});
const place = (labels: readonly Label[], lines: readonly Line[] = [], boxes: readonly (typeof sheet)[] = []) =>
  placeLabels(labels, { sheet, lines, boxes, measure });
const line = (x1: number, y1: number, x2: number, y2: number): Line => ({
  from: { x: x1, y: y1 },
  to: { x: x2, y: y2 },
});

describe("a label", () => {
  it("stands above its point, in the middle, where nothing is in its way", () => {
    const [found] = place([label({ x: 100, y: 50 })]).placed;
    expect(found?.box.left).toBe(94);
    expect(found?.box.bottom).toBeCloseTo(44, 9);
    expect(found?.leader).toBeNull();
  });
  it("takes the next of the four places where a line is in its way", () => {
    const above = line(0, 40, 200, 40);
    expect(place([label({ x: 100, y: 50 })], [above]).placed[0]?.box.top).toBe(56);
    const below = line(0, 60, 200, 60);
    expect(place([label({ x: 100, y: 50 })], [above, below]).placed[0]?.box.left).toBe(106);
    const right = line(110, 0, 110, 100);
    expect(place([label({ x: 100, y: 50 })], [above, below, right]).placed[0]?.box.right).toBe(94);
  });
  it("stands off with a leader where all four are taken", () => {
    const around = [line(0, 40, 200, 40), line(0, 60, 200, 60), line(88, 45, 88, 55), line(112, 45, 112, 55)];
    const [found] = place([label({ x: 100, y: 50 })], around).placed;
    expect(found?.leader).not.toBeNull();
    expect(found?.isOverLine).toBe(true);
  });
  it("slides along the edge of the sheet but stays over its point", () => {
    expect(place([label({ x: 4, y: 50 }, { text: "12345" })]).placed[0]?.box.left).toBe(0);
  });
  it("stands square off a slope where it is told a direction, as far as its size asks", () => {
    const up = { x: -Math.SQRT1_2, y: -Math.SQRT1_2 };
    const slope = line(60, 90, 140, 10);
    const [found] = place([label({ x: 100, y: 50 }, { places: [up] })], [slope]).placed;
    expect(found?.leader).toBeNull();
    expect(found && crosses(slope, found.box)).toBe(false);
  });
  it("tries other points before it takes a leader", () => {
    const box = { left: 80, top: 20, right: 120, bottom: 80 };
    const [found] = place([label({ x: 100, y: 50 }, { elsewhere: [{ x: 160, y: 50 }] })], [], [box]).placed;
    expect(found?.box.left).toBe(154);
  });
  it("is left out where it may have no leader, or where the sheet is full", () => {
    const box = { left: 80, top: 20, right: 120, bottom: 80 };
    const alone = label({ x: 100, y: 50 }, { leader: false });
    expect(place([alone], [], [box]).leftOut).toEqual([alone]);
    const full = label({ x: 100, y: 50 });
    expect(place([full], [], [sheet]).leftOut).toEqual([full]);
  });
});

describe("labels together", () => {
  const coordinate = (most: number) => fc.double({ min: 0, max: most, noNaN: true });
  const anyLabel = fc
    .tuple(coordinate(200), coordinate(100), fc.integer({ min: 1, max: 8 }))
    .map(([x, y, length]) => label({ x, y }, { text: "8".repeat(length) }));
  const anyLine = fc
    .tuple(coordinate(200), coordinate(100), coordinate(200), coordinate(100))
    .map(([x1, y1, x2, y2]) => line(x1, y1, x2, y2));

  it("never touch a line, each other, another's leader or the edge, and are all accounted for", () => {
    fc.assert(
      fc.property(fc.array(anyLabel, { maxLength: 12 }), fc.array(anyLine, { maxLength: 12 }), (labels, lines) => {
        const { placed, leftOut } = place(labels, lines);
        expect(placed.length + leftOut.length).toBe(labels.length);
        placed.forEach(({ box }, index) => {
          expect(within(box, sheet)).toBe(true);
          expect(lines.some((each) => crosses(each, box))).toBe(false);
          for (const [at, other] of placed.entries()) {
            if (at === index) continue;
            expect(overlap(box, other.box)).toBe(false);
            expect(other.leader !== null && crosses(other.leader, box)).toBe(false);
          }
        });
      }),
      { seed: 21, numRuns: 400 },
    );
  });
});
