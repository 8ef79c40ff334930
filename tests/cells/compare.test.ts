import { describe, expect, test } from "vitest";
import type { Notebook } from "../../src/cells/cell.ts";
import { type Comparison, compareTrials } from "../../src/cells/compare.ts";
import { functions } from "../../src/library/index.ts";
import { cellsOf } from "./notebook-text.ts";

const notebook: Notebook = {
  title: "",
  cells: cellsOf(`given a [mm] = 10 mm
given b = 2
twice [mm] = 2 * a
inverse = 1 / (b - 3)
label = "x"
check long = twice >= 16 mm and twice > 12 mm
check light = a * b < 25 mm
check flag = b != 5`),
  trials: [
    { name: "longer", set: { a: "11 mm" } },
    { name: "three", set: { b: "3", a: "7 mm" } },
    { name: "broken", set: { c: "1" } },
    { name: "same", set: { a: "1 cm" } },
  ],
};
const row = ({ rows }: Comparison, text: string) => {
  const found = rows.find((each) => each.text === text);
  if (!found) throw new Error(`got no row ${text}, expected one`);
  return found;
};
const values = (comparison: Comparison, text: string) =>
  row(comparison, text).values.map(({ result }) =>
    result === null ? null : result.ok ? result.value : result.error.code,
  );

describe("trials side by side", () => {
  const all = compareTrials(notebook, functions);

  test("stand in columns after the baseline, one that cannot be made with its reason", () => {
    expect(all.columns).toEqual([
      { trial: null, error: null },
      { trial: "longer", error: null },
      { trial: "three", error: null },
      { trial: "broken", error: "Trial “broken” sets c: There is no cell named c." },
      { trial: "same", error: null },
    ]);
  });

  test("have a row for every derived number, then for every check", () => {
    expect(all.rows.map(({ text, kind }) => `${kind} ${text}`)).toEqual([
      "value twice",
      "value inverse",
      "check long",
      "check light",
      "check flag",
    ]);
    expect(values(all, "twice")).toEqual([0.02, 0.022, 0.014, null, 0.02]);
    expect(values(all, "inverse")).toEqual([-1, -1, "not_finite", null, -1]);
    expect(values(all, "long")).toEqual([true, true, false, null, true]);
  });

  test("say how far each value moved from the baseline", () => {
    const moved = row(all, "twice").values;
    expect(moved.map(({ moved: each }) => each)).toEqual([
      null,
      expect.closeTo(0.002, 12),
      expect.closeTo(-0.006, 12),
      null,
      0,
    ]);
    expect(moved[2]?.share).toBeCloseTo(-0.3, 12);
    expect(row(all, "inverse").values[2]).toMatchObject({ moved: null, isFailing: true });
  });

  test("mark the best where the checks say what is better, and what fails", () => {
    expect(row(all, "twice").goal).toBe("most");
    expect(row(all, "twice").values.map(({ isBest }) => isBest)).toEqual([false, true, false, false, false]);
    expect(row(all, "inverse").goal).toBeNull();
    expect(row(all, "inverse").values.some(({ isBest }) => isBest)).toBe(false);
    expect(row(all, "long").values.map(({ isFailing }) => isFailing)).toEqual([false, false, true, false, false]);
    expect(row(all, "light").values.map(({ isBest }) => isBest)).toEqual([true, false, false, false, true]);
    expect(row(all, "flag").values.some(({ isBest }) => isBest)).toBe(false);
  });

  test("take what differs by rounding alone for as good", () => {
    const cells = cellsOf(`given a = 1
total = 0.1 * a + 0.2 * a
check small = total < 1`);
    const trials = [
      { name: "thrice", set: { a: "3 / 3 * (1 + 1e-15)" } },
      { name: "more", set: { a: "2" } },
    ];
    const { values } = row(compareTrials({ title: "", cells, trials }, functions), "total");
    expect(values.map(({ isBest }) => isBest)).toEqual([true, true, false]);
  });

  test("compare chosen formulas and trials, in the order asked for", () => {
    const some = compareTrials(notebook, functions, { texts: ["a * b", "1 +"], trials: ["three", "longer"] });
    expect(some.columns.map(({ trial }) => trial)).toEqual([null, "three", "longer"]);
    expect(values(some, "a * b")).toEqual([0.02, 0.021, 0.022].map((each) => expect.closeTo(each, 12)));
    expect(row(some, "a * b").goal).toBe("least");
    expect(values(some, "1 +")).toEqual(["syntax", "syntax", "syntax"]);
  });

  test("call what moved less than can be seen no difference", () => {
    const seen = (band: number) =>
      row(compareTrials(notebook, functions, { bandOf: () => band }), "twice").values.map(({ isSeen }) => isSeen);
    expect(seen(0.003)).toEqual([true, false, true, true, false]);
    expect(seen(0.0001)).toEqual([true, true, true, true, false]);
  });
});
