import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseFormula } from "../../src/cells/formula-parse.ts";
import { units } from "../../src/library/units.ts";

const spelling = fc.constantFrom(...[...units.keys()].filter((unit) => !/^°[CF]$/.test(unit)));
const power = fc.oneof(
  fc.constant(""),
  fc.integer({ min: -9, max: 9 }).map((each) => `^${each}`),
);
const unit = fc
  .array(fc.tuple(spelling, power, fc.constantFrom("/", " ")), { minLength: 1, maxLength: 4 })
  .map((terms) => terms.map(([word, raised, sign], index) => `${index > 0 ? sign : ""}${word}${raised}`).join(""));
const whole = fc.integer({ min: 1, max: 99 });

describe("a number with its unit", () => {
  test("is one literal, whatever the unit, with or without a blank", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999 }), fc.constantFrom("", " ", "  "), unit, (number, blank, text) => {
        expect(parseFormula(`${number}${blank}${text}`)).toMatchObject({ type: "number", number, unit: text });
      }),
      { seed: 6, numRuns: 500 },
    );
  });

  test("is divided by what stands after a slash with blanks", () => {
    fc.assert(
      fc.property(whole, unit, (number, text) => {
        expect(parseFormula(`${number} ${text} / t`)).toMatchObject({
          sign: "/",
          left: { number, unit: text },
          right: { type: "name", name: "t" },
        });
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  test("ends before each word of the language", () => {
    for (const word of units.keys()) {
      expect(parseFormula(`if a then 2 ${word} else 3 ${word}`)).toMatchObject({
        yes: { unit: word },
        no: { unit: word },
      });
    }
  });
});

describe("a shop fraction", () => {
  test("is the sum of its whole and its fraction, in and ft alike", () => {
    fc.assert(
      fc.property(fc.option(whole), whole, whole, fc.constantFrom("in", "ft"), (before, over, under, bare) => {
        const written = `${before === null ? "" : `${before} `}${over}/${under} ${bare}`;
        const number = (before ?? 0) + over / under;
        expect(parseFormula(written)).toEqual({
          type: "number",
          number,
          unit: bare,
          unitAt: [written.length - 2, written.length],
          at: [0, written.length],
        });
      }),
      { seed: 8, numRuns: 200 },
    );
  });

  test("before any other unit offers both of its readings", () => {
    fc.assert(
      fc.property(whole, whole, unit, (over, under, text) => {
        fc.pre(text !== "in" && text !== "ft");
        const written = `${over}/${under} ${text}`;
        expect(() => parseFormula(written)).toThrow(`${over} / (${under} ${text})`);
        expect(() => parseFormula(written)).toThrow(`Write ${Number((over / under).toPrecision(12))} ${text} or`);
      }),
      { seed: 9, numRuns: 200 },
    );
  });
});
