import { describe, expect, test } from "vitest";
import { constants, isName, keywords, readSignature, reservedAs, tidyName } from "../../src/cells/names.ts";
import { functions } from "../../src/library/index.ts";
import { units } from "../../src/library/units.ts";

describe("a name", () => {
  test.each(["a", "A", "tip_break", "x1", "cg", "a_", "constructor"])("may be %s", (name) => {
    expect(isName(name)).toBe(true);
  });
  test.each(["", " ", "1a", "_a", "a b", "a-b", "a.b", "é", "aé", "a\n", "°", "%", "{a}"])("may not be %j", (name) => {
    expect(isName(name)).toBe(false);
  });
});

test.each([
  [" wood density ", "wood_density"],
  ["neutral-point  arm", "neutral_point_arm"],
  ["lift (v, cl)", "lift (v, cl)"],
  ["2 x", "2_x"],
  ["eda", "eda"],
])("%j as it is typed becomes %j", (typed, name) => {
  expect(tidyName(typed)).toBe(name);
});

describe("a reserved word", () => {
  test("is any unit, function, constant, word of the language or of the engine, and says which", () => {
    for (const unit of units.keys()) expect(reservedAs(unit, functions)).toBe("a unit");
    for (const name of functions.keys()) expect(reservedAs(name, functions)).toMatch(/^a (function|unit)$/);
    for (const name of constants.keys()) expect(reservedAs(name, functions)).toBe("a constant");
    for (const word of keywords) expect(reservedAs(word, functions)).toBe("a word of the formula language");
    for (const word of ["invalidation", "visibility"]) expect(reservedAs(word, functions)).toBe("a reserved word");
  });

  test("is nothing else", () => {
    for (const word of ["tip_break", "MM", "Sin", "If", "cg", "toString", "x"])
      expect(reservedAs(word, functions)).toBe(null);
  });

  test("is if, then, else, and, or, not, true and false", () => {
    expect([...keywords].sort()).toEqual("and else false if not or then true".split(" "));
  });
});

describe("the name of a cell as written", () => {
  test.each([
    ["eda", { name: "eda", parameters: null }],
    [" eda ", { name: "eda", parameters: null }],
    ["lift(v, cl)", { name: "lift", parameters: ["v", "cl"] }],
    ["lift ( v,cl ) ", { name: "lift", parameters: ["v", "cl"] }],
    ["f()", { name: "f", parameters: [""] }],
    ["f(a,)", { name: "f", parameters: ["a", ""] }],
    ["f(a", { name: "f(a", parameters: null }],
    ["f(a)(b)", { name: "f(a)(b)", parameters: null }],
    ["", { name: "", parameters: null }],
  ])("%j is taken apart", (written, signature) => {
    expect(readSignature(written)).toEqual(signature);
  });
});

test("gravity is the standard acceleration of free fall, pi the ratio of circumference to diameter", () => {
  expect(constants.get("gravity")).toEqual({ value: 9.80665, unit: "m/s^2" });
  expect(constants.get("pi")).toEqual({ value: Math.PI, unit: "1" });
});
