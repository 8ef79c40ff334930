import { describe, expect, test } from "vitest";
import type { Cell } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { reportOf } from "../../src/cells/report.ts";
import { functions } from "../../src/library/index.ts";

const cells: readonly Cell[] = [
  { id: "a1", kind: "given", name: "width", formula: "1 3/8 in", unit: "in", fraction: 16 },
  {
    id: "a2",
    kind: "table",
    name: "rows",
    columns: [
      { name: "part", text: true },
      { name: "mass", unit: "g" },
    ],
    rows: [
      ["fin", "3"],
      ["rod", "4"],
    ],
  },
  { id: "a3", kind: "derived", name: "twice(x)", formula: "2 * x" },
  { id: "a4", kind: "check", name: "light", formula: "sum(rows.mass) < 8 g" },
  { id: "a5", kind: "check", name: "heavy", formula: "sum(rows.mass) > 8 g" },
  { id: "a6", kind: "check", name: "lost", formula: "nowhere > 8 g" },
  { id: "a7", kind: "note", text: "{nowhere}" },
  { id: "a8", kind: "note", text: "{width}" },
  { id: "a9", kind: "derived", name: "slope", formula: "2 / 1 rad" },
  { id: "b1", kind: "given", name: "constructor", formula: "1" },
];
const program = compile(cells, functions);
const report = reportOf(
  { title: "t", cells, trials: [] },
  program,
  runPlan(program),
  (value, _, unit, fraction) => `${typeof value} ${unit} ${fraction}`,
);

describe("report", () => {
  test("tells values in SI with their dimension, records field by field", () => {
    expect(report.cells.width).toEqual({
      kind: "given",
      value: 1.375 * 0.0254,
      dimension: "m",
      text: "number undefined 16",
      error: null,
    });
    expect(report.cells.rows).toMatchObject({
      dimension: "record",
      value: { part: { value: ["fin", "rod"], dimension: "text" }, mass: { value: [0.003, 0.004], dimension: "kg" } },
    });
    expect(report.cells.slope?.dimension).toBe("1/rad");
    expect(report.cells.constructor).toMatchObject({ value: 1, dimension: "1" });
  });

  test("a function cell stands under its bare name, without a value", () => {
    expect(report.cells.twice).toMatchObject({ kind: "derived", value: null, text: "twice(x)", error: null });
  });

  test("checks are counted, each with its margin", () => {
    expect(report.checks).toEqual({ held: 1, failed: 1, unknown: 1 });
    expect(report.cells.light).toMatchObject({ value: true, dimension: "boolean", margin: expect.closeTo(1 / 8, 12) });
    // The smaller side is to be 8 g, and 7 g is what it must stay under.
    expect(report.cells.heavy).toMatchObject({ value: false, margin: expect.closeTo(-1 / 7, 12) });
    expect(report.cells.lost).toMatchObject({
      value: null,
      margin: null,
      error: { code: "unknown_name", root: "lost" },
    });
  });

  test("cells without a name are told only where they have an error", () => {
    expect(Object.keys(report.others)).toEqual(["a7"]);
    expect(report.others.a7?.error).toMatchObject({ code: "unknown_name", root: "a7" });
  });
});
