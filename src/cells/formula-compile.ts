/** Turns a checked tree into a closure over plain SI values. All checking is done: only values can still go wrong. */
import { FormulaError } from "./errors.ts";
import { compileCall } from "./formula-compile-call.ts";
import type { ArithmeticSign, ComparisonSign, Range } from "./formula-tree.ts";
import { messages } from "./messages.ts";
import { describe, fieldOf } from "./shapes.ts";
import type { TypedTree } from "./typed-tree.ts";
import type { Inputs, RecordValue, Run, Value } from "./value.ts";

type NumberRun = (inputs: Inputs, parameters: readonly Value[]) => number;

/** What the closures of one cell share. */
export interface Compilation {
  /** Where in the inputs each name stands. */
  readonly slots: ReadonlyMap<string, number>;
  /** Bodies of function cells compiled so far: the same body, called twice, is compiled once. */
  readonly bodies: Map<TypedTree, Run>;
}

/** A new compilation; slots count the names in the order given. */
export const compilationOf = (names: readonly string[]): Compilation => ({
  slots: new Map(names.map((name, index) => [name, index])),
  bodies: new Map(),
});

export function compileTree(tree: TypedTree, compilation: Compilation): Run {
  const inner = (part: TypedTree): Run => compileTree(part, compilation);
  switch (tree.type) {
    case "constant": {
      const { value } = tree;
      return () => value;
    }
    case "input": {
      const slot = compilation.slots.get(tree.name);
      if (slot === undefined) throw new Error(`got the name ${tree.name}, expected one of the cell's inputs`);
      return (inputs) => (inputs[slot] as Inputs[number]).value;
    }
    case "parameter": {
      const { index } = tree;
      return (_, parameters) => parameters[index] as Value;
    }
    case "list": {
      const items = tree.items.map(inner);
      return (inputs, parameters) => items.map((item) => item(inputs, parameters));
    }
    case "field": {
      const of = inner(tree.of);
      const { field } = tree;
      const record = tree.of.shape;
      // Its own shape may have been given another unit by the cell.
      const shape = record.kind === "record" && fieldOf(record, field);
      if (shape && shape.optional === true) {
        return optionalField(of, field, messages.fieldLeftOut(field, describe(record), shape.absent), tree.at);
      }
      return (inputs, parameters) => (of(inputs, parameters) as RecordValue)[field] as Value;
    }
    case "element":
      return element(inner(tree.of), inner(tree.index), tree.index.at);
    case "negate": {
      const of = inner(tree.of);
      if (tree.shape.kind === "list") {
        return (inputs, parameters) => (of(inputs, parameters) as readonly number[]).map((each) => -each);
      }
      return (inputs, parameters) => -(of(inputs, parameters) as number);
    }
    case "not": {
      const of = inner(tree.of);
      return (inputs, parameters) => !of(inputs, parameters);
    }
    case "and": {
      const [left, right] = [inner(tree.left), inner(tree.right)];
      return (inputs, parameters) => left(inputs, parameters) && right(inputs, parameters);
    }
    case "or": {
      const [left, right] = [inner(tree.left), inner(tree.right)];
      return (inputs, parameters) => left(inputs, parameters) || right(inputs, parameters);
    }
    case "comparison":
      return comparison(tree.sign, inner(tree.left), inner(tree.right));
    case "arithmetic": {
      const [left, right] = [inner(tree.left), inner(tree.right)];
      if (tree.shape.kind === "list") return listArithmetic(tree.sign, left, right, tree.at);
      return arithmetic(tree.sign, left as NumberRun, right as NumberRun, tree.at);
    }
    case "if": {
      const [condition, yes, no] = [inner(tree.condition), inner(tree.yes), inner(tree.no)];
      return (inputs, parameters) => (condition(inputs, parameters) ? yes : no)(inputs, parameters);
    }
    case "call":
      return compileCall(
        tree,
        tree.arguments.map((argument) => argument && inner(argument)),
      );
    case "apply":
      return apply(tree.arguments.map(inner), bodyOf(tree.body, compilation), tree.at, tree.name);
  }
}

/** True where two numbers are the same to 12 significant figures. */
export function equalNumbers(a: number, b: number): boolean {
  if (a === b) return true;
  const apart = Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
  return apart <= 1e-13 || (apart < 1e-11 && a.toPrecision(12) === b.toPrecision(12));
}

