import { describe, expect, it } from "vitest";
import { toleranceExamples } from "../../../../src/views/charts/studies/tolerance.example.ts";
import { liveToleranceChart, toleranceChart } from "../../../../src/views/charts/studies/tolerance.ts";
import { document } from "../../drawings/page.ts";
import { descriptionOf, testChart, textsIn } from "./chart-cases.ts";

const [two, withGaps, going] = toleranceExamples.map(({ data, options }) =>
  toleranceChart(data, options, { document }),
) as unknown as [Element, Element, Element];

describe("the chart of a tolerance", () => {
  testChart("tolerance", liveToleranceChart, toleranceExamples);

  it("has a histogram for each result, whose bars are as high as there are builds", () => {
    const [first] = toleranceExamples;
    const { counts } = first?.data.results[0]?.sample?.histogram ?? { counts: [] };
    const heights = [...two.querySelectorAll(".histogram-bar")]
      .slice(0, counts.filter((count) => count > 0).length)
      .map((bar) => Number(bar.getAttribute("height")));
    const filled = counts.filter((count) => count > 0);
    const scale = (heights[0] ?? 0) / (filled[0] ?? 1);
    for (const [index, height] of heights.entries())
      expect(height / scale).toBeCloseTo(filled[index] ?? Number.NaN, -1);
  });
  it("marks the percentiles and tells mean, deviation and the interval of 95 %", () => {
    expect(textsIn(two)).toEqual(expect.arrayContaining(["2.5%", "half", "97.5%"]));
    expect(
      textsIn(two).some((text) => /^mean 12\.\d+ deg, deviation [\d.]+ deg; 95% of the builds from/.test(text)),
    ).toBe(true);
  });
  it("hatches where a check fails, with its name", () => {
    expect(two.querySelectorAll(".hatch-layer .hatch").length).toBeGreaterThan(0);
    expect(textsIn(two)).toContain("✕ lift kept");
    expect(descriptionOf(two)).toContain("lift kept fails above 4%.");
  });
  it("tells the share that passes with its interval, and what to tighten first", () => {
    const texts = textsIn(two);
    expect(texts.some((text) => /^[\d.]+% of 1500 builds pass every check$/.test(text))).toBe(true);
    expect(texts.some((text) => /^of very many builds it would be [\d.]+% to [\d.]+% \(at 95%\)$/.test(text))).toBe(
      true,
    );
    expect(texts).toContain("Tighten tip_break first");
    expect(texts.filter((text) => text.endsWith("would pass"))).toHaveLength(3);
    expect(texts.some((text) => text.startsWith("from tip_break "))).toBe(true);
  });
  it("tells builds without a value, never dropping them", () => {
    expect(textsIn(withGaps).at(-1)).toMatch(/^✕ \d+ of 800 without a value: /);
  });
  it("shows what is built so far", () => {
    expect(textsIn(going)).toContain("30 of 100 built so far");
    expect(descriptionOf(going)).toMatch(/^So far 30 of 100 builds, seed 1\./);
  });
});
