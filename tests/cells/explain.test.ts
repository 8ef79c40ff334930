import { describe, expect, test } from "vitest";
import type { Cell } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { explain } from "../../src/cells/explain.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { partsOf } from "../../src/cells/typed-parts.ts";
import { functions } from "../../src/library/index.ts";
import { countedFunctions } from "./counted-functions.ts";
import { withSlow } from "./crew/slow-functions.ts";
import { cellsOf } from "./notebook-text.ts";

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
const of = (id: string) => explain(program, (each) => results.get(each), { id });
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

  test("computes nothing slow: the whole formula has the value of its cell, a slow part none", () => {
    const { table, ran } = countedFunctions();
    const program = compile(cellsOf('given a = 3\nb = tick(a, "b") + 1'), withSlow(table, ["tick"]));
    const results = runPlan(program);
    ran();
    const explanation = explain(program, (id) => results.get(id), { id: "2" });
    const tree = explanation?.step.tree;
    if (!explanation || !tree) throw new Error("expected a formula");
    expect(partsOf(tree).map((part) => [part.type, explanation.valueOf(part)])).toEqual([
      ["arithmetic", 4],
      ["call", null],
      ["input", 3],
      ["constant", "b"],
      ["constant", 1],
    ]);
    expect(ran()).toBe("");
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

  test("an input that fails leaves what needs it without value rather than throwing", () => {
    const failing = compile(
      [
        { id: "b1", kind: "derived", name: "infinite", formula: "1 / (2 - 2)" },
        { id: "b2", kind: "derived", name: "more", formula: "infinite + 1" },
      ],
      functions,
    );
    const at = runPlan(failing);
    const explanation = explain(failing, (id) => at.get(id), { id: "b2" });
    const tree = explanation?.step.tree;
    if (!explanation || !tree) throw new Error("expected a formula");
    expect(partsOf(tree).map((part) => explanation.valueOf(part))).toEqual([null, null, 1]);
  });
});

describe("explaining the entries of a table", () => {
  const table: readonly Cell[] = [
    { id: "t1", kind: "given", name: "half", formula: "240 mm", unit: "mm" },
    { id: "t2", kind: "given", name: "share", formula: "40%" },
    {
      id: "t3",
      kind: "table",
      name: "panels",
      columns: [
        { name: "part", text: true },
        { name: "length", unit: "mm" },
        { name: "break", unit: "deg" },
      ],
      rows: [
        ["inner", "share * half", "5"],
        ["outer", "2 * 45", "11 deg"],
        ["tip", "half + 3 kg", "nothing"],
      ],
    },
    { id: "t4", kind: "derived", name: "total", formula: "sum(panels.length)", unit: "mm" },
  ];
  const program = compile(table, functions);
  const results = runPlan(program);
  const at = (row: number, column: number) =>
    explain(program, (id) => results.get(id), { id: "t3", entry: { row, column } });

  test("an entry takes what it names itself, and goes into its table", () => {
    expect(names(at(0, 1)?.takes)).toEqual(["share", "half"]);
    expect(names(at(0, 1)?.feeds)).toEqual(["panels"]);
    expect(names(at(0, 2)?.takes)).toEqual([]);
  });

  test("an entry has its own result, in the unit of its column, also where another entry of the table has failed", () => {
    expect(results.get("t3")?.ok).toBe(false);
    expect(at(0, 1)?.result).toMatchObject({ ok: true, value: expect.closeTo(0.096, 12), shape: { unit: "mm" } });
    expect(at(1, 1)?.result).toMatchObject({ ok: true, value: expect.closeTo(0.09, 12) });
    expect(at(1, 1)?.written?.unit).toBe("mm");
    expect(at(1, 2)?.result).toMatchObject({ ok: true, value: expect.closeTo((11 * Math.PI) / 180, 12) });
    expect(at(1, 2)?.written?.unit).toBeNull();
  });

  test("a faulty entry tells its own fault", () => {
    expect(at(2, 1)?.result).toMatchObject({ ok: false, error: { code: "wrong_dimension", root: "panels" } });
    expect(at(2, 2)?.result).toMatchObject({ ok: false, error: { code: "unknown_name" } });
  });

  test("text, and places outside the table, are no entries to explain", () => {
    expect(at(0, 0)).toBeNull();
    expect(at(3, 1)).toBeNull();
    expect(at(0, 3)).toBeNull();
  });

  test("a sound table gives its entries their results", () => {
    const sound = compile(
      table.map((cell) => (cell.kind === "table" ? { ...cell, rows: cell.rows.slice(0, 2) } : cell)),
      functions,
    );
    const all = runPlan(sound);
    const entry = explain(sound, (id) => all.get(id), { id: "t3", entry: { row: 1, column: 1 } });
    expect(entry?.result).toMatchObject({ ok: true, value: expect.closeTo(0.09, 12) });
    expect(names(explain(sound, (id) => all.get(id), { id: "t4" })?.ground)).toEqual(["half", "share"]);
  });
});

