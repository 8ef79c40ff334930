/**
 * Finds the shape of a formula from its tree and the shapes of the names in it, before anything is computed. The first
 * fault, inner before outer and left before right, is thrown as a FormulaError.
 */
import {
  agree,
  type Dimension,
  dimensionless,
  divide,
  equal,
  inWords,
  isDimensionless,
  join,
  multiply,
  power,
} from "../library/quantity.ts";
import type { NumberShape, Shape } from "../library/spec.ts";
import { nearest, unitOf, units } from "../library/units.ts";
import { FormulaError } from "./errors.ts";
import { checkCall } from "./formula-check-call.ts";
import { codeOf, listOf, toJoin } from "./formula-check-list.ts";
import { remedyFor } from "./formula-remedy.ts";
import type { Range, Tree } from "./formula-tree.ts";
import { capital, messages } from "./messages.ts";
import { constants } from "./names.ts";
import {
  booleanShape,
  describe,
  fieldOf,
  joinShapes,
  listShape,
  numberShape,
  numberWithin,
  textShape,
} from "./shapes.ts";
import type { Scope, TypedTree } from "./typed-tree.ts";

/** Checks a tree; `text` is its source, used in remedies. A °C may stand where `scale` allows it. */
export function check(tree: Tree, text: string, scope: Scope, scale = true): TypedTree {
  const inner = (part: Tree, allowed = false): TypedTree => check(part, text, scope, allowed);
  const at = tree.at;
  switch (tree.type) {
    case "number": {
      const unit = unitOf(tree.unit ?? "1");
      if (unit.offset !== 0 && !scale) throw new FormulaError("wrong_dimension", messages.scaleAlone, at);
      const shape = numberShape(unit.dimension, tree.unit ?? "1");
      return { type: "constant", value: finite(tree.number * unit.factor + unit.offset, at), shape, at };
    }
    case "text":
      return { type: "constant", value: tree.value, shape: textShape, at };
    case "boolean":
      return { type: "constant", value: tree.value, shape: booleanShape, at };
    case "name":
      return checkName(tree.name, at, scope);
    case "list":
      return listOf(
        tree.items.map((item) => inner(item)),
        at,
        text,
      );
    case "call":
      return checkCall(tree, text, scope, check);
    case "field":
      return checkField(inner(tree.of), tree.field, tree.fieldAt, at);
    case "element":
      return checkElement(inner(tree.of), inner(tree.index), at);
    case "negate": {
      const of = inner(tree.of);
      return { type: "negate", of, shape: likeNumber(of, "A minus sign"), at };
    }
    case "not": {
      const of = needBoolean(inner(tree.of), "not");
      return { type: "not", of, shape: booleanShape, at };
    }
    case "and":
    case "or": {
      const left = needBoolean(inner(tree.left), tree.type);
      const right = needBoolean(inner(tree.right), tree.type);
      return { type: tree.type, left, right, shape: booleanShape, at };
    }
    case "comparison":
      return checkComparison(tree, inner(tree.left, true), inner(tree.right, true), text);
    case "arithmetic":
      return checkArithmetic(tree, inner(tree.left), inner(tree.right), text);
    case "if": {
      const condition = needBoolean(inner(tree.condition), "if");
      const yes = inner(tree.yes);
      const no = inner(tree.no);
      const shape = joinShapes(yes.shape, no.shape);
      if (shape) return { type: "if", condition, yes, no, shape, at };
      const message = messages.branchesDiffer(describe(yes.shape), describe(no.shape), toJoin(no, yes.shape, text));
      throw new FormulaError(codeOf(yes.shape, no.shape), message, no.at);
    }
  }
}

