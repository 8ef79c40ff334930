import { describe, expect, test } from "vitest";
import type { Cell } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { explain, partsOf } from "../../src/cells/explain.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { functions } from "../../src/library/index.ts";

const cells: readonly Cell[] = [
  { id: "a1", kind: "given", name: "span", formula: "480 mm", unit: "mm", reason: "fits the shelf" },
  { id: "a2", kind: "given", name: "chords", formula: "[70 mm, 50 mm]" },
  { id: "a3", kind: "derived", name: "area_of(chord)", formula: "span * chord" },
  {
    id: "a4",
    kind: "derived",
    name: "largest",
    formula: "max(area_of(chords[1]), span * chords[2]) + 1 cm^2",
    unit: "cm^2",
  },
  { id: "a5", kind: "check", name: "small", formula: "largest < 400 cm^2 and span > 1 mm" },
  { id: "a6", kind: "note", text: "It is {largest}." },
  { id: "a7", kind: "decision", question: "?", chosen: "yes", why: "so" },
  { id: "a8", kind: "derived", name: "broken", formula: "span + 3" },
  { id: "a9", kind: "derived", name: "after", formula: "broken * span" },
];
const program = compile(cells, functions);
const results = runPlan(program);
const of = (id: string) => explain(program, (each) => results.get(each), id);
const names = (steps: readonly { name: string | null; id: string }[] = []) => steps.map(({ name, id }) => name ?? id);

describe("explain", () => {
  test("tells what a cell takes, by its own formula, and what it feeds", () => {
    expect(names(of("a4")?.takes)).toEqual(["area_of", "chords", "span"]);
    expect(names(of("a4")?.feeds)).toEqual(["small", "a6"]);
    expect(names(of("a1")?.takes)).toEqual([]);
    expect(names(of("a1")?.feeds).sort()).toEqual(["area_of", "broken", "after", "largest", "small"].sort());
  });

  test("tells the library functions of the formula, each once", () => {
    expect(of("a4")?.functions.map(({ name }) => name)).toEqual(["max"]);
  });

  test("tells the value of every part of the formula, in SI", () => {
    const explanation = of("a4");
    const tree = explanation?.step.tree;
    if (!explanation || !tree) throw new Error("expected a formula");
    const values = partsOf(tree).map((part) => [part.type, explanation.valueOf(part)]);
    expect(values).toEqual([
      ["arithmetic", expect.closeTo(0.0337, 12)],
      ["call", expect.closeTo(0.0336, 12)],
      // The arguments of a function that takes any number of them stand in one list.
      ["list", [expect.closeTo(0.0336, 12), expect.closeTo(0.024, 12)]],
      ["apply", expect.closeTo(0.0336, 12)],
      ["element", 0.07],
      ["input", [0.07, 0.05]],
      ["constant", 1],
      ["arithmetic", expect.closeTo(0.024, 12)],
      ["input", 0.48],
      ["element", 0.05],
      ["input", [0.07, 0.05]],
      ["constant", 2],
      ["constant", expect.closeTo(1e-4, 12)],
    ]);
  });

  test("a cell that waits has no values to tell, a decision nothing to explain", () => {
    expect(of("a9")?.step.error).toMatchObject({ code: "waits", root: "broken" });
    expect(names(of("a9")?.takes)).toEqual(["broken", "span"]);
    expect(of("a7")).toBeNull();
    expect(of("nowhere")).toBeNull();
  });

  test("an input that fails leaves the parts without value rather than throwing", () => {
    const failing = compile(
      [
        { id: "b1", kind: "derived", name: "infinite", formula: "1 / (2 - 2)" },
        { id: "b2", kind: "derived", name: "more", formula: "infinite + 1" },
      ],
      functions,
    );
    const at = runPlan(failing);
    const explanation = explain(failing, (id) => at.get(id), "b2");
    const tree = explanation?.step.tree;
    if (!explanation || !tree) throw new Error("expected a formula");
    expect(partsOf(tree).map((part) => explanation.valueOf(part))).toEqual([null, null, null]);
  });
});
