/** Notebooks built to do harm: nothing of them runs, nothing hangs (a test that does is ended), each is told what is wrong. */
import { expect, test } from "vitest";
import { compile } from "../../src/cells/compile.ts";
import { NotebookError } from "../../src/cells/notebook-errors.ts";
import { readNotebook, writeNotebook } from "../../src/cells/notebook-file.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { Session } from "../../src/cells/session.ts";
import type { Result } from "../../src/cells/value.ts";
import { functions } from "../../src/library/index.ts";

const fileOf = (cells: readonly object[], trials: readonly object[] = []): string =>
  JSON.stringify({
    format: "spanwise-notebook",
    version: 1,
    title: "Hostile",
    cells: cells.map((cell, index) => ({ id: `c${index}`, ...cell })),
    trials,
  });
const derived = (name: string, formula: string) => ({ kind: "derived", name, formula });
const many = (count: number, formula: (index: number) => string, name = "v"): object[] =>
  Array.from({ length: count }, (_, index) => derived(`${name}${index}`, formula(index)));

/** Reads, compiles, runs, writes, opens and edits it; the results by id, the same from the plan and from the graph. */
async function livedThrough(file: string): Promise<(id: string) => string> {
  const notebook = readNotebook(file);
  const planned = runPlan(compile(notebook.cells, functions));
  expect(readNotebook(writeNotebook(notebook))).toEqual(notebook);
  const session = new Session(functions);
  session.open(notebook);
  await session.settled();
  const ids = notebook.cells.map(({ id }) => id);
  expect(ids.map((id) => told(session.result(id)))).toEqual(ids.map((id) => told(planned.get(id))));
  const first = new Map(ids.map((id) => [id, told(session.result(id))]));
  session.edit((now) => ({ ...now, cells: now.cells.slice(1) }));
  session.undo();
  await session.settled();
  expect(ids.every((id) => told(session.result(id)) === first.get(id))).toBe(true);
  return (id) => first.get(id) ?? "nothing";
}

function told(result: Result | undefined): string {
  if (!result) return "nothing";
  if (!result.ok) return result.error.code;
  return typeof result.value === "object" ? "an object" : String(result.value);
}

const refusalOf = (file: string): string => {
  try {
    readNotebook(file);
  } catch (error) {
    if (error instanceof NotebookError) return error.message;
    throw error;
  }
  return "none";
};

test("names that objects bring along are names like any others, and lead nowhere", async () => {
  const named = ["constructor", "toString", "hasOwnProperty", "valueOf", "prototype"];
  const at = await livedThrough(
    fileOf([
      ...named.map((name) => derived(name, "1 mm")),
      ...named.map((name) => derived(`x_${name}`, `${name} + 1 mm`)),
      derived("field", "x_constructor.constructor"),
      derived("called", "toString(1)"),
      derived("absent", "isPrototypeOf + 1"),
      derived("__proto__", "1"),
      { kind: "table", name: "rows", columns: [{ name: "constructor" }], rows: [["7"]] },
      derived("column", "sum(rows.constructor)"),
      derived("no_column", "rows.toString"),
    ]),
  );
  expect(named.map((_, index) => at(`c${index}`))).toEqual(named.map(() => "0.001"));
  expect(named.map((_, index) => at(`c${index + 5}`))).toEqual(named.map(() => "0.002"));
  const codes = ["wrong_shape", "wrong_shape", "unknown_name", "syntax", "an object", "7", "unknown_field"];
  expect(codes.map((_, index) => at(`c${index + 10}`))).toEqual(codes);
  expect(({} as Record<string, unknown>).x).toBeUndefined();
});

test("a prototype is taken neither as a key of a cell nor as what a trial sets", () => {
  const cell = `{"id": "a", "kind": "derived", "name": "a", "formula": "1", "__proto__": {"x": 1}}`;
  const file = `{"format": "spanwise-notebook", "version": 1, "title": "", "cells": [${cell}], "trials": []}`;
  expect(refusalOf(file)).toContain("cells[0]");
  const set = JSON.parse(`{"__proto__": "3"}`) as object;
  expect(refusalOf(fileOf([{ kind: "given", name: "a_b", formula: "1" }], [{ name: "x", set }]))).toContain(
    "trials[0]",
  );
});

