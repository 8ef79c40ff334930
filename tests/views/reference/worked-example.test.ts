import { expect, test } from "vitest";
import { type AnyFunctionSpec, functions } from "../../../src/library/index.ts";
import { workedExamples } from "../../../src/views/reference/worked-example.ts";

const examples = (name: string) => workedExamples(functions.get(name) as AnyFunctionSpec);

test("an example is computed: what was given, in the units of the parameters, and what comes out", () => {
  expect(examples("equivalent_dihedral")[1]).toMatchObject({
    given: [["wing", "1000 mm span, 2 panels a side"]],
    result: "15 deg",
    fields: [],
  });
  expect(examples("sqrt")[0]).toMatchObject({ given: [["value", "0.0225"]], result: "0.15" });
});

test("a table is given by its columns; of a record the fields are told that the example is about", () => {
  const [first] = examples("wing");
  expect(first?.given[0]).toEqual(["panels.length", expect.stringMatching(/^\[.+\] mm$/)]);
  expect(first?.fields.map(([name]) => name)).toContain("span");
  expect(first?.result).toMatch(/mm span/);
});

test("a refusal of an example is told, not shown as a result", () => {
  const refusing = {
    ...(functions.get("sqrt") as AnyFunctionSpec),
    compute: (_: unknown, refuse: (p: null, m: string) => never) => refuse(null, "no"),
  };
  expect(() => workedExamples(refusing as AnyFunctionSpec)).toThrow("sqrt: no");
});

test("every example of the library can be told", () => {
  for (const spec of functions.values()) {
    expect(JSON.stringify(workedExamples(spec))).not.toMatch(/undefined|no number|\[object/);
  }
});
