import { describe, expect, test } from "vitest";
import { type Cell, compile, type Result, runPlan } from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";
import { changeText, gapText, leadAndRest, oneLine } from "../../src/views/value-text.ts";

type Ok = Extract<Result, { readonly ok: true }>;

function resultOf(formula: string, unit?: string): Ok {
  const cell: Cell = { id: "a1", kind: "derived", name: "x", formula, ...(unit && { unit }) };
  const result = runPlan(compile([cell], functions)).get("a1");
  if (!result?.ok) throw new Error(`got ${JSON.stringify(result)}, expected a value`);
  return result;
}

describe("a value apart in its figure and what follows", () => {
  test("a number and its unit", () => {
    expect(leadAndRest(resultOf("11.6 deg"))).toEqual({ number: "11.6", unit: "deg" });
    expect(leadAndRest(resultOf("0.25 m"), { unit: "mm" })).toEqual({ number: "250", unit: "mm" });
    expect(leadAndRest(resultOf("3"))).toEqual({ number: "3", unit: "" });
  });

  test("a list and the unit its elements share; a text and a condition as they are", () => {
    expect(leadAndRest(resultOf("[3 deg, 10 deg]"))).toEqual({ number: "[3, 10]", unit: "deg" });
    expect(leadAndRest(resultOf('"as built"'))).toEqual({ number: "as built", unit: "" });
    expect(leadAndRest(resultOf("2 > 1"))).toEqual({ number: "yes", unit: "" });
  });

  test("a record by its own line, its first figure apart", () => {
    const air = resultOf("atmosphere(0 m)");
    const { number, unit } = leadAndRest(air);
    expect(`${number} ${unit}`).toBe(oneLine(air));
    expect(number).toMatch(/^[\d.]+$/);
    const thin = leadAndRest(resultOf('thin_section("arc", 6%, 2%)'));
    expect([thin.number, thin.unit]).toEqual(["6", "% thick, 2% camber"]);
  });
});

describe("by how much a number moved", () => {
  test("with its sign, at the decimals the value is shown with", () => {
    expect(changeText(resultOf("13.26 deg"), resultOf("12.16 deg"))).toBe("+1.1");
    expect(changeText(resultOf("9 deg"), resultOf("11 deg"))).toBe("−2");
    expect(changeText(resultOf("0.25 m"), resultOf("0.2 m"), { unit: "mm" })).toBe("+50");
  });

  test("nothing where it did not, where it would not show, and where there is no number", () => {
    expect(changeText(resultOf("9 deg"), resultOf("9 deg"))).toBeNull();
    expect(changeText(resultOf("480.01 mm"), resultOf("480 mm"))).toBeNull();
    expect(changeText(resultOf("2 > 1"), resultOf("2 > 3"))).toBeNull();
    expect(changeText(resultOf("9 deg"), undefined)).toBeNull();
  });

  test("a change of temperature is told without the scale's zero", () => {
    expect(changeText(resultOf("20 °C", "°C"), resultOf("15 °C", "°C"), { unit: "°C" })).toBe("+5");
    expect(gapText({ share: 0.1, gap: -2, unit: "°C" })).toBe("2 °C");
  });
});