function checkName(name: string, at: Range, scope: Scope): TypedTree {
  const parameter = scope.parameters?.get(name);
  if (parameter) return { type: "parameter", name, index: parameter.index, shape: parameter.shape, at };
  const constant = constants.get(name);
  if (constant) {
    const shape = numberShape(unitOf(constant.unit).dimension, constant.unit);
    return { type: "constant", value: constant.value, name, shape, at };
  }
  const named = scope.lookup(name);
  if (named && "shape" in named) return { type: "input", name, shape: named.shape, at };
  if (named && "waitsFor" in named) {
    throw new FormulaError("waits", messages.waits(named.waitsFor), at, named.waitsFor);
  }
  if (named && "isStudy" in named) throw new FormulaError("wrong_shape", messages.studyWithoutValue(name), at);
  if (named) {
    throw new FormulaError("wrong_shape", messages.functionWithoutCall(name, named.definition.parameters), at);
  }
  const parameters = scope.functions.get(name)?.parameters;
  if (parameters) {
    throw new FormulaError("wrong_shape", messages.functionWithoutCall(name, Object.keys(parameters)), at);
  }
  if (units.has(name)) throw new FormulaError("unknown_name", messages.unitAlone(name), at);
  const others = [...constants.keys(), "true", "false"];
  const ofCells = scope.near(name);
  const near = nearest(name, [...(scope.parameters?.keys() ?? []), ...(ofCells === null ? [] : [ofCells]), ...others]);
  throw new FormulaError("unknown_name", messages.unknownName(name, near), at);
}

function checkField(of: TypedTree, field: string, fieldAt: Range, at: Range): TypedTree {
  if (of.shape.kind !== "record") throw new FormulaError("wrong_shape", messages.noFields(describe(of.shape)), fieldAt);
  const shape = fieldOf(of.shape, field);
  if (shape) return { type: "field", of, field, shape, at };
  const all = Object.keys(of.shape.fields);
  throw new FormulaError("unknown_field", messages.unknownField(field, nearest(field, all), all), fieldAt);
}

function checkElement(of: TypedTree, index: TypedTree, at: Range): TypedTree {
  if (of.shape.kind !== "list") throw new FormulaError("wrong_shape", messages.notAList(describe(of.shape)), of.at);
  if (index.shape.kind !== "number") {
    throw new FormulaError("wrong_shape", messages.indexNumber(describe(index.shape)), index.at);
  }
  if (!isDimensionless(index.shape.dimension)) {
    throw new FormulaError("wrong_dimension", messages.indexNumber(describe(index.shape)), index.at);
  }
  return { type: "element", of, index, shape: of.shape.of, at };
}

function checkComparison(
  tree: Tree & { type: "comparison" },
  left: TypedTree,
  right: TypedTree,
  text: string,
): TypedTree {
  const [a, b] = [left.shape, right.shape];
  const list = a.kind === "list" ? left : b.kind === "list" ? right : null;
  if (list) throw new FormulaError("wrong_shape", messages.compareLists, list.at);
  const node: TypedTree = { type: "comparison", sign: tree.sign, left, right, shape: booleanShape, at: tree.at };
  if (a.kind === "number" && b.kind === "number") {
    if (agree(a.dimension, b.dimension)) return node;
    throw dimensionsDiffer("compare", left, a, right, b, text);
  }
  if (a.kind !== b.kind || a.kind === "record") {
    throw new FormulaError("wrong_shape", messages.compareKinds(capital(describe(a)), describe(b)), tree.at);
  }
  if (tree.sign === "=" || tree.sign === "!=") return node;
  throw new FormulaError("wrong_shape", messages.compareOrder(describe(a)), left.at);
}

function checkArithmetic(
  tree: Tree & { type: "arithmetic" },
  left: TypedTree,
  right: TypedTree,
  text: string,
): TypedTree {
  const a = likeNumber(left, `“${tree.sign}”`);
  const b = likeNumber(right, `“${tree.sign}”`);
  const number = arithmeticShape(tree, left, right, numberWithin(a), numberWithin(b), text);
  const shape = a.kind === "list" || b.kind === "list" ? listShape(number) : number;
  return { type: "arithmetic", sign: tree.sign, left, right, shape, at: tree.at };
}

