import { expect, test } from "vitest";
import type { PlotData } from "../../../src/views/charts/plot-data.ts";
import { withLines } from "../../../src/views/charts/record-plots.ts";

const at = (x: number, y: number) => ({ x, y });
const plotOver = (before: number): PlotData => ({
  view: "some",
  title: "Some",
  x: { label: "time", unit: "s" },
  panels: [
    {
      y: { label: "bank", unit: "deg" },
      curves: [
        { look: "ghost", places: [at(0, before), at(1, 0)] },
        { look: "curve", places: [at(0, 1), at(1, 0)] },
      ],
      spots: [
        { look: "before", ...at(0, before), text: "" },
        { look: "root", ...at(0, 1), text: "phugoid" },
      ],
    },
  ],
  description: () => "It banks.",
});

test("what others have is a line for comparison under its name, behind what counts, and its points are hollow", () => {
  const plot = withLines(plotOver(0.5), [
    { name: "steep", plot: plotOver(2) },
    { name: "flat", plot: plotOver(3) },
  ]);
  const [panel] = plot.panels;
  expect(panel?.curves.map(({ look, name, places }) => [look, name, places[0]?.y])).toEqual([
    ["aside", "steep", 2],
    ["aside", "flat", 3],
    ["ghost", undefined, 0.5],
    ["curve", undefined, 1],
  ]);
  expect(panel?.spots?.map(({ look, text }) => [look, text])).toEqual([
    ["before", "steep"],
    ["before", "flat"],
    ["before", ""],
    ["root", "phugoid"],
  ]);
  expect(plot.description()).toBe("It banks. Beside it, thin: steep, flat.");
});

test("without others a plot is the very same", () => {
  const plot = plotOver(1);
  expect(withLines(plot, [])).toBe(plot);
});
