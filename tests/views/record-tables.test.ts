import { expect, test } from "vitest";
import { compile, runPlan } from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";
import { tablesOfRecord } from "../../src/views/record-tables.ts";
import { cellsOf } from "../cells/notebook-text.ts";

function tablesOf(formula: string) {
  const cells =
    cellsOf(`table panels | length mm | root_chord mm | tip_chord mm | sweep mm | break deg | washout deg | thickness mm
| 110 | 70 | 66 | 0 | 5 | 0 | 3
| 90 | 66 | 44 | 8 | 8 | 0 | 2.5
wanted = ${formula}`);
  const program = compile(cells, functions);
  const result = runPlan(program).get(program.byName.get("wanted")?.id ?? "");
  if (!result?.ok) throw new Error(result?.error.message ?? "got no result");
  return tablesOfRecord(result);
}

test("a record with tables is told by its single values, then table by table, numbers in the unit of their column", () => {
  const [single, joints, edges] = tablesOf("joint_bevels(wing(panels))");
  expect(single?.rows.map(([name]) => name)).toEqual(["warning"]);
  expect(joints?.title).toBe("joints");
  expect(joints?.columns.slice(0, 3)).toEqual([
    { name: "joint", unit: "" },
    { name: "distance", unit: "mm" },
    { name: "fold", unit: "deg" },
  ]);
  // The centre joint folds twice the first break, the next by its own.
  expect(joints?.rows.map(([name, , fold]) => [name, fold])).toEqual([
    ["root", expect.closeTo(10, 9)],
    ["right 1–2", expect.closeTo(8, 9)],
    ["left 1–2", expect.closeTo(8, 9)],
  ]);
  expect(edges?.rows).toHaveLength(6);
});

test("steps of work stand there in full, each with its caution", () => {
  const tables = tablesOf("work_order(glider(wing(panels)))");
  const steps = tables.find(({ columns }) => columns.some(({ name }) => name === "caution"));
  expect(steps?.rows.length).toBeGreaterThan(5);
  const caution = steps?.columns.findIndex(({ name }) => name === "caution") ?? -1;
  expect(steps?.rows.some((row) => /blade|knife/i.test(String(row[caution])))).toBe(true);
});
