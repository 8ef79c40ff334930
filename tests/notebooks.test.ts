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

  test("evaluates without an error, and every check holds", () => {
    const program = compile(readNotebook(text).cells, functions);
    const results = [...runPlan(program)];
    expect(results.flatMap(([id, result]) => (result.ok ? [] : [`${id}: ${result.error.message}`]))).toEqual([]);
    const failed = program.steps.filter(({ id, cell }) => cell.kind === "check" && !holds(id));
    expect(failed.map((step) => step.name)).toEqual([]);

    function holds(of: string): boolean {
      return results.some(([id, result]) => id === of && result.ok && result.value === true);
    }
  });

  test.each(Object.entries(readNotebook(text).expect ?? {}))("%s is %s", (name, expected) => {
    const [value = "", tolerance = ""] = expected.split("±");
    const probe = (id: string, formula: string) => ({ id, kind: "derived", name: id, formula }) as const;
    const cells = [
      ...readNotebook(text).cells,
      probe("expect_difference", `abs(${name} - (${value}))`),
      probe("expect_within", `expect_difference <= ${tolerance}`),
    ];
    const results = runPlan(compile(cells, functions));
    expect(results.get("expect_within")).toMatchObject({ ok: true, value: true });
  });
});
