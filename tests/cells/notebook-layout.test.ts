import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { layOut, lineWidth } from "../../src/cells/notebook-layout.ts";

const textOf = (length: number): string => "x".repeat(length);

describe("the layout of a file", () => {
  test("an object or list that fits stays on one line", () => {
    expect(layOut({ a: [1, "two", null, true], b: {}, c: [] })).toBe('{"a": [1, "two", null, true], "b": {}, "c": []}');
  });

  test("what fills a line to its last column stays on it, and one character more breaks it", () => {
    const fits = { key: textOf(lineWidth - '{"key": ""}'.length) };
    expect(layOut(fits)).toHaveLength(lineWidth);
    expect(layOut({ key: `${fits.key}x` })).toBe(`{\n  "key": "${fits.key}x"\n}`);
  });

  test("indentation, key and the comma after it count", () => {
    const room = lineWidth - '  "a": {"b": ""},'.length;
    const last = { z: textOf(lineWidth) };
    expect(layOut({ a: { b: textOf(room) }, ...last })).toContain(`\n  "a": {"b": "${textOf(room)}"},\n`);
    expect(layOut({ a: { b: textOf(room + 1) }, ...last })).toContain(
      `\n  "a": {\n    "b": "${textOf(room + 1)}"\n  },\n`,
    );
    // The last one has no comma after it.
    expect(layOut({ ...last, a: { b: textOf(room + 1) } })).toContain(`\n  "a": {"b": "${textOf(room + 1)}"}\n`);
  });

  test("a row stays on one line however long", () => {
    const row = [textOf(90), textOf(90)];
    expect(layOut({ rows: [row, ["1", "2"]] })).toBe(
      `{\n  "rows": [\n    ["${row[0]}", "${row[1]}"],\n    ["1", "2"]\n  ]\n}`,
    );
  });

  test("no line but a row or a text is longer than a line may be, and the values are those that went in", () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
        const text = layOut(value);
        expect(JSON.stringify(JSON.parse(text))).toBe(JSON.stringify(value));
        for (const line of text.split("\n")) {
          if (line.length > lineWidth) expect(line).toMatch(/^ *("(?:[^"\\]|\\.)*": )?(\[|"|-?\d)/);
        }
      }),
      { seed: 40, numRuns: 500 },
    );
  });
});
