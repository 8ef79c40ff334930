import { describe, expect, test } from "vitest";
import { compile } from "../../src/cells/compile.ts";
import { OnDemand } from "../../src/cells/on-demand.ts";
import { countedFunctions } from "./counted-functions.ts";
import { cellsOf } from "./notebook-text.ts";

const text = 'given a = 1\nb = tick(a, "b")\nc = tick(b + 1, "c")\nd = tick(4, "d")\ndecision whether';

describe("results on demand", () => {
  test("run what a cell needs and nothing else, and nothing twice", () => {
    const { table, ran } = countedFunctions();
    const [program, results] = [compile(cellsOf(text), table), new OnDemand()];
    expect(results.result(program, "3")).toMatchObject({ ok: true, value: 2 });
    expect(ran()).toBe("b c");
    expect(results.result(program, "2")).toMatchObject({ value: 1 });
    expect(ran()).toBe("");
  });

  test("follow the program that is handed over, also where cells came and went", () => {
    const { table, ran } = countedFunctions();
    const results = new OnDemand();
    const before = compile(cellsOf(text), table);
    results.result(before, "3");
    ran();
    const after = compile(cellsOf(text.replace("a = 1", "a = 5")), table, before);
    expect(results.result(after, "3")).toMatchObject({ value: 6 });
    const shorter = compile(cellsOf("given a = 1"), table, after);
    expect(results.result(shorter, "3")).toBeUndefined();
    expect(results.result(compile(cellsOf(text), table), "3")).toMatchObject({ value: 2 });
  });

  test("are not there for a cell that computes nothing", () => {
    const { table } = countedFunctions();
    expect(new OnDemand().result(compile(cellsOf(text), table), "5")).toBeUndefined();
  });
});
