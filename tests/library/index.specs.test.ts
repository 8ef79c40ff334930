import { describe, expect, test } from "vitest";
import { functions } from "../../src/library/index.ts";
import { dimensionless, equal } from "../../src/library/quantity.ts";
import type { AnyFunctionSpec, Fields, Shape } from "../../src/library/spec.ts";
import { isUnitFault, parseUnit } from "../../src/library/units.ts";
import { call, faultOf } from "./call.ts";
import { expectClose } from "./compare.ts";

const marks = ["verified", "derived", "own computation", "common practice", "from memory"];
const snakeCase = /^[a-z][a-z0-9]*(_[a-z0-9]+)*$/;

/** Every shape within a spec, with the path to it. */
function* shapesOf(fields: Fields, path: string): Generator<[string, Shape]> {
  for (const [name, shape] of Object.entries(fields)) yield* within(shape, `${path}.${name}`);
}
function* within(shape: Shape, path: string): Generator<[string, Shape]> {
  yield [path, shape];
  if (shape.kind === "list") yield* within(shape.of, `${path}[]`);
  if (shape.kind === "record") yield* shapesOf(shape.fields, path);
}
const all = (spec: AnyFunctionSpec): [string, Shape][] => [
  ...shapesOf(spec.parameters, spec.name),
  ...within(spec.result, `result of ${spec.name}`),
];

describe.each([...functions])("the spec of %s", (name, spec) => {
  test("has a name in snake case and so have its parameters and fields", () => {
    expect(name).toMatch(snakeCase);
    const paths = all(spec).map(([path]) => path.replace("result of ", "").replaceAll("[]", ""));
    for (const word of paths.flatMap((path) => path.split("."))) expect(word).toMatch(snakeCase);
  });

  test("says in one sentence what it does, under a topic", () => {
    expect(spec.summary).toMatch(/^[A-Z][^\n]*\.$/);
    expect(spec.topic).toMatch(/^[a-z]+$/);
  });

  test("says of every shape what it is", () => {
    // A table's column is a list whose summary is that of its elements.
    for (const [path, shape] of all(spec)) {
      expect(shape.summary ?? (shape.kind === "list" ? shape.of.summary : undefined), path).toBeTruthy();
    }
  });

  test("tells every number in a unit of its dimension", () => {
    for (const [path, shape] of all(spec)) {
      if (shape.kind !== "number") continue;
      const unit = parseUnit(shape.unit);
      if (isUnitFault(unit)) throw new Error(`${path}: ${shape.unit} is no unit`);
      expect(equal(unit.dimension, shape.dimension), path).toBe(true);
      if (shape.unit === "") expect(equal(shape.dimension, dimensionless), path).toBe(true);
    }
  });

  test("takes no default that its limits forbid", () => {
    for (const [path, shape] of all(spec)) {
      if (shape.default !== undefined) expect(faultOf(shape, shape.default, path)).toBe(null);
    }
  });

  test("gives the formula, and at least one source with its mark", () => {
    expect(spec.formula.trim()).not.toBe("");
    expect(spec.sources.length).toBeGreaterThan(0);
    for (const source of spec.sources) {
      expect(source.text.trim()).not.toBe("");
      expect(marks).toContain(source.mark);
    }
  });

  test("tells its errors and assumptions in sentences", () => {
    for (const sentence of [...spec.errors, ...spec.assumptions]) expect(sentence).toMatch(/^\S.*[^.]\.$|: [^.]+\.$/);
  });

  test("has at least one worked example with a summary and with what comes out", () => {
    expect(spec.examples.length).toBeGreaterThan(0);
    for (const example of spec.examples) {
      expect(example.summary.trim()).not.toBe("");
      expect(example.result).not.toEqual({});
    }
  });

  test("works element by element, or takes its list spread out, only where its parameters allow it", () => {
    const shapes = Object.values(spec.parameters);
    if (spec.elementwise) for (const shape of shapes) expect(["number", "any"]).toContain(shape.kind);
    if (spec.spread) expect(shapes.map((shape) => shape.kind)).toEqual(["list"]);
  });

  test("has a record tell itself in one line", () => {
    for (const [path, shape] of all(spec)) {
      if (shape.kind === "record" && shape.type !== null) expect(shape.text, path).toBeTypeOf("function");
    }
  });

  test.each(spec.examples.map((example) => [example.summary, example] as const))("example: %s", (_, example) => {
    const result = call(spec, example.arguments);
    expectClose(result, example.result, example.tolerance ?? 1e-9);
    expect(faultOf(spec.result, result, "result")).toBe(null);
    if (spec.result.kind === "record" && spec.result.text) {
      const line = (spec.result.text as (value: unknown) => string)(result);
      expect(line).not.toMatch(/NaN|undefined|\n/);
    }
  });
});
