import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { compile } from "../src/cells/compile.ts";
import { readNotebook, writeNotebook } from "../src/cells/notebook-file.ts";
import { runPlan } from "../src/cells/plan.ts";
import { functions } from "../src/library/index.ts";
import { root } from "../src/tools/place.js";

const folder = join(root, "notebooks");
const names = readdirSync(folder);

test("the folder of notebooks holds notebooks only", () => {
  expect(names.filter((name) => !name.endsWith(".json"))).toEqual([]);
});

describe.each(names)("%s", (name) => {
  const text = readFileSync(join(folder, name), "utf8");

  test("reads, and is written back byte for byte", () => {
    expect(writeNotebook(readNotebook(text))).toBe(text);
  });

  const notebook = readNotebook(text);
  const expected = Object.entries(notebook.expect ?? {});

  test("evaluates without an error, every check holds, and what is expected comes out", () => {
    const program = compile([...notebook.cells, ...expected.flatMap(probesOf)], functions);
    const results = runPlan(program);
    const faults = [...results].flatMap(([id, result]) => (result.ok ? [] : [`${id}: ${result.error.message}`]));
    expect(faults).toEqual([]);
    const failed = program.steps.filter(({ id, cell }) => cell.kind === "check" && outcome(id) !== true);
    expect(failed.map((step) => step.name)).toEqual([]);
    const wrong = expected.filter((_, index) => outcome(`expect_within_${index}`) !== true);
    expect(wrong.map(([name, told]) => `${name} is not ${told}`)).toEqual([]);

    function outcome(of: string): unknown {
      const result = results.get(of);
      return result?.ok ? result.value : undefined;
    }
  });
});

/** Cells that are true where a value comes out as expected, written as "value ± tolerance". */
function probesOf([name, told]: readonly [string, string], index: number) {
  const [value = "", tolerance = ""] = told.split("±");
  const probe = (id: string, formula: string) => ({ id, kind: "derived", name: id, formula }) as const;
  return [
    probe(`expect_off_${index}`, `abs(${name} - (${value}))`),
    probe(`expect_within_${index}`, `expect_off_${index} <= ${tolerance}`),
  ];
}
