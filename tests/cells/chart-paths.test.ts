import { describe, expect, test } from "vitest";
import type { Cell, ChartCell } from "../../src/cells/cell.ts";
import { chartPaths, listedPaths } from "../../src/cells/chart-paths.ts";
import { compile } from "../../src/cells/compile.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { rename } from "../../src/cells/rename.ts";
import { functions } from "../../src/library/index.ts";

const family: ChartCell = {
  ...{ id: "c", kind: "chart", view: "trade_off", sweep: "height", x: "density", y: ["pressure"] },
  ...{ curves: ["low", "high"], band: "seen" },
};
const cells = (formula: string, chart: ChartCell = family): readonly Cell[] => [
  { id: "a", kind: "given", name: "height", formula: "200 m", range: ["0 m", "400 m", "100 m"] },
  { id: "b", kind: "derived", name: "low", formula: "atmosphere(height)" },
  { id: "d", kind: "derived", name: "high", formula },
  { id: "e", kind: "given", name: "seen", formula: "9%" },
  chart,
];
const resultOf = (of: readonly Cell[]) => runPlan(compile(of, functions)).get("c");

describe("the paths of a chart", () => {
  test("are its names, or fields of each of its curves", () => {
    expect(listedPaths(chartPaths(family))).toEqual([
      ...["height", "low.density", "low.pressure", "high.density", "high.pressure", "seen"],
    ]);
    const plain = { id: "c", kind: "chart", view: "trade_off", sweep: "height", x: "a", y: ["b", "c"] } as const;
    expect(listedPaths(chartPaths(plain))).toEqual(["height", "a", "b", "c"]);
    expect(listedPaths(chartPaths({ id: "c", kind: "chart", view: "modes", of: "motion" }))).toEqual(["motion"]);
    expect(listedPaths(chartPaths({ id: "c", kind: "chart", view: "trade_off" }))).toEqual([]);
  });
  test("are computed in that order", () => {
    const parts = resultOf(cells("atmosphere(2 * height)"))?.parts ?? [];
    expect(parts.every(({ ok }) => ok)).toBe(true);
    expect(parts.map((part) => part.ok && part.value)[5]).toBeCloseTo(0.09, 12);
  });
  test("of a curve without a value now leave the others to be drawn; of none there is the error", () => {
    const some = resultOf(cells("atmosphere(-1e9 * height)"));
    expect(some?.ok).toBe(true);
    expect(some?.parts?.map(({ ok }) => ok)).toEqual([true, true, true, false, false, true]);
    const { band: _, ...noBand } = family;
    const none = resultOf(cells("atmosphere(-1e9 * height)", { ...noBand, curves: ["high"] }));
    expect(none?.ok).toBe(false);
  });
  test("that name a field that is no number, or that is not there, are errors that say so", () => {
    expect(resultOf(cells("atmosphere(height)", { ...family, x: "densty" }))).toMatchObject({ ok: false });
    const wing = cells("curved_wing(1 m, 9 cm, 9 cm, 9 deg, 2, 3 mm)", { ...family, curves: ["high"], x: "cants" });
    expect(resultOf(wing)).toMatchObject({ ok: false, error: { code: "wrong_shape" } });
  });
  test("follow a renamed curve, and leave fields alone", () => {
    const notebook = { title: "", cells: cells("atmosphere(height)", { ...family, x: "seen" }), trials: [] };
    const after = rename(rename(notebook, "d", "up", functions), "e", "visible", functions);
    expect(after.cells[4]).toEqual({ ...family, x: "seen", curves: ["low", "up"], band: "visible" });
  });
});