describe("what stands behind a value", () => {
  const chain: readonly Cell[] = [
    { id: "c1", kind: "given", name: "a", formula: "2 m" },
    { id: "c2", kind: "given", name: "b", formula: "3 m" },
    { id: "c3", kind: "derived", name: "grown(x, by)", formula: "x * by + b" },
    { id: "c4", kind: "derived", name: "c", formula: "grown(a, by: 2)" },
    { id: "c5", kind: "derived", name: "d", formula: "max(c, b) + round(a, 0.5 m)", unit: "cm" },
    { id: "c6", kind: "derived", name: "e", formula: "missing + a" },
    { id: "c7", kind: "derived", name: "f", formula: "e + a" },
  ];
  const program = compile(chain, functions);
  const results = runPlan(program);
  const of = (id: string, concealed?: ReadonlySet<string>) =>
    explain(program, (each) => results.get(each), { id }, concealed);

  test("the givens that it rests on come in the order of the notebook", () => {
    expect(names(of("c5")?.ground)).toEqual(["a", "b"]);
    expect(names(of("c1")?.ground)).toEqual([]);
  });

  test("a call tells what was written for each parameter, its value, and what it gives", () => {
    expect(of("c4")?.calls).toMatchObject([
      {
        name: "grown",
        spec: null,
        arguments: [
          { name: "x", text: "a", value: 2 },
          { name: "by", text: "2", value: 2 },
        ],
        value: 7,
      },
    ]);
    expect(of("c5")?.calls.map(({ name, value }) => [name, value])).toEqual([
      ["max", 7],
      ["round", 2],
    ]);
  });

  test("an argument that is left out has its default", () => {
    const cells: readonly Cell[] = [{ id: "r", kind: "derived", name: "r", formula: "round(2.6)" }];
    const alone = compile(cells, functions);
    const all = runPlan(alone);
    const [call] = explain(alone, (id) => all.get(id), { id: "r" })?.calls ?? [];
    expect(call?.arguments).toMatchObject([
      { name: "value", text: "2.6", value: 2.6 },
      { name: "step", text: null, value: 1 },
    ]);
  });

  test("the body of a function cell is written, but has no values", () => {
    expect(of("c3")?.written).toMatchObject({ text: "x * by + b", typed: null });
    expect(of("c3")?.written?.tree?.type).toBe("arithmetic");
    expect(of("c3")?.step.definition?.parameters).toEqual(["x", "by"]);
  });

  test("an error leads to the cell where it began; there, to no other", () => {
    expect(of("c7")?.origin?.name).toBe("e");
    expect(of("c6")?.origin).toBeNull();
    expect(of("c5")?.origin).toBeNull();
  });

  test("what a question hides is not told, nor what would give it away", () => {
    const secret: readonly Cell[] = [
      { id: "s1", kind: "given", name: "a", formula: "2 m" },
      { id: "s2", kind: "derived", name: "root", formula: "sqrt(a * 3 m)" },
      { id: "s3", kind: "derived", name: "more", formula: "abs(root) + sqrt( a*3 m ) + a" },
    ];
    const hiding = compile(secret, functions);
    const all = runPlan(hiding);
    const tell = (concealed: ReadonlySet<string>) => {
      const explanation = explain(hiding, (id) => all.get(id), { id: "s3" }, concealed);
      const tree = explanation?.written?.typed;
      if (!explanation || !tree) throw new Error("expected a formula");
      const told = partsOf(tree).flatMap((part) =>
        part.type === "input" || part.type === "call"
          ? [[part.type === "input" ? part.name : part.spec.name, explanation.valueOf(part)] as const]
          : [],
      );
      return { told, calls: explanation.calls.map(({ value }) => value) };
    };
    expect(tell(new Set()).calls).toEqual([Math.sqrt(6), Math.sqrt(6)]);
    expect(tell(new Set(["s2"]))).toEqual({
      told: [
        ["abs", null],
        ["root", null],
        ["sqrt", null],
        ["a", 2],
        ["a", 2],
      ],
      calls: [null, null],
    });
  });
});
