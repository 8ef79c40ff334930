import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Notebook } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { override } from "../../src/cells/override.ts";
import { runPlan } from "../../src/cells/plan.ts";
import type { Step } from "../../src/cells/step.ts";
import type { Result } from "../../src/cells/value.ts";
import { type Place, stepsBetween, variantsOf } from "../../src/cells/variants.ts";
import { countedFunctions } from "./counted-functions.ts";
import { cellsOf } from "./notebook-text.ts";

const cells = cellsOf(`given tip [deg] from 0 deg to 20 deg = 11 deg
given chord [mm] = 66 mm
table panels | length mm | root_chord mm | tip_chord mm | sweep mm | break deg | washout deg | thickness mm
| 110 | 70 | chord | 0 | 5 | 0 | 3
| 90 | chord | 44 | 8 | tip | 1 | 2.5
main = wing(panels)
eda [deg] = tick(equivalent_dihedral(main), "eda")
aside = tick(chord, "aside")
inverse = 1 / (tip / 1 deg - 5)`);
const notebook: Notebook = { title: "", cells, trials: [] };
const { table: functions, ran } = countedFunctions();
const program = compile(cells, functions);
const stepOf = (name: string) => program.byName.get(name) as Step;
const idOf = (name: string) => stepOf(name).id;
const degrees = (value: number): number => value * (Math.PI / 180);
const valueIn = (result: Result | undefined): unknown => (result?.ok ? result.value : result?.error.code);

const tip: Place = { id: idOf("tip"), entry: null };
const chord: Place = { id: idOf("chord"), entry: null };
const entry = (row: number, column: string): Place => ({ id: idOf("panels"), entry: { row, column } });

/** What the whole notebook gives with these written in. */
function planned(sets: Readonly<Record<string, string>>, name: string): unknown {
  const varied = Object.entries(sets).reduce((each, [target, text]) => override(each, target, text), notebook);
  return valueIn(runPlan(compile(varied.cells, functions)).get(idOf(name)));
}

describe("variants of a design", () => {
  test("give what the notebook gives with the same givens and entries written in, whatever was run before", () => {
    const variants = variantsOf(program, [tip, entry(0, "length"), chord, entry(1, "break")], [stepOf("eda")]);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 50, max: 150 }), fc.boolean(), (a, b, own) => {
        variants.run([degrees(a), b / 1000, 0.06, own ? degrees(b / 10) : Number.NaN]);
        const sets = { tip: `${a} deg`, "panels[1].length": `${b}`, chord: "60 mm" };
        const all = own ? { ...sets, "panels[2].break": `${b / 10}` } : sets;
        expect(valueIn(variants.result(0))).toBeCloseTo(planned(all, "eda") as number, 12);
      }),
      { seed: 60, numRuns: 50 },
    );
  });

  test("set entries of a table that nothing else moves", () => {
    const variants = variantsOf(program, [entry(0, "length")], [stepOf("eda"), stepOf("panels")]);
    variants.run([0.1]);
    expect(valueIn(variants.result(0))).toBe(planned({ "panels[1].length": "100" }, "eda"));
    variants.run([Number.NaN]);
    expect(valueIn(variants.result(0))).toBe(planned({}, "eda"));
    expect(variants.result(1)).toEqual(runPlan(program).get(idOf("panels")));
  });

  test("leave results that were handed out as they were", () => {
    const variants = variantsOf(program, [entry(0, "length")], [stepOf("panels")]);
    variants.run([0.1]);
    const first = variants.result(0);
    variants.run([0.2]);
    expect(valueIn(first)).toMatchObject({ length: [0.1, 0.09] });
    expect(valueIn(variants.result(0))).toMatchObject({ length: [0.2, 0.09] });
  });

  test("run only what stands between, and compute what is missing once", () => {
    ran();
    const variants = variantsOf(program, [tip], [stepOf("eda"), stepOf("aside")]);
    expect(ran()).toBe("aside eda");
    for (const value of [1, 2, 3]) variants.run([degrees(value)]);
    expect(ran()).toBe("eda eda eda");
  });

  test("tell what was wanted of a place itself", () => {
    const variants = variantsOf(program, [tip], [stepOf("tip"), stepOf("inverse")]);
    variants.run([degrees(5)]);
    expect([0, 1].map((index) => valueIn(variants.result(index)))).toEqual([degrees(5), "not_finite"]);
    variants.run([Number.NaN]);
    expect(valueIn(variants.result(0))).toBe(degrees(11));
  });
});

test("the steps between some cells and others are those that lead from one to the other, in order", () => {
  const between = (from: readonly string[], to: string) =>
    stepsBetween(program, new Set(from.map(idOf)), [stepOf(to)]).map(({ name }) => name);
  expect(between(["tip"], "eda")).toEqual(["panels", "main", "eda"]);
  expect(between(["tip"], "aside")).toEqual([]);
  expect(between(["chord"], "aside")).toEqual(["aside"]);
  expect(between(["tip", "panels"], "main")).toEqual(["panels", "main"]);
});
