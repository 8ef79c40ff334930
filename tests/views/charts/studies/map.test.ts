import { describe, expect, it } from "vitest";
import { mapExamples } from "../../../../src/views/charts/studies/map.example.ts";
import { liveMapChart, mapChart } from "../../../../src/views/charts/studies/map.ts";
import { document } from "../../drawings/page.ts";
import { descriptionOf, namesIn, testChart, textsIn } from "./chart-cases.ts";

const [two, withGaps, going] = mapExamples.map(({ data, options }) =>
  mapChart(data, options, { document }),
) as unknown as [Element, Element, Element];

describe("the chart of a map", () => {
  testChart("map", liveMapChart, mapExamples);

  it("has a field for each result, with the result, both inputs and their units told", () => {
    expect(textsIn(two)).toEqual(
      expect.arrayContaining(["eda, deg", "loss, %", "tip_break, deg", "middle_break, deg"]),
    );
  });
  it("writes the height at contour lines, in round numbers", () => {
    const levels = textsIn(two).filter((text) => /^\d+(\.\d)?$/.test(text));
    expect(levels).toEqual(expect.arrayContaining(["8", "10", "12", "3", "4"]));
  });
  it("hatches where a check fails and names the check there", () => {
    expect(two.querySelectorAll(".hatch-layer path").length).toBeGreaterThan(0);
    expect(textsIn(two)).toEqual(expect.arrayContaining(["✕ enough_dihedral", "✕ lift_kept", "a check fails"]));
  });
  it("hatches also by a check that has no margin", () => {
    expect(textsIn(going)).toContain("✕ either");
  });
  it("marks the present design and each trial that stands within it", () => {
    expect(two.querySelectorAll(".present")).toHaveLength(2);
    expect(textsIn(two)).toEqual(expect.arrayContaining(["as it is, long tips", "flat middle"]));
  });
  it("shows values that fail as crosses, with the reason below and in the description", () => {
    expect(withGaps.querySelectorAll(".failed").length).toBeGreaterThan(5);
    expect(textsIn(withGaps).at(-1)).toMatch(/^✕ \d+ of 315 without a value: /);
    expect(descriptionOf(withGaps)).toMatch(/No value at .* deg and .* deg, .* and 79 more: /);
  });
  it("shows what is there while it is still going", () => {
    expect(descriptionOf(going)).toMatch(/^So far 243 of 441 are computed\./);
    expect(going.querySelectorAll(".failed")).toHaveLength(0);
  });
  it("names every place by both inputs, all results and the checks that fail", () => {
    const names = namesIn(two);
    expect(names).toHaveLength(882);
    expect(names[0]).toMatch(/^tip_break 0 deg, middle_break 14 deg: eda [\d.]+ deg, loss [\d.]+%/);
    expect(names.some((name) => name.endsWith("; enough_dihedral fails"))).toBe(true);
  });
  it("gives both inputs of the place that is chosen, and goes up and down by row", () => {
    const chosen: (readonly number[])[] = [];
    const { element } = liveMapChart(
      (mapExamples[0] as (typeof mapExamples)[0]).data,
      { onChoose: (inputs) => chosen.push(inputs.map((value) => Math.round((value * 1800) / Math.PI) / 10)) },
      { document },
    );
    const send = (place: number, type: string, more: object) =>
      element
        .querySelectorAll(".choice")
        [place]?.dispatchEvent(
          Object.assign(new (document.defaultView?.Event ?? Event)(type, { bubbles: true, cancelable: true }), more),
        );
    send(22, "keydown", { key: "Enter" });
    expect(chosen).toEqual([[1, 13.3]]);
    const focused: string[] = [];
    for (const choice of element.querySelectorAll<SVGElement>(".choice")) {
      choice.focus = () => void focused.push(choice.getAttribute("aria-label")?.split(":")[0] ?? "");
    }
    send(22, "keydown", { key: "ArrowUp" });
    expect(focused).toEqual(["tip_break 1 deg, middle_break 14 deg"]);
  });
});
