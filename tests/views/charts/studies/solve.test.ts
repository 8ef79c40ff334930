import { describe, expect, it } from "vitest";
import { solveExamples } from "../../../../src/views/charts/studies/solve.example.ts";
import { liveSolveChart, solveChart } from "../../../../src/views/charts/studies/solve.ts";
import { document } from "../../drawings/page.ts";
import { descriptionOf, namesIn, testChart, textsIn } from "./chart-cases.ts";

const [once, twice, never, jump] = solveExamples.map(({ data, options }) =>
  solveChart(data, options, { document }),
) as unknown as [Element, Element, Element, Element];

describe("the chart of a solve", () => {
  testChart("solve", liveSolveChart, solveExamples);

  it("draws the target as a line and each solution on it, told by its value", () => {
    expect(textsIn(once)).toContain("eda = 10 deg");
    expect(once.querySelectorAll(".solution")).toHaveLength(1);
    expect(textsIn(once).some((text) => /^Reached once, at tip_break [\d.]+ deg$/.test(text))).toBe(true);
    expect(twice.querySelectorAll(".solution")).toHaveLength(3);
    expect(
      textsIn(twice).some((text) => /^Reached 3 times, at tip_break [\d.]+ deg, [\d.]+ deg and [\d.]+ deg$/.test(text)),
    ).toBe(true);
  });
  it("says where there is none how near it comes, and marks that", () => {
    expect(never.querySelectorAll(".solution")).toHaveLength(0);
    expect(descriptionOf(never)).toMatch(/Not reached; nearest [\d.]+% at tip_break 20 deg\./);
    expect(namesIn(never)).toHaveLength(1);
  });
  it("tells a jump past the target from a solution", () => {
    expect(jump.querySelectorAll(".solution")).toHaveLength(0);
    expect(textsIn(jump)).toContain("jumps past");
    expect(descriptionOf(jump)).toMatch(/it jumps past it at 9 deg/);
  });
  it("shows where there is no value, with the reason", () => {
    expect(twice.querySelectorAll(".failed").length).toBeGreaterThan(2);
    expect(textsIn(twice).at(-1)).toMatch(/^✕ \d+ of 101 without a value: /);
  });
});
