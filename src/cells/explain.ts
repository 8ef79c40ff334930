/** Why a number is what it is: what its formula takes, what it was computed from, and what it feeds. */
import type { AnyFunctionSpec } from "../library/spec.ts";
import { FormulaError } from "./errors.ts";
import { compilationOf, compileTree } from "./formula-compile.ts";
import type { Program, Step } from "./step.ts";
import type { TypedTree } from "./typed-tree.ts";
import type { Ok, Result, Value } from "./value.ts";

export interface Explanation {
  readonly step: Step;
  /** The cells its formula names, function cells among them, in order of appearance. */
  readonly takes: readonly Step[];
  /** The cells whose formulas name it. */
  readonly feeds: readonly Step[];
  /** The library functions that its formula calls, in order of appearance. */
  readonly functions: readonly AnyFunctionSpec[];
  /** The value of a part of its formula, with the numbers that are in it now; null where it cannot be told. */
  valueOf(part: TypedTree): Value | null;
}

/** Explains a cell by id; null for a cell that computes nothing. */
export function explain(program: Program, results: (id: string) => Result | undefined, id: string): Explanation | null {
  const place = program.structure.placeOfId.get(id);
  const step = place === undefined ? undefined : program.steps[place];
  if (place === undefined || !step) return null;
  const at = (places: readonly number[]): Step[] => [...new Set(places)].flatMap((each) => program.steps[each] ?? []);
  return {
    step,
    takes: at(program.structure.needs[place] ?? []),
    feeds: at(program.structure.neededBy[place] ?? []),
    functions: step.tree ? functionsIn(step.tree) : [],
    valueOf: valuesOf(step, program, results),
  };
}

/** Every part of a checked formula, the outer before the inner, left to right; bodies of function cells left out. */
export function partsOf(tree: TypedTree): TypedTree[] {
  return [tree, ...childrenOf(tree).flatMap(partsOf)];
}

function functionsIn(tree: TypedTree): AnyFunctionSpec[] {
  return [...new Set(partsOf(tree).flatMap((part) => (part.type === "call" ? part.spec : [])))];
}

function childrenOf(tree: TypedTree): readonly TypedTree[] {
  switch (tree.type) {
    case "constant":
    case "input":
    case "parameter":
      return [];
    case "list":
      return tree.items;
    case "field":
    case "negate":
    case "not":
      return [tree.of];
    case "element":
      return [tree.of, tree.index];
    case "if":
      return [tree.condition, tree.yes, tree.no];
    case "call":
      return tree.arguments.filter((argument) => argument !== null);
    case "apply":
      return tree.arguments;
    default:
      return [tree.left, tree.right];
  }
}

function valuesOf(step: Step, program: Program, results: (id: string) => Result | undefined): Explanation["valueOf"] {
  const names = step.inputs.map((id) => program.byId.get(id)?.name ?? id);
  const inputs = step.inputs.map(results);
  const compilation = compilationOf(names);
  return (part) => {
    if (!inputs.every((input): input is Ok => input?.ok === true)) return null;
    try {
      return compileTree(part, compilation)(inputs, []);
    } catch (error) {
      if (error instanceof FormulaError) return null;
      throw error;
    }
  };
}
