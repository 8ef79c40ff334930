import { describe, expect, test } from "vitest";
import { csvOf } from "../../../src/views/export/figure-tables.ts";

const source = {
  title: "What righting costs",
  shows: "tip_break over its range",
  notebook: "Plover, a club glider",
  trial: "steeper",
};
const degree = Math.PI / 180;

describe("the values of a chart as a file", () => {
  test("of a trade-off are every point of each curve in the units of its axes, a gap with its reason, and what is marked", () => {
    const text = csvOf(
      {
        sort: "trade-off",
        data: {
          sweep: { name: "tip_break", unit: "deg" },
          x: { name: "loss", unit: "%" },
          y: [{ name: "sink", unit: "mm/s" }],
          points: [
            { value: 5 * degree, x: 0.031, y: [0.42] },
            { value: 9 * degree, x: null, y: [null], reason: "the wing stalls" },
          ],
          present: { value: 7 * degree, x: 0.035, y: [0.43] },
        },
      },
      source,
    );
    expect(text.split("\r\n")).toEqual([
      "title,What righting costs",
      "shows,tip_break over its range",
      'notebook,"Plover, a club glider"',
      "trial,steeper",
      "",
      "tip_break over its range",
      "tip_break (deg),loss (%),sink (mm/s),why there is none",
      "5,3.1,420,",
      "9,,,the wing stalls",
      "",
      "marked",
      "design,tip_break (deg),loss (%),sink (mm/s)",
      "as it is,7,3.5,430",
      "",
    ]);
  });

  test("of a plot are a table for each curve and one of what is told in it", () => {
    const text = csvOf(
      {
        sort: "plot",
        data: {
          ...{ view: "polar", title: "Polar", description: () => "" },
          x: { label: "speed", unit: "m/s" },
          panels: [
            {
              y: { label: "sink", unit: "mm/s" },
              curves: [
                { look: "curve", places: [{ x: 4, y: 0.41 }] },
                { look: "ghost", name: "baseline", places: [{ x: 5, y: 0.4 }] },
              ],
              spots: [{ look: "point", text: "least sink", x: 4.5, y: 0.39 }],
            },
          ],
        },
      },
      { ...source, shows: "", trial: null },
    );
    expect(text.split("\r\n").slice(3)).toEqual([
      "sink",
      "speed (m/s),sink (mm/s)",
      "4,410",
      "",
      '"sink, baseline, before"',
      "speed (m/s),sink (mm/s)",
      "5,400",
      "",
      '"sink, marked"',
      "speed (m/s),sink (mm/s),what it is",
      "4.5,390,least sink",
      "",
    ]);
  });
});
