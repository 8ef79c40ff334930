import { errorCodes } from "../../src/cells/errors.ts";
import type { RecordValue, Result, Value } from "../../src/cells/value.ts";
import type { Shape } from "../../src/library/spec.ts";

/** What is wrong with a result, or null: a value that is not of its shape, or an error that no person could use. */
export function resultFault(result: Result | undefined, text: string): string | null {
  if (result === undefined) return "no result";
  if (result.ok) return valueFault(result.value, result.shape, "value");
  const { code, message, at, root } = result.error;
  if (!errorCodes.includes(code)) return `the code ${code}`;
  if (!/^\S.*[.?]$/su.test(message) || /undefined|NaN|Infinity|null|\[object/.test(message))
    return `the sentence ${message}`;
  if (!(at[0] >= 0 && at[0] <= at[1] && at[1] <= text.length)) return `the range ${at} in ${text.length} characters`;
  return root === "" ? "no root" : null;
}

function valueFault(value: Value | undefined, shape: Shape, place: string): string | null {
  switch (shape.kind) {
    case "number":
      return typeof value === "number" && Number.isFinite(value) ? null : `${place} is ${value}`;
    case "any":
      return `${place} has no dimension`;
    case "text":
      return typeof value === "string" ? null : `${place} is no text`;
    case "boolean":
      return typeof value === "boolean" ? null : `${place} is no boolean`;
    case "list": {
      if (!Array.isArray(value)) return `${place} is no list`;
      const faults = value.map((each, index) => valueFault(each, shape.of, `${place}[${index + 1}]`));
      return faults.find((fault) => fault !== null) ?? null;
    }
    case "record": {
      if (typeof value !== "object" || Array.isArray(value)) return `${place} is no record`;
      for (const [name, field] of Object.entries(shape.fields)) {
        const inner = (value as RecordValue)[name];
        const fault = inner === undefined && field.optional ? null : valueFault(inner, field, `${place}.${name}`);
        if (fault) return fault;
      }
      return null;
    }
  }
}
