/** Checks a call: of a library function against its spec, of a function cell against the shapes of its arguments. */
import { agree, type Dimension, dimensionless, isDimensionless, join, power } from "../library/quantity.ts";
import type { AnyFunctionSpec, RecordShape, Shape } from "../library/spec.ts";
import { nearest, unitOf } from "../library/units.ts";
import { FormulaError } from "./errors.ts";
import { listOf } from "./formula-check-list.ts";
import { limits } from "./formula-parse.ts";
import { remedyFor } from "./formula-remedy.ts";
import type { Argument, CallTree, Range, Tree } from "./formula-tree.ts";
import { messages } from "./messages.ts";
import { describe, fieldOf, listShape, numberShape, sameShape } from "./shapes.ts";
import type { CheckedBody, FunctionCell, Scope, TypedTree } from "./typed-tree.ts";

type Check = (tree: Tree, text: string, scope: Scope, scale?: boolean) => TypedTree;

export function checkCall(tree: CallTree, text: string, scope: Scope, check: Check): TypedTree {
  const spec = scope.functions.get(tree.name);
  if (spec) return checkLibraryCall(spec, tree, text, scope, check);
  const named = scope.parameters?.has(tree.name) ? undefined : scope.lookup(tree.name);
  if (named && "definition" in named) return checkFunctionCell(named.definition, tree, text, scope, check);
  if (named && "waitsFor" in named) {
    throw new FormulaError("waits", messages.waits(named.waitsFor), tree.nameAt, named.waitsFor);
  }
  if (named || scope.parameters?.has(tree.name)) {
    throw new FormulaError("wrong_shape", messages.notAFunction(tree.name), tree.nameAt);
  }
  const ofCells = scope.near(tree.name);
  const near = nearest(tree.name, [...scope.functions.keys(), ...(ofCells === null ? [] : [ofCells])]);
  throw new FormulaError("unknown_name", messages.unknownFunction(tree.name, near), tree.nameAt);
}

function checkLibraryCall(spec: AnyFunctionSpec, tree: CallTree, text: string, scope: Scope, check: Check): TypedTree {
  scope.calls.isSlow ||= spec.isSlow === true;
  const names = Object.keys(spec.parameters);
  const typed = (argument: Argument): TypedTree => check(argument.value, text, scope, true);
  const call = new Call(spec, tree.at, text);
  const [only] = tree.arguments;
  if (spec.spread && tree.arguments.length > 0 && tree.arguments.every((argument) => argument.name === null)) {
    const items = tree.arguments.map(typed);
    const single = items.length === 1 && items[0]?.shape.kind === "list" ? items[0] : null;
    return call.finish([single ?? listOf(items, spanOf(tree.arguments, only?.at ?? tree.at), text)]);
  }
  const slots = arrange(tree, names, spec.name);
  return call.finish(slots.map((argument) => argument && typed(argument)));
}

/** Arguments by parameter, from positional and then named ones; null where one is left out. */
function arrange(tree: CallTree, names: readonly string[], name: string): (Argument | null)[] {
  const slots: (Argument | null)[] = names.map(() => null);
  tree.arguments.forEach((argument, position) => {
    const index = argument.name === null ? position : names.indexOf(argument.name);
    if (argument.name === null && index >= names.length) {
      throw new FormulaError("wrong_argument", messages.tooManyArguments(name, names.length), argument.at);
    }
    if (index < 0) {
      const asked = argument.name ?? "";
      const message = messages.unknownArgument(name, asked, nearest(asked, names), names);
      throw new FormulaError("wrong_argument", message, argument.at);
    }
    if (slots[index]) {
      throw new FormulaError("wrong_argument", messages.argumentTwice(names[index] ?? ""), argument.at);
    }
    slots[index] = argument;
  });
  return slots;
}

/** The checks of one call to a library function; `any` is the dimension bound to its parameters of any dimension. */
class Call {
  private any: Dimension | null = null;
  private anyUnit: string | null = null;

  constructor(
    private readonly spec: AnyFunctionSpec,
    private readonly at: Range,
    private readonly text: string,
  ) {}

  finish(given: readonly (TypedTree | null)[]): TypedTree {
    const parameters = Object.entries(this.spec.parameters);
    let elementwise = false;
    parameters.forEach(([name, parameter], index) => {
      const argument = given[index];
      if (!argument) {
        this.leaveOut(name, parameter);
        return;
      }
      const lifted = this.spec.elementwise === true && argument.shape.kind === "list";
      elementwise ||= lifted;
      this.fit(
        lifted && argument.shape.kind === "list" ? argument.shape.of : argument.shape,
        parameter,
        name,
        argument,
      );
    });
    const result = this.result(this.spec.result);
    const shape = elementwise ? listShape(result) : result;
    return { type: "call", spec: this.spec, arguments: given, elementwise, shape, at: this.at };
  }

