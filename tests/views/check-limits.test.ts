import { expect, test } from "vitest";
import { compile } from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";
import { allowedBy } from "../../src/views/check-limits.ts";

function allowed(formula: string, names: readonly string[] = ["eda", "loss"]) {
  const program = compile(
    [
      { id: "a1", kind: "given", name: "eda", formula: "9 deg" },
      { id: "a2", kind: "given", name: "loss", formula: "3%" },
      { id: "a3", kind: "check", name: "good_enough", formula },
    ],
    functions,
  );
  return allowedBy(program, names);
}

test("a comparison with a fixed value allows one side of it, from whichever side it is written", () => {
  const limit = (8 * Math.PI) / 180;
  expect(allowed("eda > 8 deg")).toEqual([{ quantity: "eda", label: "good enough", min: limit }]);
  expect(allowed("8 deg <= eda")).toEqual([{ quantity: "eda", label: "good enough", min: limit }]);
  expect(allowed("loss < 5%")).toEqual([{ quantity: "loss", label: "good enough", max: 0.05 }]);
});

test("and takes both together, the narrower of two", () => {
  expect(allowed("loss > 1% and loss < 5% and loss < 4%")).toEqual([
    { quantity: "loss", label: "good enough", min: 0.01, max: 0.04 },
  ]);
  expect(allowed("loss < 5% and eda > 0 deg").map(({ quantity }) => quantity)).toEqual(["eda", "loss"]);
});

test("a check that no such line can show, or of other cells, allows nothing here", () => {
  for (const formula of [
    "eda > 2 * eda",
    "loss < 5% or eda > 8 deg",
    "not (loss < 5%)",
    "loss = 5%",
    "eda + eda > 8 deg",
  ]) {
    expect(allowed(formula)).toEqual([]);
  }
  expect(allowed("eda > 8 deg", ["loss"])).toEqual([]);
});
