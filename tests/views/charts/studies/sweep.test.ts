import { describe, expect, it } from "vitest";
import { sweepExamples } from "../../../../src/views/charts/studies/sweep.example.ts";
import { liveSweepChart, sweepChart } from "../../../../src/views/charts/studies/sweep.ts";
import { document } from "../../drawings/page.ts";
import { descriptionOf, namesIn, testChart, textsIn } from "./chart-cases.ts";

const [twoTrials, withGaps, going] = sweepExamples.map(({ data, options }) => sweepChart(data, options, { document }));

describe("the chart of a sweep", () => {
  testChart("sweep", liveSweepChart, sweepExamples);

  it("has a panel for each result, told with its unit, over one axis", () => {
    expect(textsIn(twoTrials as Element)).toEqual(expect.arrayContaining(["eda, deg", "loss, %", "tip_break, deg"]));
  });
  it("tells each trial by a dash of its own and by name, at the curve and in the legend", () => {
    const dashes = [1, 2].map((trial) => twoTrials?.querySelectorAll(`.curve-layer .trial-${trial}`).length);
    expect(dashes).toEqual([1, 1]);
    const texts = textsIn(twoTrials as Element);
    expect(texts).toContain("as it is");
    for (const name of ["flat middle", "long tips"]) {
      expect(texts.filter((text) => text === name).length).toBeGreaterThan(1);
    }
  });
  it("says where each check fails, of the present design and of a trial that differs", () => {
    const texts = textsIn(twoTrials as Element).filter((text) => text.startsWith("✕"));
    expect(texts[0]).toMatch(/^✕ enough_dihedral fails from 0 deg to/);
    expect(texts.some((text) => text.startsWith("✕ long tips: "))).toBe(true);
    expect(twoTrials?.querySelectorAll(".hatch-layer path").length).toBeGreaterThan(0);
  });
  it("shows a variant that fails as a cross, with its reason below and in the description", () => {
    expect(withGaps?.querySelectorAll(".failed").length).toBeGreaterThan(2);
    expect(textsIn(withGaps as Element).at(-1)).toMatch(/^✕ \d+ of 41 without a value: /);
    expect(descriptionOf(withGaps as Element)).toMatch(/No value at .*: /);
  });
  it("shows what is there while it is still going, and says how much that is", () => {
    expect(descriptionOf(going as Element)).toMatch(/^So far 16 of 41 are computed\./);
    expect(going?.querySelectorAll(".failed")).toHaveLength(0);
    expect(going?.querySelector(".point")?.getAttribute("d")?.split("M")).toHaveLength(17);
  });
  it("names every point by the input and what comes of it, in each panel", () => {
    const names = namesIn(twoTrials as Element);
    expect(names).toHaveLength(42);
    expect(names[11]).toMatch(
      /^tip_break 11 deg: eda [\d.]+ deg as it is, [\d.]+ deg flat middle, [\d.]+ deg long tips$/,
    );
  });
  it("says what is too small a difference to be seen, in the legend and in words", () => {
    expect(textsIn(twoTrials as Element)).toContain("no difference you could see");
    expect(descriptionOf(twoTrials as Element)).toContain("of the present eda there is no difference you could see.");
  });
  it("gives the inputs of the point that is chosen", () => {
    const chosen: (readonly number[])[] = [];
    const { element } = liveSweepChart(
      (sweepExamples[0] as (typeof sweepExamples)[0]).data,
      { onChoose: (inputs) => chosen.push(inputs) },
      { document },
    );
    const event = new (document.defaultView?.Event ?? Event)("click", { bubbles: true });
    element.querySelectorAll(".choice")[3]?.dispatchEvent(Object.assign(event, { detail: 0 }));
    expect(chosen).toEqual([[expect.closeTo((3 * Math.PI) / 180, 12)]]);
  });
});
