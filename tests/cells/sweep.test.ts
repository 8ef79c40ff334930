import { describe, expect, test } from "vitest";
import { compile } from "../../src/cells/compile.ts";
import { editCell } from "../../src/cells/notebook.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { sweep } from "../../src/cells/sweep.ts";
import type { Result } from "../../src/cells/value.ts";
import { countedFunctions } from "./counted-functions.ts";
import { cellsOf } from "./notebook-text.ts";

const cells = cellsOf(`given tip [deg] from 0 deg to 20 deg = 11 deg
given chord [mm] = 66 mm
half(x) = tick(x, "half") / 2
table panels | length mm | root_chord mm | tip_chord mm | sweep mm | break deg | washout deg | thickness mm
| 110 | 70 | chord | 0 | 5 | 0 | 3
| 90 | chord | 44 | 8 | tip | 1 | 2.5
main = wing(panels)
eda [deg] = tick(equivalent_dihedral(main), "eda")
aside = tick(chord, "aside")
loss = tilt_loss(main) + 0 * half(tip / 1 rad)
inverse = 1 / (tip / 1 deg - 5)`);
const { table: functions, ran } = countedFunctions();
const program = compile(cells, functions);
const idOf = (name: string): string => program.byName.get(name)?.id ?? "";
const degrees = (value: number): number => value * (Math.PI / 180);
const valueIn = (result: Result | undefined): unknown => (result?.ok ? result.value : result?.error.code);

/** What the whole notebook gives with the given written as this. */
function planned(formula: string, names: readonly string[]): unknown[] {
  const notebook = { title: "", cells, trials: [] };
  const varied = editCell(notebook, idOf("tip"), { formula });
  const results = runPlan(compile(varied.cells, functions));
  return names.map((name) => valueIn(results.get(idOf(name))));
}

describe("a sweep of a given", () => {
  const names = ["eda", "loss", "aside", "tip", "inverse"];

  test("gives at each value what the notebook gives with that value put in", () => {
    const values = [0, 3, 5, 11, 20];
    const present = runPlan(program);
    const rows = sweep(program, (id) => present.get(id), idOf("tip"), values.map(degrees), names.map(idOf));
    expect(rows.map((row) => row.map(valueIn))).toEqual(values.map((value) => planned(`${value} deg`, names)));
  });

  test("gives an error where a value cannot be computed, and goes on", () => {
    const rows = sweep(program, () => undefined, idOf("tip"), [4, 5, 6].map(degrees), [idOf("inverse")]);
    expect(rows.map(([row]) => valueIn(row))).toEqual([expect.closeTo(-1, 9), "not_finite", expect.closeTo(1, 9)]);
  });

  test("runs only what follows from it and is wanted", () => {
    const present = runPlan(program);
    ran();
    sweep(program, (id) => present.get(id), idOf("tip"), [1, 2].map(degrees), [idOf("eda"), idOf("aside")]);
    expect(ran()).toBe("eda eda");
    sweep(program, (id) => present.get(id), idOf("tip"), [1].map(degrees), [idOf("aside")]);
    expect(ran()).toBe("");
  });

  test("computes what is not there yet, once", () => {
    ran();
    const rows = sweep(program, () => undefined, idOf("tip"), [1, 2].map(degrees), [idOf("aside")]);
    expect(rows.map(([row]) => valueIn(row))).toEqual([0.066, 0.066]);
    expect(ran()).toBe("aside eda half");
  });

  test("of a cell without a value is misuse", () => {
    expect(() => sweep(program, () => undefined, "nope", [1], [])).toThrow("expected a given with a value");
  });
});
