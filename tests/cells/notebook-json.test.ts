import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { NotebookError } from "../../src/cells/notebook-errors.ts";
import { deepest, mostValues, readJson } from "../../src/cells/notebook-json.ts";

describe("the reading of JSON", () => {
  test("takes every text that JSON allows, with the value that the platform gives it", () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6, stringUnit: "binary" }), fc.nat(4), (value, indent) => {
        const text = JSON.stringify(value, null, indent);
        expect(readJson(text)).toEqual(JSON.parse(text));
      }),
      { seed: 30, numRuns: 300 },
    );
  });

  test("takes and refuses the same short texts as the platform, but for keys that stand twice", () => {
    const token = fc.constantFrom(
      ...'{ } [ ] , : " \\ a 1 0 - . e E + / u00e9 \\n \\u00e9 true false null "a" "b" "\\\\" \n \t'.split(" "),
      " ",
      "\u0001",
      "\u007f",
      "\u00a0",
    );
    let taken = 0;
    fc.assert(
      fc.property(fc.array(token, { minLength: 1, maxLength: 9 }), (tokens) => {
        const text = tokens.join("");
        const ours = outcome(() => readJson(text));
        if (ours.includes("stands twice")) return;
        if (ours === "taken") taken++;
        expect(ours === "taken").toBe(outcome(() => JSON.parse(text)) === "taken");
      }),
      { seed: 31, numRuns: 8_000 },
    );
    expect(taken).toBeGreaterThan(100);
  });

  test.each([
    ['{"a": 1, "a": 2}', "a"],
    ['{"a": [{"b": 1}, {"b": 1, "c": 2, "b": 3}]}', "a[1].b"],
    ['{"a": 1, "\\u0061": 2}', "a"],
    ['[{"x y": 1, "x y": 2}]', '[0]["x y"]'],
  ])("%s has a key twice at %s", (text, place) => {
    expect(() => readJson(text)).toThrow(expect.objectContaining({ place }));
  });

  test("keys of every name are kept as keys, and none reaches the prototype", () => {
    const read = readJson('{"__proto__": {"x": 1}, "constructor": 2}') as Record<string, unknown>;
    expect(Object.keys(read)).toEqual(["__proto__", "constructor"]);
    expect(read.x).toBeUndefined();
  });

  test(`takes ${deepest} brackets within each other, and no more`, () => {
    const nested = (depth: number) => "[".repeat(depth) + "]".repeat(depth);
    expect(outcome(() => readJson(nested(deepest)))).toBe("taken");
    expect(outcome(() => readJson(nested(deepest + 1)))).toMatch(/at line 1, column 33, .*more than 32 brackets/);
  });

  test("refuses a text of more values than can be checked in good time", () => {
    const lists = (count: number) => `[${"[],".repeat(count - 1)}[]]`;
    expect(outcome(() => readJson(lists(mostValues - 1)))).toBe("taken");
    expect(outcome(() => readJson(lists(mostValues)))).toContain("more than 500 000 entries");
  });
});

function outcome(read: () => unknown): string {
  try {
    read();
    return "taken";
  } catch (error) {
    if (error instanceof NotebookError || error instanceof SyntaxError) return error.message;
    throw error;
  }
}
