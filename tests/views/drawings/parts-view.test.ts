import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { partsView } from "../../../src/views/drawings/parts-view.ts";
import type { Part } from "../../../src/views/sheets/parts.ts";
import { touching } from "./ink.ts";
import { document } from "./page.ts";

function part(name: string, width: number, height: number, score = true): Part {
  const slant = height / 8;
  return {
    ...{ name, thickness: 2, width, height },
    strokes: [
      {
        layer: "cut",
        points: [
          [0, 0],
          [width, slant],
          [width, height],
          [0, height],
          [0, 0],
        ],
      },
      ...(score
        ? [
            {
              layer: "score" as const,
              points: [
                [width / 3, height / 2],
                [width / 2, height / 2],
              ] as const,
            },
          ]
        : []),
    ],
    labels: [],
  };
}
const blanks = [part("right 1", 105, 74), part("right 2", 80, 70), part("left 1", 105, 74), part("left 2", 80, 70)];
const draw = (parts: readonly Part[], options = {}, baseline?: readonly Part[]) =>
  partsView(
    { parts, baseline: baseline && { parts: baseline, name: "baseline" } },
    { name: "blanks", ...options },
    { document },
  );

describe("the view of parts", () => {
  it("is an image whose title and description tell every part with its size", () => {
    const svg = draw(blanks);
    expect(svg.querySelector("title")?.textContent).toBe("Parts of blanks");
    expect(svg.querySelector("desc")?.textContent).toContain("4 parts: right 1 105 mm by 74 mm, 2 mm thick; right 2");
    const figures = [...svg.querySelectorAll(".figure")].map((each) => each.textContent);
    expect(figures).toContain("right 1, 105 × 74");
  });
  it("marks where a part has room for it, such as its leading edge, and leaves out a whole row sooner than one of it", () => {
    const label = (text: string, x: number, y: number, angle = 0) => ({ text, at: [x, y] as const, angle, size: 3 });
    const told = (labels: Part["labels"], width: number) => {
      const svg = draw([{ ...part("rail", 300, 50, false), labels }], { width });
      return [...svg.querySelectorAll("text")].map((each) => each.textContent).filter((text) => text !== null);
    };
    const edge = [label("leading edge", 150, 40), label("bevel 3 deg above", 5, 25, 90)];
    expect(told(edge, 660)).toContain("leading edge");
    expect(told(edge, 660)).not.toContain("bevel 3 deg above");
    expect(told(edge, 240)).not.toContain("leading edge");
    const row = [label("left 1–2", 60, 30), label("root", 150, 20), label("right 1–2", 240, 30)];
    expect(told(row, 660)).toEqual(expect.arrayContaining(["left 1–2", "root", "right 1–2"]));
    const crowded = told([...row, label("joint 3", 150, 20)], 660);
    expect(crowded.filter((text) => text.includes("–"))).toEqual([]);
    expect(crowded.join()).not.toContain("left out");
  });
  it("draws all parts in one scale, none larger than life, and within the height", () => {
    const svg = draw(blanks, { width: 400, height: 300 });
    const widths = [...svg.querySelectorAll(".wood")].map((each) => {
      const xs = (each.getAttribute("d") ?? "")
        .replace("Z", "")
        .slice(1)
        .split("L")
        .map((pair) => Number(pair.split(",")[0]));
      return Math.max(...xs) - Math.min(...xs);
    });
    expect((widths[0] ?? 0) / (widths[1] ?? 1)).toBeCloseTo(105 / 80, 1);
    expect(Number(svg.getAttribute("height"))).toBeLessThanOrEqual(316);
    const small = draw([part("clip", 5, 5)], { width: 900 });
    const [outline] = small.querySelectorAll(".wood");
    const xs = (outline?.getAttribute("d") ?? "")
      .replace("Z", "")
      .slice(1)
      .split("L")
      .map((pair) => Number(pair.split(",")[0]));
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo((5 * 96) / 25.4, 1);
  });
  it("keeps a thin line of what a part was, under its name", () => {
    const svg = draw(blanks, {}, [part("right 1", 95, 74)]);
    expect(svg.querySelectorAll(".ghost-layer .ghost")).toHaveLength(1);
    expect(svg.querySelector(".head")?.textContent).toContain("baseline");
    expect(draw(blanks).querySelectorAll(".ghost-layer .ghost")).toHaveLength(0);
  });
  it("has no label that touches a line, another label or the edge, whatever the parts and the sheet", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 4, max: 500 }), fc.integer({ min: 4, max: 120 }), fc.boolean()), {
          minLength: 1,
          maxLength: 12,
        }),
        fc.integer({ min: 240, max: 900 }),
        (all, width) => {
          const parts = all.map(([across, up, score], i) => part(`part ${i}`, across, up, score));
          expect(touching(draw(parts, { width }))).toEqual([]);
        },
      ),
      { seed: 5, numRuns: 60 },
    );
  });
  it("refuses an option that it does not know, and no parts at all", () => {
    expect(() => draw(blanks, { zoom: 2 })).toThrow("zoom");
    expect(() => draw([])).toThrow("no parts");
  });
});
