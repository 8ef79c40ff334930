import { expect, test } from "vitest";
import { formulaPieces } from "../../src/views/formula-highlight.ts";

const told = (text: string, mark: readonly [number, number] | null = null): string =>
  formulaPieces(text, mark)
    .map(({ text: piece, look, marked }) => `${marked ? "!" : ""}${look && `${look.slice(2)}:`}${piece}`)
    .join("|");

test("calls, names, numbers, units, fields and argument names have a look each", () => {
  expect(told("recovery(plover, bank: 30 deg).time * 2")).toBe(
    "call:recovery|(|name:plover|, |label:bank|: |number:30| |unit:deg|).|field:time| * |number:2",
  );
});

test("the marked term is cut out of what it stands in", () => {
  expect(told("span + 3 kg", [7, 11])).toBe("name:span| + |!number:3|! |!unit:kg");
  expect(told("main_wing", [2, 4])).toBe("name:ma|!name:in|name:_wing");
});

test("a mark without length takes the character after it, or stands empty at the end", () => {
  expect(told("2 * ", [4, 4])).toBe("number:2| * |!");
  expect(told("2 +* 3", [3, 3])).toBe("number:2| +|!*| |number:3");
});

test("the pieces always make up the text", () => {
  for (const text of ["", "((", '"open', "1 3/8 in", "a..b", "if a then", "°", "x[1].y(2)", "\u{1F6E9} + 1"]) {
    for (const mark of [null, [0, 1], [1, 99]] as const) {
      expect(
        formulaPieces(text, mark)
          .map((piece) => piece.text)
          .join(""),
      ).toBe(text);
    }
  }
});
