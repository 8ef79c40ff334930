import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  agree,
  angle,
  type Dimension,
  dimensionless,
  divide,
  equal,
  inWords,
  isDimensionless,
  join,
  multiply,
  power,
  siUnit,
} from "../../src/library/quantity.ts";
import { isUnitFault, parseUnit, unitOf, units } from "../../src/library/units.ts";
import { runs } from "./panel-arbitraries.ts";

/** Often 0, so that most dimensions miss some of their parts, as those of the trade do. */
const exponent = fc.oneof(fc.constant(0), fc.integer({ min: -4, max: 4 }));
const anyDimension: fc.Arbitrary<Dimension> = fc.tuple(exponent, exponent, exponent, exponent, exponent);
/** Also halves and tenths, as roots leave them. */
const roots: fc.Arbitrary<Dimension> = fc
  .tuple(anyDimension, fc.constantFrom(1, 0.5, 0.1, 1 / 3))
  .map(([dimension, factor]) => power(dimension, factor));

const length = unitOf("m").dimension;
const speed = unitOf("m/s").dimension;
const rate = unitOf("1/s").dimension;
const turnRate = unitOf("rad/s").dimension;

describe("dimensions", () => {
  test("multiply as a group does: in any order, in any grouping, with a number as the one that changes nothing", () => {
    fc.assert(
      fc.property(roots, roots, roots, (a, b, c) => {
        expect(multiply(a, b)).toEqual(multiply(b, a));
        expect(equal(multiply(multiply(a, b), c), multiply(a, multiply(b, c)))).toBe(true);
        expect(multiply(a, dimensionless)).toEqual(a);
      }),
      runs,
    );
  });
  test("divide to undo what they multiply, and by themselves to a number", () => {
    fc.assert(
      fc.property(roots, roots, (a, b) => {
        expect(equal(divide(multiply(a, b), b), a)).toBe(true);
        expect(equal(multiply(divide(a, b), b), a)).toBe(true);
        expect(isDimensionless(divide(a, a))).toBe(true);
      }),
      runs,
    );
  });
  test("obey the laws of powers", () => {
    fc.assert(
      fc.property(anyDimension, anyDimension, fc.integer({ min: -3, max: 3 }), exponent, (a, b, m, n) => {
        expect(power(a, m + n)).toEqual(multiply(power(a, m), power(a, n)));
        expect(power(multiply(a, b), m)).toEqual(multiply(power(a, m), power(b, m)));
        expect(power(power(a, m), n)).toEqual(power(a, m * n));
        expect(power(a, 0)).toEqual(dimensionless);
        expect(power(a, 1)).toEqual(a);
        expect(power(a, -1)).toEqual(divide(dimensionless, a));
      }),
      runs,
    );
  });
  test("come back from their root: no rounding error, no minus zero stays in an exponent", () => {
    fc.assert(
      fc.property(anyDimension, fc.integer({ min: 1, max: 12 }), (a, n) => {
        expect(equal(power(power(a, 1 / n), n), a)).toBe(true);
        for (const each of power(a, -1)) expect(Object.is(each, -0)).toBe(false);
      }),
      runs,
    );
    expect(equal(multiply(power(length, 0.1), power(length, 0.2)), power(length, 0.3))).toBe(true);
  });
});

describe("agreement", () => {
  test("is reflexive and symmetric", () => {
    fc.assert(
      fc.property(roots, roots, (a, b) => {
        expect(agree(a, a)).toBe(true);
        expect(agree(a, b)).toBe(agree(b, a));
        if (equal(a, b)) expect(agree(a, b)).toBe(true);
      }),
      runs,
    );
  });
  test("looks past the angle exactly where a mass, a length or a temperature is present", () => {
    fc.assert(
      fc.property(anyDimension, fc.integer({ min: 1, max: 3 }), (a, turns) => {
        const turned = multiply(a, power(angle, turns));
        expect(agree(a, turned)).toBe(a[0] !== 0 || a[1] !== 0 || a[3] !== 0);
      }),
      runs,
    );
  });
  test("fails where mass, length, time or temperature differ, whatever the angle", () => {
    fc.assert(
      fc.property(anyDimension, anyDimension, (a, b) => {
        if (a.slice(0, 4).join() !== b.slice(0, 4).join()) expect(agree(a, b)).toBe(false);
      }),
      runs,
    );
  });
  test("is one and the same within a family: of three with a mass or length, two pairs make the third", () => {
    fc.assert(
      fc.property(anyDimension, exponent, exponent, (a, m, n) => {
        const [b, c] = [multiply(a, power(angle, m)), multiply(a, power(angle, n))];
        if (agree(a, b) && agree(b, c)) expect(agree(a, c)).toBe(true);
      }),
      runs,
    );
  });
  test("joins to one of the two where the angles are the same, and without an angle where they are not", () => {
    fc.assert(
      fc.property(anyDimension, exponent, (a, turns) => {
        const turned = multiply(a, power(angle, turns));
        const joined = join(a, turned);
        expect(joined).toEqual(join(turned, a));
        expect(joined[4]).toBe(turns === 0 ? a[4] : 0);
        expect(join(a, a)).toEqual(a);
        if (agree(a, turned)) expect(agree(joined, turned)).toBe(true);
      }),
      runs,
    );
  });
  test("lets an arc be a length and a turn rate times a radius a speed, but no rate a turn rate", () => {
    expect(agree(multiply(angle, length), length)).toBe(true);
    expect(agree(multiply(turnRate, length), speed)).toBe(true);
    expect(agree(rate, turnRate)).toBe(false);
    expect(agree(angle, dimensionless)).toBe(false);
    expect(isDimensionless(multiply(unitOf("1/deg").dimension, angle))).toBe(true);
  });
});

describe("the SI unit of a dimension", () => {
  test("is read back as that dimension, with a factor of one", () => {
    fc.assert(
      fc.property(anyDimension, (dimension) => {
        const read = parseUnit(siUnit(dimension));
        if (isUnitFault(read)) throw new Error(`${siUnit(dimension)}: ${read.word}`);
        expect(read.dimension).toEqual(dimension);
        expect(read.factor).toBe(1);
        expect(read.offset).toBe(0);
      }),
      runs,
    );
  });
  test("is written as a formula writes it", () => {
    const told = ["m", "rad", "kg/m^3", "1/s", "1", "1/rad", "Pa", "N", "J", "W", "kg m^2", "Pa s", "m^2/s"].map(
      (unit) => siUnit(unitOf(unit).dimension),
    );
    expect(told).toEqual(["m", "rad", "kg/m^3", "1/s", "1", "1/rad", "Pa", "N", "J", "W", "kg m^2", "kg/m/s", "m^2/s"]);
  });
  test("stands in words with an article, for every dimension there is", () => {
    fc.assert(
      fc.property(roots, (dimension) => {
        expect(inWords(dimension)).toMatch(/^an? \S/);
      }),
      runs,
    );
    expect(inWords(length)).toBe("a length");
    expect(inWords(unitOf("kg m^2").dimension)).toBe("a moment of inertia");
    expect(inWords(unitOf("m^4").dimension)).toBe("a value in m^4");
    for (const { dimension } of units.values()) expect(inWords(dimension)).not.toMatch(/^a value/);
  });
});
