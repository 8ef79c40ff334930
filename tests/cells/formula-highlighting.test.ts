import { highlightTree, tagHighlighter, tags } from "@lezer/highlight";
import { expect, test } from "vitest";
import { parser } from "../../src/cells/formula.grammar";

const highlighter = tagHighlighter([
  { tag: tags.keyword, class: "word" },
  { tag: tags.bool, class: "boolean" },
  { tag: tags.number, class: "number" },
  { tag: tags.unit, class: "unit" },
  { tag: tags.string, class: "text" },
  { tag: tags.variableName, class: "name" },
  { tag: tags.function(tags.variableName), class: "function" },
  { tag: tags.propertyName, class: "field" },
  { tag: tags.labelName, class: "argument" },
  { tag: tags.operator, class: "sign" },
]);

/** The classes of a formula's pieces, one a line. */
function classesOf(formula: string): string[] {
  const found: string[] = [];
  highlightTree(parser.parse(formula), highlighter, (from, to, classes) => {
    found.push(`${formula.slice(from, to)}: ${classes}`);
  });
  return found;
}

test("each piece of a formula has its class", () => {
  expect(classesOf("if not ok then 3.5 mm else -wing(t, left: main.x)[1]")).toEqual(
    (
      "if: word|not: word|ok: name|then: word|3.5: number|mm: unit|else: word|-: sign|wing: function|t: name|" +
      "left: argument|main: name|x: field|1: number"
    ).split("|"),
  );
  expect(classesOf('true or "balsa" = wood')).toEqual(
    'true: boolean|or: word|"balsa": text|=: sign|wood: name'.split("|"),
  );
});

test("a shop fraction is one number, its unit included", () => {
  expect(classesOf("1 3/8 in + 3 in")).toEqual("1 3/8 in: number|+: sign|3: number|in: unit".split("|"));
});

test("fields and arguments are no words of the language, also where they look like some", () => {
  expect(classesOf("f(if: panels.not)")).toEqual("f: function|if: argument|panels: name|not: field".split("|"));
});

test("a formula with a fault keeps the classes of its sound pieces", () => {
  expect(classesOf("3 mm + ) * span")).toEqual(expect.arrayContaining(["3: number", "mm: unit", "span: name"]));
});
