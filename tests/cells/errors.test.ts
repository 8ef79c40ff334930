import { expect, test } from "vitest";
import { compile } from "../../src/cells/compile.ts";
import { type ErrorCode, errorCodes } from "../../src/cells/errors.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { functions } from "../../src/library/index.ts";
import { cellsOf } from "./notebook-text.ts";

/** The first cell of each notebook has the error. */
const notebooks: Readonly<Record<ErrorCode, string>> = {
  syntax: "a = 1 +",
  unknown_name: "a = spam",
  unknown_unit: "a = 3 spam",
  unknown_field: "a = t.y\ntable t | x",
  wrong_dimension: "a = 3 mm + 2",
  wrong_shape: "a = not 3",
  wrong_argument: "a = sin()",
  loop: "a = b\nb = a",
  waits: "a = b\nb = spam",
  duplicate_name: "a = 1\na = 2",
  reserved_name: "mm = 1",
  bad_entry: "table a | x\n| ",
  out_of_domain: "a = sqrt(-1)",
  not_finite: "a = 1 / 0",
  too_long: `a = 1${" ".repeat(2000)}+ 1`,
  too_deep: `a = ${"-".repeat(65)}1`,
  too_large: `table a | x${"\n| 1".repeat(10_001)}`,
};

test("the codes of errors are this closed set", () => {
  expect([...errorCodes]).toEqual(Object.keys(notebooks));
});

test.each(Object.entries(notebooks))("%s can come about", (code, text) => {
  expect(runPlan(compile(cellsOf(text), functions)).get("1")).toMatchObject({ ok: false, error: { code } });
});
