/** The worked examples of a function, computed: what is given, and what comes out. */
import type { RecordValue, Value } from "../../cells/index.ts";
import type { AnyFunctionSpec, Shape } from "../../library/index.ts";
import { formatValue } from "../format.ts";

export interface WorkedExample {
  readonly summary: string;
  /** Name and value; of a table its columns. */
  readonly given: readonly (readonly [string, string])[];
  readonly result: string;
  /** Of a record: the fields that the example is about. */
  readonly fields: readonly (readonly [string, string])[];
}

/** Throws where the function refuses its own example, which its tests do not allow. */
export function workedExamples(spec: AnyFunctionSpec): WorkedExample[] {
  return spec.examples.map(({ summary, arguments: given, result: expected }) => {
    const value = computed(spec, given);
    return {
      summary,
      given: Object.entries(given).flatMap(([name, each]) => linesOf(name, each as Value, spec.parameters[name])),
      result: formatValue(value, spec.result),
      fields: fieldsOf(value, spec.result, Object.keys(Object(expected))),
    };
  });
}

function computed(spec: AnyFunctionSpec, given: Readonly<Record<string, unknown>>): Value {
  const values: Record<string, unknown> = {};
  for (const [name, shape] of Object.entries(spec.parameters)) values[name] = given[name] ?? shape.default;
  return spec.compute(values, (parameter, message) => {
    throw new Error(`got a refusal of ${parameter ?? "an argument"} by ${spec.name}: ${message}`);
  }) as Value;
}

function linesOf(name: string, value: Value, shape: Shape | undefined): (readonly [string, string])[] {
  if (!shape) return [];
  if (shape.kind !== "record" || shape.type !== null) return [[name, formatValue(value, shape)]];
  return Object.entries(shape.fields).flatMap(([column, of]) => {
    const entries = (value as RecordValue)[column];
    return entries === undefined ? [] : [[`${name}.${column}`, formatValue(entries, of)] as const];
  });
}

function fieldsOf(value: Value, shape: Shape, names: readonly string[]): (readonly [string, string])[] {
  if (shape.kind !== "record") return [];
  return names.flatMap((name) => {
    const [field, of] = [(value as RecordValue)[name], shape.fields[name]];
    return field === undefined || !of ? [] : [[name, formatValue(field, of)] as const];
  });
}