function arithmeticShape(
  tree: Tree & { type: "arithmetic" },
  left: TypedTree,
  right: TypedTree,
  a: NumberShape | null,
  b: NumberShape | null,
  text: string,
): NumberShape {
  if (!a || !b) throw new Error("got a shape without a number, expected numbers or lists of them");
  switch (tree.sign) {
    case "*":
      return bounded(multiply(a.dimension, b.dimension), tree.at);
    case "/":
      return bounded(divide(a.dimension, b.dimension), tree.at);
    case "+":
    case "-": {
      if (!agree(a.dimension, b.dimension)) throw dimensionsDiffer(tree.sign, left, a, right, b, text);
      const joined = join(a.dimension, b.dimension);
      return a.unit === b.unit && equal(joined, a.dimension)
        ? numberShape(joined, unscaled(a.unit))
        : numberShape(joined);
    }
    case "^": {
      if (right.shape.kind === "list") throw new FormulaError("wrong_shape", messages.listPower, right.at);
      if (!isDimensionless(b.dimension)) {
        throw new FormulaError("wrong_dimension", messages.exponentWithoutDimension(inWords(b.dimension)), right.at);
      }
      if (isDimensionless(a.dimension)) return numberShape(dimensionless);
      const exponent = literalNumber(right);
      if (exponent === null) {
        throw new FormulaError("wrong_dimension", messages.exponentLiteral(inWords(a.dimension)), right.at);
      }
      return bounded(power(a.dimension, exponent), tree.at);
    }
  }
}

/** The number of a dimension that can be told: cells that square each other would soon have exponents beyond all floats. */
function bounded(dimension: Dimension, at: Range): NumberShape {
  if (dimension.every((exponent) => Math.abs(exponent) <= largestExponent)) return numberShape(dimension);
  throw new FormulaError("wrong_dimension", messages.exponentTooLarge(largestExponent), at);
}
const largestExponent = 99;

function dimensionsDiffer(
  sign: string,
  left: TypedTree,
  a: NumberShape,
  right: TypedTree,
  b: NumberShape,
  text: string,
): FormulaError {
  // What does not fit is the side that comes second, or a bare number beside a value with a unit.
  const [odd, wanted] = isDimensionless(a.dimension) ? [left, b] : [right, a];
  const remedy = remedyFor(odd, wanted.dimension, sign === "compare" ? wanted.unit : unscaled(wanted.unit), text);
  const message = messages.dimensionsDiffer(sign, inWords(a.dimension), inWords(b.dimension), remedy);
  return new FormulaError("wrong_dimension", message, odd.at);
}

/** Arithmetic with points of a scale gives no point of it: 20 °C less 5 °C is no 15 °C but 15 K. */
const unscaled = (unit: string): string => (unitOf(unit).offset === 0 ? unit : "K");

const literalNumber = (tree: TypedTree): number | null => {
  if (tree.type === "constant" && typeof tree.value === "number" && tree.name === undefined) return tree.value;
  const inner = tree.type === "negate" ? literalNumber(tree.of) : null;
  return inner === null ? null : -inner;
};

function likeNumber(tree: TypedTree, what: string): Shape {
  if (numberWithin(tree.shape)) return tree.shape;
  throw new FormulaError("wrong_shape", messages.needsNumber(what, describe(tree.shape)), tree.at);
}

function needBoolean(tree: TypedTree, word: string): TypedTree {
  if (tree.shape.kind === "boolean") return tree;
  throw new FormulaError("wrong_shape", messages.needsBoolean(`“${word}”`, describe(tree.shape)), tree.at);
}

function finite(value: number, at: Range): number {
  if (Number.isFinite(value)) return value;
  throw new FormulaError("not_finite", messages.notFinite, at);
}
