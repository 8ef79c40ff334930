import { describe, expect, test } from "vitest";
import { functions } from "../../../src/library/index.ts";
import { balsaOf } from "../../../src/library/mass/balsa.ts";
import { cloth } from "../../../src/library/mass/cloth.ts";
import { material } from "../../../src/library/mass/material.ts";
import { call, faultOf, Refusal } from "../call.ts";

type Told = Readonly<Record<string, number>>;
const choices = (name: string): readonly string[] => {
  const shape = functions.get(name)?.parameters.name;
  return shape?.kind === "text" ? (shape.choices ?? []) : [];
};

describe.each(["material", "cloth", "adhesive"])("every %s of the list", (name) => {
  const spec = functions.get(name);
  test.each(choices(name).map((each) => [each]))("%s has all fields, each between its low and high", (each) => {
    const found = call(spec, { name: each });
    expect(faultOf(spec?.result as never, found, name)).toBe(null);
    const values = found as Told;
    for (const field of Object.keys(values).filter((key) => `${key}_low` in values)) {
      expect(values[`${field}_low`], field).toBeLessThanOrEqual(values[field] ?? Number.NaN);
      expect(values[`${field}_high`], field).toBeGreaterThanOrEqual(values[field] ?? Number.NaN);
    }
    expect(["verified", "derived", "own computation", "common practice", "from memory"]).toContain(values.mark);
  });
});

describe("a material", () => {
  const refused = (name: string) => {
    try {
      return call(material, { name });
    } catch (error) {
      if (error instanceof Refusal) return error;
      throw error;
    }
  };
  test("is found whatever the case of its letters", () => {
    expect(call(material, { name: " Light Balsa " })).toEqual(call(material, { name: "light balsa" }));
  });
  test("that nobody knows is refused with the nearest and the list", () => {
    expect(refused("ligth balsa")).toMatchObject({
      parameter: "name",
      message: expect.stringMatching(/"contest balsa", .*"spruce".*Did you mean "light balsa"\?/),
    });
    expect(refused("balsa, hard")).toMatchObject({ message: expect.stringMatching(/Did you mean "hard balsa"\?/) });
    expect(refused("steel")).toMatchObject({ message: expect.stringMatching(/Choose one of them\.$/) });
    for (const name of ["toString", "constructor", "__proto__", ""]) expect(refused(name)).toBeInstanceOf(Refusal);
    expect(() => call(cloth, { name: "26 g" })).toThrow(/Did you mean "25 g"\?|Did you mean/);
  });
  test("of balsa has the stiffness of its density, and wider bounds than a weighed sheet", () => {
    const light = call(material, { name: "light balsa" }) as Told;
    const weighed = balsaOf(96);
    expect(light.modulus).toBe(weighed.modulus);
    expect(light.modulus_low).toBeLessThan(weighed.modulus_low);
    expect(light.modulus_high).toBeGreaterThan(weighed.modulus_high);
  });
});

describe("balsa", () => {
  test("has the three measured moduli of the tropical timber sheets within its spread, at the middle of their densities", () => {
    const { modulus_low, modulus_high } = balsaOf(160);
    for (const measured of [3.17e9, 2.93e9, 3.79e9]) {
      expect(measured).toBeGreaterThan(modulus_low);
      expect(measured).toBeLessThan(modulus_high);
    }
  });
  test("is three times as stiff across a quarter-grain sheet as across a tangent-cut one", () => {
    const { cross_modulus_quarter, cross_modulus_tangent } = balsaOf(110);
    expect(cross_modulus_quarter / cross_modulus_tangent).toBeCloseTo(3.07, 2);
  });
});
