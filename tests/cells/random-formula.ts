import fc from "fast-check";
import type { Argument, Range, Tree } from "../../src/cells/formula-tree.ts";
import { keywords } from "../../src/cells/names.ts";

const at: Range = [0, 0];

export const units = [
  "m",
  "mm",
  "deg",
  "°",
  "%",
  "kg",
  "s",
  "N",
  "m/s^2",
  "kg/m^3",
  "s^-1",
  "N s",
  "in",
  "1/rad",
] as const;
const literalUnits = units.filter((unit) => unit !== "1/rad");
export const names = ["span", "tip", "cants", "panels", "main", "ok", "wood", "count1", "x_2"] as const;
const fields = ["area", "break", "if", "mm", "not", "x"] as const;
const functions = ["sin", "round", "min", "wing", "lift", "sum", "atan2"] as const;

/** Numbers as people write them, and as they come out of a computation. */
const number = fc.oneof(
  fc.integer({ min: 0, max: 1000 }),
  fc.double({ min: 0, max: 1e300, noNaN: true }).map((value) => value + 0),
  fc.constantFrom(0, 0.5, 1e-7, 1e21, 5e-324, 1.7976931348623157e308),
);
const text = fc.oneof(fc.string(), fc.constantFrom('"', "\\", "\n", '\\"', "a\tb", "é", "\ud83d\ude80"));

/**
 * Random trees of every type, as the reader makes them: a negative number has °C or °F, and a minus before such a
 * positive one belongs to it.
 */
export const randomTree: fc.Arbitrary<Tree> = fc.letrec<{ tree: Tree }>((tie) => {
  const tree = tie("tree");
  const argument = fc.record({
    name: fc.option(fc.constantFrom(...fields, ...names), { nil: null }),
    value: tree,
    at: fc.constant(at),
  });
  return {
    tree: fc.oneof(
      { maxDepth: 6, depthSize: "medium" },
      fc.oneof(
        number.map((value): Tree => ({ type: "number", number: value, unit: null, unitAt: at, at })),
        fc
          .tuple(number, fc.constantFrom(...literalUnits))
          .map(([value, unit]): Tree => ({ type: "number", number: value, unit, unitAt: at, at })),
        fc
          .tuple(fc.integer({ min: -50, max: 50 }), fc.constantFrom("°C", "°F"))
          .map(([value, unit]): Tree => ({ type: "number", number: value, unit, unitAt: at, at })),
        text.map((value): Tree => ({ type: "text", value, at })),
        fc.boolean().map((value): Tree => ({ type: "boolean", value, at })),
        fc.constantFrom(...names).map((name): Tree => ({ type: "name", name, at })),
      ),
      fc.array(tree, { maxLength: 4 }).map((items): Tree => ({ type: "list", items, at })),
      fc
        .tuple(fc.constantFrom(...functions), fc.array(argument, { maxLength: 3 }))
        .map(([name, given]): Tree => ({ type: "call", name, nameAt: at, arguments: positionalFirst(given), at })),
      fc
        .tuple(tree, fc.constantFrom(...fields))
        .map(([of, field]): Tree => ({ type: "field", of, field, fieldAt: at, at })),
      fc.tuple(tree, tree).map(([of, index]): Tree => ({ type: "element", of, index, at })),
      tree.filter((of) => !isPoint(of)).map((of): Tree => ({ type: "negate", of, at })),
      tree.map((of): Tree => ({ type: "not", of, at })),
      fc
        .tuple(fc.constantFrom("+", "-", "*", "/", "^"), tree, tree)
        .map(([sign, left, right]): Tree => ({ type: "arithmetic", sign, left, right, at })),
      fc
        .tuple(fc.constantFrom("<", "<=", "=", "!=", ">=", ">"), tree, tree)
        .map(([sign, left, right]): Tree => ({ type: "comparison", sign, left, right, at })),
      fc
        .tuple(fc.constantFrom("and", "or"), tree, tree)
        .map(([type, left, right]): Tree => ({ type, left, right, at })),
      fc.tuple(tree, tree, tree).map(([condition, yes, no]): Tree => ({ type: "if", condition, yes, no, at })),
    ),
  };
}).tree;

const isPoint = (tree: Tree): boolean =>
  tree.type === "number" && (tree.unit === "°C" || tree.unit === "°F") && tree.number >= 0;

const positionalFirst = (given: readonly Argument[]): Argument[] => [
  ...given.filter(({ name }) => name === null),
  ...given.filter(({ name }) => name !== null),
];

/** Pieces of formulas, and what breaks programs, strung together. */
export const garbage: fc.Arbitrary<string> = fc.oneof(
  fc
    .array(
      fc.constantFrom(
        ...names,
        ...functions,
        ...units,
        ...keywords,
        ...`( ) [ ] , . : + - * / ^ < <= = != >= > == && ! ; " \\ { } # % ° °C −`.split(" "),
        ...[
          "1",
          "2.5",
          "1e3",
          "3/32",
          "1 3/8",
          "0",
          " ",
          "  ",
          "\n",
          "\u00a0",
          "\u0000",
          "\ud83d",
          "é",
          '"text"',
          "1e400",
        ],
      ),
      { maxLength: 40 },
    )
    .map((pieces) => pieces.join(" ").replaceAll(/ (?=[ .,)\]([^/])/g, "")),
  fc.string({ unit: "binary", maxLength: 60 }),
  fc.string({ maxLength: 60 }),
);
