import { expect, test } from "vitest";
import { parseFormula } from "../../src/cells/formula-parse.ts";
import { told } from "../../src/cells/told.ts";

test.each([
  [0.0125, "mm", "12.5 mm"],
  [Math.PI / 22.5, "deg", "8 deg"],
  [0.25, "%", "25%"],
  [0.25, "1", "0.25"],
  [268.15, "°C", "-5 °C"],
  [1.0 / 3, "m", "0.333333 m"],
  [-0.0000001, "kg", "-1e-7 kg"],
  [0, "N", "0 N"],
  [2, "m^0.5", "2 m^0.5"],
])("%d in %s is told as %s", (value, unit, text) => {
  expect(told(value, unit)).toBe(text);
});

test("what is told can be put into a formula", () => {
  for (const unit of ["mm", "deg", "%", "1", "°C", "kg/m^3"]) {
    expect(() => parseFormula(told(12.3456789, unit))).not.toThrow();
  }
});
