import { describe, expect, test } from "vitest";
import { type NestedSheets, nestedSheets } from "../../../src/library/build/nested-sheets.ts";
import { type WingBlanks, wingBlanks } from "../../../src/library/build/wing-blanks.ts";
import { call } from "../call.ts";
import { ploverWing } from "../plover.ts";
import { areaOf, strokesOf } from "./strokes.ts";

const { pattern } = call(wingBlanks, { wing: ploverWing }) as WingBlanks;
const nest = (given: Record<string, unknown> = {}) => call(nestedSheets, { pattern, ...given }) as NestedSheets;

describe("parts on sheets", () => {
  test("lie within them, apart from each other, on wood of their thickness", () => {
    const { sheets, places } = nest({ gap: 0.003, rim: 0.001 });
    expect(sheets.thickness).toEqual([0.0032, 0.0024, 0.002]);
    const boxes = places.part.map((part, i) => {
      const at = pattern.parts.part.indexOf(part);
      const [x, y] = [places.x[i] ?? 0, places.y[i] ?? 0];
      return {
        sheet: places.sheet[i],
        x,
        y,
        right: x + (pattern.parts.width[at] ?? 0),
        top: y + (pattern.parts.height[at] ?? 0),
      };
    });
    expect(boxes).toHaveLength(6);
    for (const a of boxes) {
      expect(a.x).toBeGreaterThan(0.00099);
      expect(a.right).toBeLessThan(36 * 0.0254 - 0.00099);
      expect(a.top).toBeLessThan(3 * 0.0254 - 0.00099);
      for (const b of boxes) {
        if (a === b || a.sheet !== b.sheet) continue;
        const clear = a.x > b.right + 0.0029 || b.x > a.right + 0.0029 || a.y > b.top + 0.0029 || b.y > a.top + 0.0029;
        expect(clear).toBe(true);
      }
    }
  });

  test("keep their outlines and their grain: each is moved, never turned", () => {
    const nested = nest();
    const sheet = nested.places.sheet[0] ?? "";
    const cuts = strokesOf(nested.pattern, sheet, "cut").map(areaOf).sort();
    const own = ["right 1", "left 1"].map((name) => areaOf(strokesOf(pattern, name, "cut")[0] ?? [])).sort();
    own.forEach((area, i) => {
      expect(cuts[i]).toBeCloseTo(area, 12);
    });
    expect(nested.left).toBeCloseTo(1 - nested.used / (nested.count * 36 * 3 * 0.0254 ** 2), 12);
  });

  test("take as many sheets as they need", () => {
    expect(nest().count).toBe(3);
    expect(nest({ length: 0.14, width: 0.08 }).count).toBe(5);
  });

  test("lie on sheets of the size that is at hand in their thickness", () => {
    const stock = { thickness: [0.0024, 0.002], length: [0.5, 1], width: [0.1, 0.075] };
    const { sheets, count, used, left, pattern: laid } = nest({ stock, density: 100 });
    expect(count).toBe(3);
    expect(sheets.thickness).toEqual([0.0032, 0.0024, 0.002]);
    expect(laid.parts.width).toEqual([36 * 0.0254, 0.5, 1]);
    expect(laid.parts.height).toEqual([3 * 0.0254, 0.1, 0.075]);
    expect(sheets.mass?.[1]).toBeCloseTo(100 * 0.5 * 0.1 * 0.0024, 12);
    expect(left).toBeCloseTo(1 - used / (36 * 3 * 0.0254 ** 2 + 0.05 + 0.075), 12);
    // Too narrow for the panel of 2.4 mm, which would lie on the sheet that all others have.
    expect(() => nest({ stock: { ...stock, width: [0.05, 0.075] } })).toThrow(/right 2 .* no sheet of 500 mm by 50 mm/);
    expect(() => nest({ stock: { ...stock, thickness: [0.002, 0.002] } })).toThrow(/two sizes for sheets of 2 mm/);
  });

  test("are refused where one is larger than every sheet, named with its size and a remedy", () => {
    expect(() => nest({ width: 0.06 })).toThrow(
      /part right 1 is .* by 74 mm and no sheet of 914 mm by 60 mm.*larger sheets/,
    );
    expect(() => nest({ more: pattern })).toThrow(/Two parts have the name right 1/);
  });
});