  private leaveOut(name: string, parameter: Shape): void {
    const missing = new FormulaError(
      "wrong_argument",
      messages.missingArgument(this.spec.name, name, parameter.summary ?? ""),
      this.at,
    );
    if (parameter.optional) return;
    if (parameter.default === undefined) throw missing;
    if (parameter.kind === "any" && this.any && !isDimensionless(this.any)) throw missing;
  }

  private fit(got: Shape, wanted: Shape, name: string, argument: TypedTree): void {
    switch (wanted.kind) {
      case "number":
        if (got.kind !== "number") throw this.misfit("wrong_shape", name, wanted, got, argument, null);
        if (!agree(got.dimension, wanted.dimension)) {
          // People measure angles in degrees, also where a function is defined by radians.
          const unit = wanted.unit === "rad" ? "deg" : wanted.unit;
          const remedy = remedyFor(argument, wanted.dimension, unit, this.text);
          throw this.misfit("wrong_dimension", name, wanted, got, argument, remedy);
        }
        return;
      case "any":
        if (got.kind !== "number") throw this.misfit("wrong_shape", name, wanted, got, argument, null);
        if (this.any && !agree(this.any, got.dimension)) {
          const remedy = remedyFor(argument, this.any, this.anyUnit ?? "", this.text);
          throw this.misfit("wrong_dimension", name, numberShape(this.any), got, argument, remedy);
        }
        this.anyUnit ??= got.unit;
        this.any = this.any ? join(this.any, got.dimension) : got.dimension;
        return;
      case "list":
        if (got.kind !== "list") throw this.misfit("wrong_shape", name, wanted, got, argument, null);
        this.fit(got.of, wanted.of, name, argument);
        return;
      case "record":
        if (got.kind !== "record" || (wanted.type !== null && wanted.type !== got.type)) {
          throw this.misfit("wrong_shape", name, wanted, got, argument, null);
        }
        if (wanted.type === null) this.fitColumns(got, wanted, name, argument);
        return;
      default:
        if (got.kind !== wanted.kind) throw this.misfit("wrong_shape", name, wanted, got, argument, null);
    }
  }

  private fitColumns(got: RecordShape, wanted: RecordShape, name: string, argument: TypedTree): void {
    for (const [column, shape] of Object.entries(wanted.fields)) {
      const found = fieldOf(got, column);
      if (found) this.fit(found, shape, `column ${column} of ${name}`, argument);
      else if (!shape.optional) {
        if (got.type !== null) throw this.misfit("wrong_shape", name, wanted, got, argument, null);
        const summary = (shape.kind === "list" ? shape.of.summary : shape.summary) ?? "";
        throw new FormulaError("wrong_argument", messages.missingColumn(name, column, summary), argument.at);
      }
    }
  }

  private misfit(
    code: "wrong_shape" | "wrong_dimension",
    name: string,
    wanted: Shape,
    got: Shape,
    argument: TypedTree,
    remedy: string | null,
  ): FormulaError {
    return new FormulaError(code, messages.argumentShape(name, describe(wanted), describe(got), remedy), argument.at);
  }

  /** The result with the bound dimension in it. */
  private result(shape: Shape): Shape {
    if (shape.kind === "list") return listShape(this.result(shape.of));
    if (shape.kind !== "any") return shape;
    const bound = this.any ?? dimensionless;
    const keepsUnit = shape.power === 1 && this.anyUnit !== null && sameDimension(bound, this.anyUnit);
    return keepsUnit ? numberShape(bound, this.anyUnit ?? "1") : numberShape(power(bound, shape.power));
  }
}

function checkFunctionCell(cell: FunctionCell, tree: CallTree, text: string, scope: Scope, check: Check): TypedTree {
  const slots = arrange(tree, cell.parameters, tree.name);
  const given = slots.map((argument, index) => {
    if (argument) return check(argument.value, text, scope, true);
    const parameter = cell.parameters[index] ?? "";
    throw new FormulaError("wrong_argument", messages.missingArgument(tree.name, parameter, ""), tree.at);
  });
  const { body, calls } = bodyOf(cell, given, tree);
  scope.calls.count += calls.count;
  scope.calls.isSlow ||= calls.isSlow;
  if (scope.calls.count > limits.calls)
    throw new FormulaError("too_large", messages.tooManyCalls(limits.calls), tree.at);
  const { parameters } = cell;
  return { type: "apply", name: tree.name, parameters, arguments: given, body, shape: body.shape, at: tree.at };
}

function bodyOf(cell: FunctionCell, given: readonly TypedTree[], tree: CallTree): CheckedBody {
  try {
    return cell.check(given.map((argument) => argument.shape));
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    if (error.code === "too_large") throw new FormulaError(error.code, error.message, tree.at);
    throw new FormulaError(error.code, messages.within(tree.name, error.message), tree.at, error.root);
  }
}

const sameDimension = (dimension: Dimension, unit: string): boolean =>
  sameShape(numberShape(dimension), numberShape(unitOf(unit).dimension));

const spanOf = (parts: readonly Argument[], otherwise: Range): Range => [
  parts[0]?.at[0] ?? otherwise[0],
  parts.at(-1)?.at[1] ?? otherwise[1],
];
