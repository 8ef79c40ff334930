import { expect, test } from "vitest";
import { compile } from "../../src/cells/compile.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { functions } from "../../src/library/index.ts";
import { jointsOf } from "../../src/views/build-figure.ts";

test("joints lie as they are seen from behind: the left panel on the left, on both halves of the wing", () => {
  const numbers = (name: string, unit: string, ...values: string[]) => ({ column: { name, unit }, values });
  const columns = [
    numbers("length", "mm", "120", "85"),
    numbers("root_chord", "mm", "62", "62"),
    numbers("tip_chord", "mm", "62", "48"),
    numbers("sweep", "mm", "0", "6"),
    numbers("break", "deg", "4", "9"),
    numbers("washout", "deg", "0", "0"),
    numbers("thickness", "mm", "3.1", "2.4"),
  ];
  const program = compile(
    [
      {
        id: "a",
        kind: "table",
        name: "panels",
        columns: columns.map(({ column }) => column),
        rows: [0, 1].map((row) => columns.map(({ values }) => values[row] as string)),
      },
      { id: "b", kind: "derived", name: "bevels", formula: "joint_bevels(wing(panels))" },
    ],
    functions,
  );
  const result = runPlan(program).get("b");
  if (!result?.ok) throw new Error("no bevels");
  const seen = jointsOf(result).map(({ name, edges }) => [name, ...edges.map(({ panel }) => panel)]);
  expect(seen).toEqual([
    ["root", "left 1", "right 1"],
    ["right 1–2", "right 1", "right 2"],
    ["left 1–2", "left 2", "left 1"],
  ]);
  expect(jointsOf(result)[2]?.edges.map(({ thickness }) => thickness)).toEqual([0.0024, expect.closeTo(0.0031)]);
});
