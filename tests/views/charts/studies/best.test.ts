import { describe, expect, it } from "vitest";
import { bestExamples } from "../../../../src/views/charts/studies/best.example.ts";
import { bestChart, liveBestChart } from "../../../../src/views/charts/studies/best.ts";
import { document } from "../../drawings/page.ts";
import { descriptionOf, namesIn, testChart, textsIn } from "./chart-cases.ts";

const [front, one, none, atEnd, going] = bestExamples.map(({ data, options }) =>
  bestChart(data, options, { document }),
) as unknown as [Element, Element, Element, Element, Element];

describe("the chart of a best", () => {
  testChart("best", liveBestChart, bestExamples);

  it("draws the front of two results over each other, with what each is to be, beside the present design", () => {
    expect(textsIn(front)).toEqual(expect.arrayContaining(["least loss, %", "most eda, deg", "as it is"]));
    const [example] = bestExamples;
    expect(front.querySelector(".point")?.getAttribute("d")?.match(/M/g)).toHaveLength(
      example?.data.designs.length ?? 0,
    );
    expect(namesIn(front)[0]).toMatch(/^tip_break [\d.]+ deg, middle_break [\d.]+ deg: loss [\d.]+%, eda [\d.]+ deg$/);
  });
  it("shades what could not be told from the present design", () => {
    expect(front.querySelectorAll(".area-layer .band")).toHaveLength(1);
    expect(textsIn(front)).toContain("no difference you could see");
  });
  it("tells of one result what was found, where each input stands in its range", () => {
    const texts = textsIn(one);
    expect(texts[0]).toMatch(/^Least: loss [\d.]+%$/);
    expect(texts.some((text) => /^now [\d.]+%; [123] of 3 searches came to (it|the same)$/.test(text))).toBe(true);
    expect(texts.some((text) => /^tip_break [\d.]+ deg, now 11 deg$/.test(text))).toBe(true);
    expect(textsIn(atEnd)).toContain("tip_break 0 deg, now 11 deg — at an end of its range");
    expect(texts).toEqual(expect.arrayContaining(["search 1", "search 3", "designs tried"]));
    expect(namesIn(one)).toHaveLength(1);
  });
  it("says where no design holds every check which one fails in the nearest", () => {
    expect(textsIn(none)[0]).toBe("No design holds every check");
    expect(descriptionOf(none)).toMatch(
      /the nearest, tip_break 0.5 deg: loss [\d.]+%, fails enough_dihedral\. The present design has loss 3.[\d]+%\./,
    );
  });
  it("says that nothing is found yet", () => {
    expect(textsIn(going)[0]).toBe("Nothing found yet");
    expect(descriptionOf(going)).toMatch(/^So far 0 of 3 searches are done\./);
  });
});
