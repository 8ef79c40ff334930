import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { csvText } from "../../../src/views/charts/chart-table.ts";

const tableOf = (rows: (number | string | null)[][], title = "t") => ({
  title,
  columns: [
    { name: "tip, break", unit: "deg" },
    { name: "what", unit: "" },
  ],
  rows,
});

/** Reads comma-separated values as RFC 4180 has them. */
function read(text: string): string[][] {
  const lines: string[][] = [];
  let line: string[] = [];
  let rest = text;
  while (rest.length > 0) {
    const quoted = /^"((?:[^"]|"")*)"/.exec(rest);
    const plain = /^[^",\r\n]*/.exec(rest);
    const [found = "", inside] = quoted ?? plain ?? [];
    line.push(inside === undefined ? found : inside.replaceAll('""', '"'));
    rest = rest.slice(found.length);
    if (rest.startsWith("\r\n")) {
      lines.push(line);
      line = [];
      rest = rest.slice(2);
    } else if (rest.startsWith(",")) {
      rest = rest.slice(1);
    } else throw new Error(`got ${JSON.stringify(rest.slice(0, 20))}, expected a comma or the end of a line`);
  }
  return lines;
}

describe("comma-separated values", () => {
  it("quote what must be quoted, end lines in CR LF, and leave a missing number empty", () => {
    expect(
      csvText(
        [["notebook", 'my "plover"']],
        [
          tableOf([
            [1.5, "a,b"],
            [null, "two\nlines"],
          ]),
        ],
      ),
    ).toBe('notebook,"my ""plover"""\r\n\r\n"tip, break (deg)",what\r\n1.5,"a,b"\r\n,"two\nlines"\r\n');
  });
  it("read back give every text as it was", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.string({ unit: "grapheme" }).filter((text) => !/^[=+\-@\t\r]/.test(text)),
          { maxLength: 8 },
        ),
        (texts) => {
          const rows = texts.map((text) => [1, text]);
          expect(read(csvText([["x"]], [tableOf(rows)])).slice(3)).toEqual(texts.map((text) => ["1", text]));
        },
      ),
      { seed: 3, numRuns: 200 },
    );
  });
  it("tell numbers in full, without the rounding errors of a change of units", () => {
    expect(
      csvText(
        [],
        [
          tableOf([
            [0.1 + 0.2, "x"],
            [-1e-12, "y"],
          ]),
        ],
      ),
    ).toContain("0.3,x\r\n-1e-12,y\r\n");
  });
  it("lead a text that could be taken for a formula by an apostrophe", () => {
    expect(csvText([], [tableOf([[1, "=1+1"]])])).toContain("1,'=1+1\r\n");
  });
  it("give each of several tables its title, parted by an empty line", () => {
    expect(read(csvText([["a"]], [tableOf([], "first"), tableOf([], "second")]))).toEqual([
      ["a"],
      [""],
      ["first"],
      ["tip, break (deg)", "what"],
      [""],
      ["second"],
      ["tip, break (deg)", "what"],
    ]);
  });
});
