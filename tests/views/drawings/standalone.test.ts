import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { tradeOffExamples } from "../../../src/views/charts/trade-off.example.ts";
import { tradeOff } from "../../../src/views/charts/trade-off.ts";
import { frontViewExamples } from "../../../src/views/drawings/front-view.example.ts";
import { frontView } from "../../../src/views/drawings/front-view.ts";
import { planViewExamples } from "../../../src/views/drawings/plan-view.example.ts";
import { planView } from "../../../src/views/drawings/plan-view.ts";
import { sideViewExamples } from "../../../src/views/drawings/side-view.example.ts";
import { sideView } from "../../../src/views/drawings/side-view.ts";
import { standalone } from "../../../src/views/drawings/standalone.ts";
import { document } from "./page.ts";

const views = new URL("../../../src/views/", import.meta.url);
const look = {
  theme: readFileSync(new URL("theme.css", views), "utf8"),
  drawing: readFileSync(new URL("drawings/drawing.css", views), "utf8"),
};
const drawings = [
  ...frontViewExamples.map(({ data, options }) => frontView(data, options, { document })),
  ...planViewExamples.map(({ data, options }) => planView(data, options, { document })),
  ...sideViewExamples.map(({ data, options }) => sideView(data, options, { document })),
  ...tradeOffExamples.map(({ data, options }) => tradeOff(data, options, { document })),
];

describe("a drawing that stands alone", () => {
  it("carries the light colours as attributes, none left to the page", () => {
    for (const drawing of drawings) {
      const text = standalone(drawing, look).outerHTML;
      expect(text).toContain('xmlns="http://www.w3.org/2000/svg"');
      expect(text).not.toMatch(/var\(|light-dark|style=/);
    }
    const wood = standalone(drawings[0] as SVGElement, look).querySelector(".wood");
    expect(wood?.getAttribute("fill")).toBe("#efe3cb");
  });
  it("has a fill or a stroke on everything that is drawn", () => {
    for (const drawing of drawings) {
      for (const element of standalone(drawing, look).querySelectorAll("path, circle, rect, text")) {
        expect(element.hasAttribute("fill"), element.outerHTML).toBe(true);
      }
    }
  });
  it("is a picture with nothing to focus", () => {
    for (const drawing of drawings) {
      const copy = standalone(drawing, look);
      expect(copy.getAttribute("role")).toBe("img");
      expect(copy.querySelectorAll("[tabindex], [role], [aria-label]")).toHaveLength(0);
    }
  });
  it("leaves the drawing on the page as it was", () => {
    const [drawing] = drawings;
    const before = drawing?.outerHTML;
    standalone(drawing as SVGElement, look);
    expect(drawing?.outerHTML).toBe(before);
  });
  it("refuses a colour that the theme does not have", () => {
    const faulty = { ...look, drawing: `${look.drawing}\n.wood { fill: var(--teak); }` };
    expect(() => standalone(drawings[0] as SVGElement, faulty)).toThrow("got --teak in the look of a drawing");
  });
});