test("brackets without end are refused before anything walks them", () => {
  expect(refusalOf("[".repeat(200_000))).toContain("brace");
  const deep = `{"format": "spanwise-notebook", "version": 1, "title": "", "cells": ${"[".repeat(5000)}${"]".repeat(5000)}}`;
  expect(refusalOf(deep)).toContain("brackets");
});

test("formulas that are too long or too deep say so", async () => {
  const deep = [
    "(".repeat(900),
    "-".repeat(1900),
    "2^".repeat(900),
    "not ".repeat(450),
    "[".repeat(900),
    "min(".repeat(400),
  ];
  const at = await livedThrough(
    fileOf([...deep.map((start, index) => derived(`d${index}`, `${start}1`)), derived("long", `${"1+".repeat(1e6)}1`)]),
  );
  expect(deep.map((_, index) => at(`c${index}`))).toEqual(deep.map(() => "too_deep"));
  expect(at("c6")).toBe("too_long");
});

test("function cells that call each other twofold sixty times over are cut short", async () => {
  const double = (index: number): string => (index === 0 ? "x + 1" : `f${index - 1}(x) + f${index - 1}(x + 1)`);
  const cells = Array.from({ length: 61 }, (_, index) => derived(`f${index}(x)`, double(index)));
  const at = await livedThrough(fileOf([...cells, derived("result", "f60(1)")]));
  expect(at("c61")).toBe("too_large");
});

test("five thousand cells in a chain, in a loop, of one name, or naming what is not there", async () => {
  const chain = await livedThrough(fileOf(many(5000, (index) => (index === 0 ? "1" : `v${index - 1} + 1`))));
  expect(chain("c4999")).toBe("5000");
  const loop = await livedThrough(fileOf(many(5000, (index) => `v${(index + 1) % 5000} + 1`)));
  expect(loop("c17")).toBe("loop");
  const same = await livedThrough(fileOf(many(5000, () => "1").map((cell) => ({ ...cell, name: "same" }))));
  expect(same("c17")).toBe("duplicate_name");
  const absent = await livedThrough(fileOf(many(2000, (index) => `absent_${index} + 1`)));
  expect(absent("c17")).toBe("unknown_name");
}, 60_000);

test("a loop of thousands names a few of its members and how many more there are", () => {
  const notebook = readNotebook(fileOf(many(5000, (index) => `v${(index + 1) % 5000}`)));
  const result = runPlan(compile(notebook.cells, functions)).get("c7");
  const message = result?.ok === false ? result.error.message : "";
  expect(message).toContain("4989 more");
  expect(message.length).toBeLessThan(400);
});

test("a table of twenty thousand rows is refused; one of ten thousand is computed, and two hundred lists from it", async () => {
  const table = (count: number) => ({
    kind: "table",
    name: "rows",
    columns: [{ name: "mass", unit: "g" }],
    rows: Array.from({ length: count }, (_, index) => [`${index} + 1`]),
  });
  expect((await livedThrough(fileOf([table(20_000)])))("c0")).toBe("too_large");
  const lists = many(200, (index) => (index === 0 ? "rows.mass" : `v${index - 1} + rows.mass`));
  const at = await livedThrough(fileOf([table(10_000), ...lists, derived("total", "sum(v199) / 1 kg")]));
  expect(Number(at("c201"))).toBeCloseTo((200 * 10_000 * 10_001) / 2 / 1000, 6);
}, 60_000);

test("a unit that is squared again and again, and numbers beyond all bounds, end as errors of their cells", async () => {
  const squares = many(60, (index) => (index === 0 ? "2 m" : `v${index - 1} * v${index - 1}`));
  const at = await livedThrough(
    fileOf([...squares, derived("tower", "2^(2^(2^20))"), derived("power", "(2 m)^999999999")]),
  );
  expect(at("c59")).toBe("waits");
  expect([at("c60"), at("c61")]).toEqual(["not_finite", "wrong_dimension"]);
});
