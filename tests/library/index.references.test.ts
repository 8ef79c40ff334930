import { functions } from "../../src/library/index.ts";
import { divide, multiply } from "../../src/library/quantity.ts";
import type { Shape } from "../../src/library/spec.ts";
import { unitOf } from "../../src/library/units.ts";
import { type Computed, type Entry, holdLedger } from "../references/ledger.ts";
import { call } from "./call.ts";

/** What an entry computes: a quantity, a product of quantities, a ratio, or a function's result or one number of it. */
type Input =
  | string
  | { readonly product: readonly string[] }
  | { readonly ratio: readonly [over: Input, under: Input] }
  | { readonly function: string; readonly arguments: Readonly<Record<string, unknown>>; readonly result?: string };

const ledgers = import.meta.glob<readonly Entry<Input>[]>("../references/*.json", { eager: true, import: "default" });

for (const [path, entries] of Object.entries(ledgers)) holdLedger(path, entries, evaluate);

function evaluate(input: Input): Computed {
  if (typeof input === "string") return quantity(input);
  if ("product" in input) {
    return input.product.map(quantity).reduce((a, b) => ({
      value: a.value * b.value,
      dimension: multiply(a.dimension, b.dimension),
    }));
  }
  if ("ratio" in input) {
    const [over, under] = [evaluate(input.ratio[0]), evaluate(input.ratio[1])];
    return { value: over.value / under.value, dimension: divide(over.dimension, under.dimension) };
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
  const { function: name, arguments: values } = given as Exclude<
    Input,
    string | { product: unknown } | { ratio: unknown }
  >;
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
