import { describe, expect, it } from "vitest";
import { canvasMeasure, estimateWidth, shorten, textReach } from "../../../src/views/drawings/text-size.ts";

describe("the width of a text", () => {
  it("is near what a browser sets in the font of the page", () => {
    // Measured in Chromium at 1000 px: 5912.99 and 6237.99, 10572.98 and 11425.67 px.
    const near = (text: string, weight: number, measured: number) =>
      expect(estimateWidth(text, { size: 1000, weight }) / measured).toBeCloseTo(1, 1.7);
    near("471 mm span", 400, 5912.99);
    near("471 mm span", 700, 6237.99);
    near("equivalent dihedral, deg", 400, 10572.98);
    near("equivalent dihedral, deg", 700, 11425.67);
  });
  it("grows with size and weight, and counts an unknown character as a wide one", () => {
    const width = (text: string, size: number, weight: number) => estimateWidth(text, { size, weight });
    expect(width("21°", 26, 400)).toBeCloseTo(2 * width("21°", 13, 400), 9);
    expect(width("mm", 13, 600)).toBeGreaterThan(width("mm", 13, 400));
    expect(width("✓", 10, 400)).toBeGreaterThanOrEqual(width("m", 10, 400) - 0.2);
  });
  it("is measured once by a canvas, in the font asked for", () => {
    const fonts: string[] = [];
    const context = {
      font: "",
      measureText(text: string) {
        fonts.push(context.font);
        return { width: text.length };
      },
    };
    const document = { createElement: () => ({ getContext: () => context }) } as unknown as Document;
    const measure = canvasMeasure(document, "Some Font");
    expect([measure("abc", { size: 12, weight: 600 }), measure("abc", { size: 12, weight: 600 })]).toEqual([3, 3]);
    expect(fonts).toEqual(["600 12px Some Font"]);
  });
  it("is estimated where there is no canvas", () => {
    const document = { createElement: () => ({ getContext: () => null }) } as unknown as Document;
    expect(canvasMeasure(document, "Some Font")).toBe(estimateWidth);
  });
});

describe("the reach of a text", () => {
  it("goes below the line only where letters do", () => {
    expect(textReach("40.9 mm", 10).below).toBeLessThan(1);
    expect(textReach("span", 10).below).toBeGreaterThan(2);
  });
});

describe("a text cut short", () => {
  const measure = (text: string) => text.length;
  const style = { size: 12, weight: 400 };
  it("stays as it is where it fits, else ends in three dots, without a blank before them", () => {
    expect(shorten("as flown", 8, style, measure)).toBe("as flown");
    expect(shorten("as flown", 7, style, measure)).toBe("as flo…");
    expect(shorten("as flown", 4, style, measure)).toBe("as…");
  });
  it("is empty where nothing fits", () => expect(shorten("as flown", 1, style, measure)).toBe(""));
});
