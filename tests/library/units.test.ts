import fc from "fast-check";
import { create, unitDependencies } from "mathjs";
import { describe, expect, test } from "vitest";
import { dimensionless, divide, multiply, power } from "../../src/library/quantity.ts";
import { isUnitFault, nearest, parseUnit, type UnitFault, unitOf, units } from "../../src/library/units.ts";
import { runs } from "./panel-arbitraries.ts";

const spellings = [...units.keys()];
const plain = spellings.filter((spelling) => units.get(spelling)?.offset === undefined);
const exponent = fc.integer({ min: -3, max: 3 }).filter((each) => each !== 0);
const term = fc.tuple(fc.constantFrom(...plain), exponent);

describe("a unit expression", () => {
  test("is never an exception: any text is an expression or a fault within it", () => {
    const symbols = fc.constantFrom(...spellings, " ", "/", "^", "1", "-", "2", "°", "%", "x", "(", "1/", "\t");
    const texts = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.array(symbols, { maxLength: 12 }).map((all) => all.join("")),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const read = parseUnit(text);
        if (isUnitFault(read)) {
          expect(read.from).toBeGreaterThanOrEqual(0);
          expect(read.to).toBeGreaterThanOrEqual(read.from);
          expect(read.to).toBeLessThanOrEqual(text.length);
          if (read.nearest !== null) expect(units.has(read.nearest)).toBe(true);
        } else {
          expect(Number.isNaN(read.factor)).toBe(false);
          expect(read.dimension.every(Number.isFinite)).toBe(true);
        }
      }),
      { ...runs, numRuns: 1000 },
    );
  });
  test("has the product of its units as factor and dimension, written with blanks and powers", () => {
    fc.assert(
      fc.property(fc.array(term, { minLength: 1, maxLength: 5 }), (terms) => {
        const read = unitOf(terms.map(([unit, n]) => (n === 1 ? unit : `${unit}^${n}`)).join(" "));
        let factor = 1;
        let dimension = dimensionless;
        for (const [unit, n] of terms) {
          factor *= unitOf(unit).factor ** n;
          dimension = multiply(dimension, power(unitOf(unit).dimension, n));
        }
        expect(read.factor / factor).toBeCloseTo(1, 12);
        expect(read.dimension).toEqual(dimension);
      }),
      runs,
    );
  });
  test("divides by the one unit after a slash, as a negative power does", () => {
    fc.assert(
      fc.property(term, term, term, ([a], [b], [c]) => {
        expect(unitOf(`${a}/${b}`).factor / (unitOf(a).factor / unitOf(b).factor)).toBeCloseTo(1, 12);
        expect(unitOf(`${a}/${b}`).dimension).toEqual(divide(unitOf(a).dimension, unitOf(b).dimension));
        expect(unitOf(`${a}/${b} ${c}`).dimension).toEqual(unitOf(`${a} ${b}^-1 ${c}`).dimension);
        expect(unitOf(`${a}/${b}/${c}`).dimension).toEqual(unitOf(`${a} ${b}^-1 ${c}^-1`).dimension);
        expect(unitOf(`1/${a}`).dimension).toEqual(unitOf(`${a}^-1`).dimension);
      }),
      runs,
    );
  });
  test("may be a bare 1, and nothing else that has no unit in it", () => {
    expect(unitOf("1")).toMatchObject({ factor: 1, dimension: dimensionless });
    for (const text of ["", " ", "2", "1 m", "1/", "m/", "/m", "m^", "m^0.5", "m//s", "m*s", "1/1"]) {
      expect(isUnitFault(parseUnit(text)), text).toBe(true);
    }
  });
});

describe("the scales °C and °F", () => {
  test("name points with an offset: water freezes at 0 °C and 32 °F", () => {
    const si = (value: number, unit: string) => value * unitOf(unit).factor + unitOf(unit).offset;
    expect(si(0, "°C")).toBe(273.15);
    expect(si(32, "°F")).toBeCloseTo(273.15, 10);
    expect(si(212, "°F")).toBeCloseTo(si(100, "°C"), 10);
    expect(si(-40, "°F")).toBeCloseTo(si(-40, "°C"), 10);
  });
  test("stand alone: with a power, a slash or a second unit they are a fault that offers K", () => {
    for (const text of ["°C^2", "1/°C", "W/°C", "°C m", "m °F", "°F^-1"]) {
      const fault = parseUnit(text) as UnitFault;
      expect(fault.scale, text).toBe(true);
      expect(fault.nearest).toBe("K");
    }
  });
});

describe("a misspelt unit", () => {
  test.each([
    ["degrees", "deg"],
    ["mm2", "mm"],
    ["Kg", "kg"],
    ["lbs", "lb"],
    ["Deg", "deg"],
    ["kpa", "kPa"],
    ["minutes", "min"],
  ])("%s has %s as its nearest", (word, expected) => {
    expect(parseUnit(word)).toEqual({ from: 0, to: word.length, word, nearest: expected, scale: false });
  });
  test("is marked where it stands", () => {
    expect(parseUnit("kg/m^3 furlong")).toMatchObject({ from: 7, to: 14, word: "furlong" });
    expect(parseUnit("N/  zoll")).toMatchObject({ from: 4, to: 8, word: "zoll" });
  });
  test("offers no unit where none is near", () => {
    expect(nearest("zzzzzz", spellings)).toBe(null);
  });
});

test("unitOf throws where our own code names a unit that is none", () => {
  expect(() => unitOf("furlong")).toThrow(/got the unit "furlong", expected one of m cm mm/);
});

describe("against a general-purpose mathematics library", () => {
  const math = create(unitDependencies ?? {});
  /** Our spelling → what that library calls it. It has no unit of its own for % or the knot. */
  const theirs: Readonly<Record<string, string>> = {
    "°": "deg",
    in: "inch",
    lb: "lbm",
    mph: "mile/hour",
    h: "hour",
    min: "minute",
    "lb/ft^3": "lbm/ft^3",
    "1/deg": "deg^-1",
  };
  const si = (text: string) => math.unit(text).toSI().toNumeric() as number;
  const compounds = ["kg/m^3", "m^2/s", "oz/yd^2", "lb/ft^3", "N s", "1/deg", "kg m^2", "W/m^2", "g/cm^3"];
  // That library keeps psi to ten figures only.
  test.each([...plain, ...compounds].filter((unit) => unit !== "%" && unit !== "kn"))("one %s is as large", (unit) => {
    expect(si(`1 ${theirs[unit] ?? unit}`) / unitOf(unit).factor).toBeCloseTo(1, unit === "psi" ? 9 : 12);
  });
  test("one kn is 1.852 km in an hour", () => {
    expect(si("1.852 km/hour") / unitOf("kn").factor).toBeCloseTo(1, 12);
  });
  test.each(["°C", "°F"])("20 %s is as warm", (unit) => {
    const there = math.unit(20, unit === "°C" ? "degC" : "degF");
    expect(there.toNumber("K")).toBeCloseTo(20 * unitOf(unit).factor + unitOf(unit).offset, 9);
  });
});