/** One operation on SI numbers, without the check that its result is finite. */
export function operate(sign: ArithmeticSign, a: number, b: number): number {
  switch (sign) {
    case "+":
      return a + b;
    case "-":
      return a - b;
    case "*":
      return a * b;
    case "/":
      return a / b;
    case "^":
      return a ** b;
  }
}

/** Applies `each` along lists; one value stands for all where the other side is a list. */
export function broadcast(left: Value, right: Value, at: Range, each: (a: number, b: number) => number): Value {
  if (!Array.isArray(left)) return (right as readonly number[]).map((b) => each(left as number, b));
  if (!Array.isArray(right)) return left.map((a) => each(a, right as number));
  if (left.length !== right.length) {
    throw new FormulaError("wrong_shape", messages.listLengths(left.length, right.length), at);
  }
  return left.map((a, index) => each(a, right[index] as number));
}

function arithmetic(sign: ArithmeticSign, left: NumberRun, right: NumberRun, at: Range): Run {
  switch (sign) {
    case "+":
      return (inputs, parameters) => finite(left(inputs, parameters) + right(inputs, parameters), at);
    case "-":
      return (inputs, parameters) => finite(left(inputs, parameters) - right(inputs, parameters), at);
    case "*":
      return (inputs, parameters) => finite(left(inputs, parameters) * right(inputs, parameters), at);
    case "/":
      return (inputs, parameters) => finite(left(inputs, parameters) / right(inputs, parameters), at);
    case "^":
      return (inputs, parameters) => raised(left(inputs, parameters), right(inputs, parameters), at);
  }
}

function listArithmetic(sign: ArithmeticSign, left: Run, right: Run, at: Range): Run {
  const each = (a: number, b: number): number => (sign === "^" ? raised(a, b, at) : finite(operate(sign, a, b), at));
  return (inputs, parameters) => broadcast(left(inputs, parameters), right(inputs, parameters), at, each);
}

function comparison(sign: ComparisonSign, left: Run, right: Run): Run {
  const holds = comparisons[sign];
  return (inputs, parameters) => holds(left(inputs, parameters), right(inputs, parameters));
}

const same = (a: Value, b: Value): boolean => (typeof a === "number" ? equalNumbers(a, b as number) : a === b);

/** Of two numbers exactly one of less, equal and more holds. */
const comparisons: Readonly<Record<ComparisonSign, (a: Value, b: Value) => boolean>> = {
  "<": (a, b) => a < b && !same(a, b),
  "<=": (a, b) => a <= b || same(a, b),
  ">": (a, b) => a > b && !same(a, b),
  ">=": (a, b) => a >= b || same(a, b),
  "=": same,
  "!=": (a, b) => !same(a, b),
};

/** A field that records of its kind may lack: without it, an error that says so. */
function optionalField(of: Run, field: string, without: string, at: Range): Run {
  return (inputs, parameters) => {
    const found = (of(inputs, parameters) as RecordValue)[field];
    if (found === undefined) throw new FormulaError("out_of_domain", without, at);
    return found;
  };
}

function element(of: Run, index: Run, at: Range): Run {
  return (inputs, parameters) => {
    const list = of(inputs, parameters) as readonly Value[];
    const asked = index(inputs, parameters) as number;
    const found = Number.isInteger(asked) ? list[asked - 1] : undefined;
    if (found === undefined) throw new FormulaError("out_of_domain", messages.indexRange(asked, list.length), at);
    return found;
  };
}

function bodyOf(tree: TypedTree, compilation: Compilation): Run {
  const known = compilation.bodies.get(tree);
  if (known) return known;
  const body = compileTree(tree, compilation);
  compilation.bodies.set(tree, body);
  return body;
}

function apply(given: readonly Run[], body: Run, at: Range, name: string): Run {
  return (inputs, parameters) => {
    const values = given.map((argument) => argument(inputs, parameters));
    try {
      return body(inputs, values);
    } catch (error) {
      if (!(error instanceof FormulaError)) throw error;
      throw new FormulaError(error.code, messages.within(name, error.message), at);
    }
  };
}

function raised(base: number, exponent: number, at: Range): number {
  if (base < 0 && !Number.isInteger(exponent)) throw new FormulaError("not_finite", messages.noSuchPower, at);
  return finite(base ** exponent, at);
}

function finite(value: number, at: Range): number {
  if (Number.isFinite(value)) return value;
  throw new FormulaError("not_finite", messages.notFinite, at);
}
