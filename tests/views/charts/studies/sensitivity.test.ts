import { describe, expect, it } from "vitest";
import { sensitivityExamples } from "../../../../src/views/charts/studies/sensitivity.example.ts";
import { liveSensitivityChart, sensitivityChart } from "../../../../src/views/charts/studies/sensitivity.ts";
import { document } from "../../drawings/page.ts";
import { descriptionOf, testChart, textsIn } from "./chart-cases.ts";

const [two, withGaps, going] = sensitivityExamples.map(({ data, options }) =>
  sensitivityChart(data, options, { document }),
) as unknown as [Element, Element, Element];

describe("the chart of a sensitivity", () => {
  testChart("sensitivity", liveSensitivityChart, sensitivityExamples);

  it("has for each result the inputs in the order of how far they move it", () => {
    const widths = [...two.querySelectorAll(".bar-layer rect")].map((bar) => Number(bar.getAttribute("width")));
    const [first] = textsIn(two).filter((text) => text.includes("±"));
    expect(first).toBe("tip_break ± 3 deg");
    expect(widths[0]).toBeGreaterThan(widths[2] ?? Number.NaN);
  });
  it("tells what is stated from what is assumed to be 1 %, in words and by its bar", () => {
    expect(textsIn(two)).toEqual(expect.arrayContaining(["panels[1].length ± 1% assumed", "root_break ± 0.5 deg"]));
    expect(two.querySelectorAll(".bar-layer .bar-more-assumed")).toHaveLength(2);
  });
  it("tells each slope in the units that are shown", () => {
    expect(textsIn(two).some((text) => /^0\.\d+ deg per deg$/.test(text))).toBe(true);
    expect(textsIn(two).some((text) => /% per deg$/.test(text))).toBe(true);
    expect(descriptionOf(two)).toMatch(/tip_break ± 3 deg to [\d.]+ deg or [\d.]+ deg \(0\.\d+ deg per deg\)/);
  });
  it("says which check falls with which input moved which way", () => {
    expect(textsIn(two)).toContain("✕ lift_kept fails with more tip_break");
  });
  it("shows by how much all that is stated moves a result together, and that less is no difference", () => {
    expect(textsIn(two).some((text) => /^all that is stated together, ± [\d.]+ deg$/.test(text))).toBe(true);
    expect(textsIn(two)).toContain("no difference you could see");
  });
  it("says where there is no value, and why", () => {
    expect(textsIn(withGaps).at(-1)).toMatch(/^✕ without a value: jig_height, /);
    expect(descriptionOf(withGaps)).toMatch(/No value with jig_height moved: /);
  });
  it("shows what is there while it is still going", () => {
    expect(textsIn(going).some((text) => text.endsWith("not yet"))).toBe(true);
  });
});
