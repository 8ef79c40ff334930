import { expect, test } from "vitest";
import { type AnyFunctionSpec, functions } from "../../../src/library/index.ts";
import { fieldLines, parameterLines, resultText, signatureOf } from "../../../src/views/reference/function-words.ts";

const spec = (name: string): AnyFunctionSpec => {
  const found = functions.get(name);
  if (!found) throw new Error(`expected a function ${name}`);
  return found;
};
const line = (name: string, parameter: string) =>
  parameterLines(spec(name), functions).find((each) => each.name === parameter);

test("the signature names every parameter in order, what may be left out in brackets", () => {
  expect(signatureOf(spec("wing"))).toBe("wing(panels, [left])");
  expect(signatureOf(spec("round"))).toBe("round(value, [step])");
  expect(signatureOf(spec("equivalent_dihedral"))).toBe("equivalent_dihedral(wing)");
});

test("a parameter tells its unit, its range in that unit, and its default", () => {
  expect(line("glide", "mass")).toMatchObject({ unit: "g", limits: "more than 0", isColumn: false });
  expect(line("glide", "lift_coefficient")).toMatchObject({ unit: "number", limits: "more than 0, at most 1.5" });
  expect(line("glide", "other_area")).toMatchObject({ unit: "cm^2", limits: "0 or more; 0 cm^2 where it is left out" });
  expect(line("sqrt", "value")).toMatchObject({ unit: "any unit", limits: "0 or more" });
});

test("a record tells which functions give one; a text its choices", () => {
  expect(line("equivalent_dihedral", "wing")?.limits).toBe("as given by wing, curved_wing");
  expect(line("glide", "shape")?.limits).toMatch(/^one of “flat plate”, .*; “flat-bottomed” where it is left out$/);
});

test("a table is followed by its columns, each with what holds for its entries", () => {
  const lines = parameterLines(spec("wing"), functions);
  expect(lines[0]).toMatchObject({ name: "panels", isColumn: false });
  expect(lines[1]).toMatchObject({ name: "length", unit: "mm", limits: "more than 0", isColumn: true });
  expect(line("wing", "break")?.limits).toBe("more than −90 deg, less than 90 deg");
  expect(line("wing", "skew")?.limits).toContain("may be left out");
});

test("what comes out is told with its unit, a record by its fields", () => {
  expect(resultText(spec("equivalent_dihedral"))).toBe("angle of each half of the equivalent V, in deg");
  expect(fieldLines(spec("equivalent_dihedral"), functions)).toEqual([]);
  expect(fieldLines(spec("wing"), functions).find(({ name }) => name === "tip_height")).toMatchObject({ unit: "mm" });
});

test("every function of the library has something to say at every place", () => {
  for (const each of functions.values()) {
    const lines = [...parameterLines(each, functions), ...fieldLines(each, functions)];
    expect(lines.filter(({ summary }) => summary.trim() === "")).toEqual([]);
    expect(JSON.stringify([lines, resultText(each), signatureOf(each)])).not.toMatch(/undefined|NaN|\[object/);
  }
});
