/** The closure of a call to a library function: evaluates the arguments, holds them to the spec's limits, computes. */
import type { AnyFunctionSpec, Notes, Refuse, Shape } from "../library/spec.ts";
import { FormulaError } from "./errors.ts";
import type { Range } from "./formula-tree.ts";
import { messages } from "./messages.ts";
import { fieldOf } from "./shapes.ts";
import { told } from "./told.ts";
import type { TypedTree } from "./typed-tree.ts";
import type { RecordValue, Run, Value } from "./value.ts";

type CallTree = TypedTree & { type: "call" };

export function compileCall(tree: CallTree, given: readonly (Run | null)[]): Run {
  const { spec, at } = tree;
  const names = Object.keys(spec.parameters);
  const places = new Map(names.map((name, index) => [name, tree.arguments[index]?.at ?? at]));
  const guards = names.map((name) => guardOf(name, spec.parameters[name] as Shape, places.get(name) ?? at));
  const refuse: Refuse = (parameter, message) => {
    throw new FormulaError("out_of_domain", message, (parameter !== null && places.get(parameter)) || at);
  };
  const one = (values: readonly (Value | undefined)[]): Value => {
    const bound: Record<string, unknown> = {};
    names.forEach((name, index) => {
      const value = values[index] ?? spec.parameters[name]?.default;
      bound[name] = value;
      if (value !== undefined) guards[index]?.(value);
    });
    return finiteResult(compute(spec, bound, refuse, at), tree.elementwise ? elementOf(tree.shape) : tree.shape, at);
  };
  if (!tree.elementwise) {
    return (inputs, parameters) => one(given.map((argument) => argument?.(inputs, parameters)));
  }
  return (inputs, parameters) => {
    const values = given.map((argument) => argument?.(inputs, parameters));
    const lists = values.filter((value) => Array.isArray(value));
    const length = lists[0]?.length ?? 0;
    const other = lists.find((list) => list.length !== length);
    if (other) throw new FormulaError("wrong_shape", messages.listLengths(length, other.length), at);
    return Array.from({ length }, (_, index) =>
      one(values.map((value) => (Array.isArray(value) ? (value[index] as Value) : value))),
    );
  };
}

function compute(spec: AnyFunctionSpec, bound: Record<string, unknown>, refuse: Refuse, at: Range): Value {
  try {
    return spec.compute(bound, refuse) as Value;
  } catch (error) {
    if (error instanceof FormulaError) throw error;
    const reason = error instanceof Error ? error.message : String(error);
    throw new FormulaError("out_of_domain", messages.functionFailed(spec.name, reason), at);
  }
}

type Guard = (value: Value) => void;

/** The check of a parameter's limits, on a number, each number of a list, each entry of a table; null without any. */
function guardOf(name: string, shape: Shape, at: Range): Guard | null {
  switch (shape.kind) {
    case "number":
    case "any":
      return numberGuard(shape, shape.kind === "number" ? shape.unit : "1", () => name, at);
    case "list":
      return listGuard(shape.of, (index) => messages.elementOf(name, index), at);
    case "record": {
      if (shape.type !== null) return null;
      const columns = Object.entries(shape.fields).flatMap(([column, field]) => {
        const inner = field.kind === "list" && listGuard(field.of, (row) => messages.entryOf(column, row), at);
        return inner ? [{ column, inner }] : [];
      });
      return (value) => {
        for (const { column, inner } of columns) {
          const list = Object.hasOwn(value as RecordValue, column) && (value as RecordValue)[column];
          if (list) inner(list);
        }
      };
    }
    default:
      return null;
  }
}

function listGuard(of: Shape, what: (index: number) => string, at: Range): Guard | null {
  if (of.kind !== "number" && of.kind !== "any") return null;
  let index = 0;
  const guard = numberGuard(of, of.kind === "number" ? of.unit : "1", () => what(index + 1), at);
  return (
    guard &&
    ((value) => {
      for (index = 0; index < (value as readonly Value[]).length; index++)
        guard((value as readonly Value[])[index] as Value);
    })
  );
}

function numberGuard(notes: Notes, unit: string, what: () => string, at: Range): Guard | null {
  const { min, max, above, below } = notes;
  if (min === undefined && max === undefined && above === undefined && below === undefined) return null;
  const fail = (message: (what: string, limit: string, got: string, strict: boolean) => string) => {
    return (limit: number, value: number, strict: boolean): never => {
      throw new FormulaError("out_of_domain", message(what(), told(limit, unit), told(value, unit), strict), at);
    };
  };
  const [tooLow, tooHigh] = [fail(messages.belowRange), fail(messages.aboveRange)];
  return (value) => {
    const number = value as number;
    if (min !== undefined && number < min) tooLow(min, number, false);
    if (above !== undefined && number <= above) tooLow(above, number, true);
    if (max !== undefined && number > max) tooHigh(max, number, false);
    if (below !== undefined && number >= below) tooHigh(below, number, true);
  };
}

/** The value itself, once every number in it is known to be finite. */
function finiteResult(value: Value, shape: Shape, at: Range): Value {
  if (!allFinite(value, shape)) throw new FormulaError("not_finite", messages.notFinite, at);
  return value;
}

/** A field that a record leaves out is no fault. */
function allFinite(value: Value | undefined, shape: Shape): boolean {
  if (value === undefined) return true;
  if (typeof value === "number") return Number.isFinite(value);
  if (shape.kind === "list") return (value as readonly Value[]).every((each) => allFinite(each, shape.of));
  if (shape.kind !== "record") return true;
  for (const name in shape.fields) {
    const field = fieldOf(shape, name);
    if (field && !allFinite((value as RecordValue)[name], field)) return false;
  }
  return true;
}

const elementOf = (shape: Shape): Shape => (shape.kind === "list" ? shape.of : shape);
