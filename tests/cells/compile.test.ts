import { describe, expect, test } from "vitest";
import type { Cell } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { runPlan } from "../../src/cells/plan.ts";
import type { Program } from "../../src/cells/step.ts";
import { functions } from "../../src/library/index.ts";
import { cellsOf, resultsText } from "./notebook-text.ts";

/** The cells with one line of their short form in place of another. */
function edited(text: string, from: string, to: string): readonly Cell[] {
  if (!text.includes(from)) throw new Error(`got no line ${from}, expected one to replace`);
  return cellsOf(text.replace(from, to));
}

/** Both programs share the cells that are written alike, as a notebook and its edit do. */
function compiledTwice(text: string, from: string, to: string): { before: Program; after: Program } {
  const cells = cellsOf(text);
  const known = new Map(cells.map((cell) => [JSON.stringify(cell), cell]));
  const next = edited(text, from, to).map((cell) => known.get(JSON.stringify(cell)) ?? cell);
  const before = compile(cells, functions);
  return { before, after: compile(next, functions, before) };
}

const stepNames = (program: Program, same: Program): string =>
  program.steps
    .filter((step) => same.byId.get(step.id) !== step)
    .map(({ id, name }) => name ?? id)
    .sort()
    .join(" ");

const told = (program: Program, names: string): string =>
  resultsText(program, runPlan(program), names.replaceAll(" ", " \n"));

const text = `given tip [deg] from 0 deg to 20 deg = 11 deg
twice(x) = 2 * x
four(x) = twice(twice(x))
a = twice(tip)
b = four(tip) + a
c = 3
chart sweep tip x a y b`;

describe("an edit compiles anew", () => {
  test("a given alone, where it keeps its unit", () => {
    const { before, after } = compiledTwice(text, "= 11 deg", "= 12 deg");
    expect(stepNames(after, before)).toBe("tip");
  });

  test("and what follows from it, where it is of another dimension", () => {
    const { before, after } = compiledTwice(
      text,
      "tip [deg] from 0 deg to 20 deg = 11 deg",
      "tip [mm] from 0 mm to 20 mm = 3 mm",
    );
    expect(stepNames(after, before)).toBe("7 a b tip");
    expect(told(after, "a ")).toBe("a = 0.006 m");
  });

  test("all that calls a function cell, also by way of another", () => {
    const { before, after } = compiledTwice(text, "twice(x) = 2 * x", "twice(x) = 3 * x");
    expect(stepNames(after, before)).toBe("a b four twice");
    expect(told(after, "b ")).toBe("b = 2.30383 rad");
  });

  test("a chart, where its given loses its range or gets one", () => {
    const { after } = compiledTwice(text, " from 0 deg to 20 deg", "");
    expect(told(after, "")).toBe(
      "chart ! wrong_argument 0-0 ‹› The given tip has no range to sweep over. Give it one, from and to.",
    );
    const back = compile(cellsOf(text), functions, after);
    expect(told(back, "")).toBe("");
  });

  test("nothing but itself, where a derived cell keeps its shape", () => {
    const { before, after } = compiledTwice(text, "a = twice(tip)", "a = twice(tip) * 2");
    expect(stepNames(after, before)).toBe("a");
  });

  test("what waits, where its root is another", () => {
    const faulty = "a = spam\nb = 1 / 0 + true\nc = a + b\nd = c";
    const { after } = compiledTwice(faulty, "a = spam", "a = 1");
    expect(told(after, "d ")).toContain("d ! waits of b");
  });
});

describe("what is proposed follows the names there are", () => {
  test.each([
    ["a formula", "x = spn\nspam = 1", "x ! unknown_name 0-3 ‹spn› There is no cell named spn. Did you mean span?"],
    [
      "a note",
      "note {spn}\nspam = 1",
      "note = ! unknown_name 0-3 ‹spn› There is no cell named spn. Did you mean span?",
    ],
    [
      "a table",
      "table t | x\n| spn\nspam = 1",
      "t ! unknown_name x[1] 0-3 ‹spn› Row 1, column x: There is no cell named spn. Did you mean span?",
    ],
  ])("in %s", (_, cells, expected) => {
    const { after } = compiledTwice(cells, "spam = 1", "span = 1");
    expect(told(after, "")).toBe(expected);
  });
});
