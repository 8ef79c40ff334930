import { readFileSync } from "node:fs";
import { parseHTML } from "linkedom";
import { expect, test } from "vitest";
import { sheetPicture } from "../../../src/views/export/sheet-picture.ts";

const views = new URL("../../../src/views/", import.meta.url);
const look = {
  theme: readFileSync(new URL("theme.css", views), "utf8"),
  drawing: readFileSync(new URL("drawings/drawing.css", views), "utf8"),
};

test("a figure as a picture of its own has title and source on it, carries its look, and offers nothing to choose", () => {
  const { document } =
    parseHTML(`<svg xmlns="http://www.w3.org/2000/svg" class="drawing map" role="figure" width="300" height="200" viewBox="0 0 300 200">
    <title>t</title><desc>Over a and b.</desc>
    <path class="curve" d="M0,0L1,1"/><text class="note by-hand" x="4" y="190">choose a point to try it</text>
    <g class="choice-layer"><rect class="choice" tabindex="0" role="button" aria-label="a 1"/></g></svg>`);
  const figure = document.querySelector("svg") as unknown as SVGSVGElement;
  const before = figure.outerHTML;
  const picture = sheetPicture(
    figure,
    { title: "Bend & loss", shows: "a over b", from: "from the notebook “Plover”" },
    look,
  );
  const texts = [...picture.querySelectorAll("text")].map(({ textContent }) => textContent);
  expect(texts).toEqual(["Bend & loss", "a over b", "from the notebook “Plover”"]);
  expect(picture.querySelector("title")?.textContent).toBe("Bend & loss");
  expect(picture.querySelector("desc")?.textContent).toBe("Over a and b. from the notebook “Plover”.");
  expect(picture.querySelector("path")?.getAttribute("stroke")).toMatch(/^#/);
  expect(picture.querySelector("rect")?.getAttribute("fill")).toBe("#fbfcfa");
  expect(picture.querySelector(".choice, [tabindex]")).toBeNull();
  expect([picture.getAttribute("width"), picture.getAttribute("height")]).toEqual(["328", "270"]);
  // What stands on the page is left as it is.
  expect(figure.outerHTML).toBe(before);
});
