import { describe, expect, test } from "vitest";
import { FormulaError } from "../../src/cells/errors.ts";
import { limits, parseFormula } from "../../src/cells/formula-parse.ts";

/** The error of a formula, or null where it has none. */
function errorOf(formula: string): FormulaError | null {
  try {
    parseFormula(formula);
    return null;
  } catch (error) {
    if (error instanceof FormulaError) return error;
    throw error;
  }
}

const nested = (open: string, count: number, close = ""): string => `${open.repeat(count)}1${close.repeat(count)}`;

describe("the limits of a formula", () => {
  test("are those of the language", () => {
    expect(limits).toMatchObject({ characters: 2000, depth: 64, list: 10_000 });
  });

  test("2,000 characters can be read, one more is told before anything is read", () => {
    expect(errorOf(`1${"+1".repeat(999)}`)).toBe(null);
    expect(errorOf(`1${" ".repeat(1999)}`)).toBe(null);
    expect(errorOf(`1${" ".repeat(2000)}`)).toMatchObject({ code: "too_long", at: [0, 2001] });
    expect(errorOf(`${"(".repeat(100_000)}"`)).toMatchObject({ code: "too_long" });
  });

  test.each([
    ["brackets", "(", ")"],
    ["lists", "[", "]"],
    ["calls", "f(", ")"],
    ["named arguments", "f(x: ", ")"],
    ["elements", "a[", "]"],
    ["minus signs", "-", ""],
    ["not", "not ", ""],
    ["powers", "2^", ""],
    ["else branches", "if a then 2 else ", ""],
    ["then branches", "if a then ", " else 2"],
  ])("64 %s may stand within each other, no more", (_, open, close) => {
    expect(errorOf(nested(open, 64, close))).toBe(null);
    expect(errorOf(nested(open, 65, close))).toMatchObject({ code: "too_deep" });
  });

  test("chains are not deep", () => {
    for (const chain of [
      `1${" + 1".repeat(499)}`,
      `a${".b".repeat(999)}`,
      `a${" and a".repeat(300)}`,
      `1${"/1*1".repeat(400)}`,
    ]) {
      expect(errorOf(chain), chain.slice(0, 20)).toBe(null);
    }
  });

  test("whatever fills them is read or refused at once", () => {
    const fillers = [
      "(",
      "[",
      "f(",
      "-",
      "not ",
      "2^",
      "if ",
      "if a then ",
      "a.",
      "a[",
      '"',
      "1 ",
      "1/2 ",
      "3 m/",
      "°",
      "\\",
      "\n",
      "=<",
      "\ud83d",
      "é",
      ",",
      "1e",
      "1 3/8 in ",
    ];
    const started = performance.now();
    for (const filler of fillers) {
      const formula = filler.repeat(2000).slice(0, 2000);
      const error = errorOf(formula);
      expect(error, filler).not.toBe(null);
      expect(error?.at[1], filler).toBeLessThanOrEqual(2000);
    }
    // Some 100 ms as a rule; a parser that tries everything would take years.
    expect(performance.now() - started).toBeLessThan(10_000);
  });
});

describe("a formula over several lines", () => {
  test("is read as one", () => {
    expect(parseFormula("a\n  + b\r\n\t* c")).toMatchObject({ sign: "+", right: { sign: "*" }, at: [0, 13] });
  });

  test("has its errors counted from its beginning", () => {
    expect(errorOf("a +\nb b")).toMatchObject({ code: "syntax", at: [6, 7] });
    expect(errorOf("(a +\n")).toMatchObject({ at: [3, 4] });
  });
});

describe("a formula of nothing", () => {
  test.each(["", " ", "\n \t"])("%j says what is needed", (formula) => {
    const message = "A formula is needed here, such as 12 mm or span / 2.";
    expect(errorOf(formula)).toMatchObject({ code: "syntax", message, at: [0, formula.length] });
  });
});
