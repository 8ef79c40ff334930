import type { AnyFunctionSpec, Shape } from "../../src/library/spec.ts";

/** What a test sees where a function refuses its arguments. */
export class Refusal extends Error {
  constructor(
    readonly parameter: string | null,
    message: string,
  ) {
    super(message);
  }
}

export const refuse = (parameter: string | null, message: string): never => {
  throw new Refusal(parameter, message);
};

/** Calls a function by its spec: fills in defaults, holds the arguments to their shapes, and computes. */
export function call(spec: unknown, given: Readonly<Record<string, unknown>>): unknown {
  const { name, parameters, compute } = spec as AnyFunctionSpec;
  for (const argument of Object.keys(given)) {
    if (!(argument in parameters)) throw new Error(`got the argument ${argument}, expected a parameter of ${name}`);
  }
  const values: Record<string, unknown> = {};
  for (const [parameter, shape] of Object.entries(parameters)) {
    values[parameter] = given[parameter] ?? shape.default;
    const fault = faultOf(shape, values[parameter], parameter);
    if (fault !== null) throw new Refusal(parameter, fault);
  }
  return compute(values, refuse);
}

/** Where a value is not of its shape or beyond the limits that the shape notes: what is wrong, or null. */
export function faultOf(shape: Shape, value: unknown, place: string): string | null {
  if (value === undefined) return shape.optional ? null : `${place} is missing`;
  switch (shape.kind) {
    case "number":
    case "any":
      if (typeof value !== "number" || !Number.isFinite(value)) return `${place} is no finite number but ${value}`;
      if (shape.min !== undefined && value < shape.min) return `${place} is ${value}, below ${shape.min}`;
      if (shape.max !== undefined && value > shape.max) return `${place} is ${value}, above ${shape.max}`;
      if (shape.above !== undefined && value <= shape.above) return `${place} is ${value}, not above ${shape.above}`;
      if (shape.below !== undefined && value >= shape.below) return `${place} is ${value}, not below ${shape.below}`;
      return null;
    case "text":
      return typeof value === "string" ? null : `${place} is no text`;
    case "boolean":
      return typeof value === "boolean" ? null : `${place} is no boolean`;
    case "list":
      if (!Array.isArray(value)) return `${place} is no list`;
      return first(value.map((element, index) => faultOf(shape.of, element, `${place}[${index + 1}]`)));
    case "record": {
      if (typeof value !== "object" || value === null) return `${place} is no record`;
      const fields = value as Readonly<Record<string, unknown>>;
      const stranger = Object.keys(fields).find((field) => !(field in shape.fields));
      if (stranger !== undefined) return `${place} has the field ${stranger}, which its shape lacks`;
      return first(Object.entries(shape.fields).map(([field, of]) => faultOf(of, fields[field], `${place}.${field}`)));
    }
  }
}

const first = (faults: readonly (string | null)[]): string | null => faults.find((fault) => fault !== null) ?? null;
