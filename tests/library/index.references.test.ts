import { afterAll, describe, expect, test } from "vitest";
import { functions } from "../../src/library/index.ts";
import { agree, type Dimension, multiply } from "../../src/library/quantity.ts";
import type { Shape } from "../../src/library/spec.ts";
import { unitOf } from "../../src/library/units.ts";
import { call } from "./call.ts";

/** What an entry computes: a quantity, a product of quantities, or a function's result or one number of it. */
type Input =
  | string
  | { readonly product: readonly string[] }
  | { readonly function: string; readonly arguments: Readonly<Record<string, unknown>>; readonly result?: string };

/** One value that stands outside of our code. `value` and `tolerance` are in `unit`. */
interface Entry {
  readonly id: string;
  readonly input: Input;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  readonly mark: string;
  readonly tolerance: number;
  readonly why: string;
}

const keys = ["id", "input", "value", "unit", "source", "mark", "tolerance", "why"];
const marks = ["verified", "derived", "own computation", "common practice", "from memory"];
const ledgers = import.meta.glob<readonly Entry[]>("../references/*.json", { eager: true, import: "default" });
const nameOf = (path: string) => path.replace(/^.*\/|\.json$/g, "");

/** Entries whose result came three times nearer than their tolerance asks, so that it may be tightened. */
const near: string[] = [];
afterAll(() => {
  if (near.length > 0) {
    console.info(`${near.length} references are met three times better than their tolerance:\n  ${near.join("\n  ")}`);
  }
});

describe.each(Object.entries(ledgers))("the ledger %s", (path, entries) => {
  test("names each entry once and completely", () => {
    expect(new Set(entries.map((entry) => entry.id)).size).toBe(entries.length);
    for (const entry of entries) {
      expect(Object.keys(entry), entry.id).toEqual(keys);
      expect(marks, entry.id).toContain(entry.mark);
      expect(entry.tolerance, entry.id).toBeGreaterThan(0);
      for (const text of [entry.id, entry.source, entry.why]) expect(text.trim(), entry.id).not.toBe("");
    }
  });

  test.each(entries.map((entry) => [entry.id, entry] as const))("%s", (id, entry) => {
    const unit = unitOf(entry.unit);
    const computed = evaluate(entry.input);
    expect(agree(computed.dimension, unit.dimension), `${id} is no value in ${entry.unit}`).toBe(true);
    const found = (computed.value - unit.offset) / unit.factor;
    const off = Math.abs(found - entry.value);
    expect(off, `got ${found} ${entry.unit}, ${entry.source} has ${entry.value}`).toBeLessThanOrEqual(entry.tolerance);
    if (off * 3 < entry.tolerance && canTighten(entry)) {
      near.push(`${nameOf(path)}: ${id} (off by ${off.toPrecision(2)}; ${entry.why})`);
    }
  });
});

/** A tolerance of half the last digit of the value, or that of plain arithmetic, says all that it can already. */
function canTighten({ value, tolerance }: Entry): boolean {
  const [digits = "", power = "0"] = String(value).split("e");
  const lastDigit = 10 ** (Number(power) - (digits.split(".")[1]?.length ?? 0));
  return tolerance > 0.51 * lastDigit && tolerance > 1e-6 * Math.abs(value);
}

interface Computed {
  readonly value: number;
  readonly dimension: Dimension;
}

function evaluate(input: Input): Computed {
  if (typeof input === "string") return quantity(input);
  if ("product" in input) {
    return input.product.map(quantity).reduce((a, b) => ({
      value: a.value * b.value,
      dimension: multiply(a.dimension, b.dimension),
    }));
  }
  const spec = functions.get(input.function);
  if (!spec) throw new Error(`got the function ${input.function}, expected one of the library`);
  return pick(argument(input), spec.result, input.result ?? "");
}

/** "120 mm", "-5 °C" or a bare number in SI. */
function quantity(text: string): Computed {
  const match = /^(-?\d+(?:\.\d+)?(?:e-?\d+)?) ?(.*)$/.exec(text);
  if (!match) throw new Error(`got "${text}", expected a number with its unit`);
  const unit = unitOf(match[2] || "1");
  return { value: Number(match[1]) * unit.factor + unit.offset, dimension: unit.dimension };
}

/** An argument in SI: a quantity, a number, `{"text"}`, a list or record of arguments, or the result of a function. */
function argument(given: unknown): unknown {
  if (typeof given === "string") return quantity(given).value;
  if (Array.isArray(given)) return given.map(argument);
  if (typeof given !== "object" || given === null) return given;
  if ("text" in given) return given.text;
  if (!("function" in given)) return mapped(given);
  const { function: name, arguments: values } = given as Exclude<Input, string | { product: unknown }>;
  return call(functions.get(name), mapped(values));
}

const mapped = (record: object) =>
  Object.fromEntries(Object.entries(record).map(([key, each]) => [key, argument(each)]));

/** One number of a result, by fields and elements counted from 1, as in `stations.y[2]`, with its dimension. */
function pick(result: unknown, of: Shape, path: string): Computed {
  let value = result;
  let shape = of;
  for (const step of path.match(/\w+/g) ?? []) {
    if (shape.kind === "list") {
      value = (value as readonly unknown[])[Number(step) - 1];
      shape = shape.of;
    } else if (shape.kind === "record" && shape.fields[step]) {
      value = (value as Readonly<Record<string, unknown>>)[step];
      shape = shape.fields[step];
    } else throw new Error(`got the step ${step} of ${path}, expected a field or element`);
  }
  if (shape.kind !== "number" || typeof value !== "number") throw new Error(`got no number at "${path}"`);
  return { value, dimension: shape.dimension };
}
