import type { AnyFunctionSpec, Shape } from "../library/spec.ts";
import type { ArithmeticSign, ComparisonSign, Range } from "./formula-tree.ts";
import type { Value } from "./value.ts";

/** A formula's tree after checking: every node knows its shape, every name what it stands for. */
export type TypedTree = { readonly shape: Shape; readonly at: Range } & (
  | { readonly type: "constant"; readonly value: Value; readonly name?: string }
  /** The value of another cell. */
  | { readonly type: "input"; readonly name: string }
  /** A parameter of the function cell whose body this is. */
  | { readonly type: "parameter"; readonly name: string; readonly index: number }
  | { readonly type: "list"; readonly items: readonly TypedTree[] }
  | { readonly type: "field"; readonly of: TypedTree; readonly field: string }
  | { readonly type: "element"; readonly of: TypedTree; readonly index: TypedTree }
  | { readonly type: "negate" | "not"; readonly of: TypedTree }
  | {
      readonly type: "arithmetic";
      readonly sign: ArithmeticSign;
      readonly left: TypedTree;
      readonly right: TypedTree;
    }
  | {
      readonly type: "comparison";
      readonly sign: ComparisonSign;
      readonly left: TypedTree;
      readonly right: TypedTree;
    }
  | { readonly type: "and" | "or"; readonly left: TypedTree; readonly right: TypedTree }
  | { readonly type: "if"; readonly condition: TypedTree; readonly yes: TypedTree; readonly no: TypedTree }
  /** A library function; arguments in the order of its parameters, null where one is left out. */
  | {
      readonly type: "call";
      readonly spec: AnyFunctionSpec;
      readonly arguments: readonly (TypedTree | null)[];
      /** Some of its arguments are lists that it takes element by element. */
      readonly elementwise: boolean;
    }
  /** A function cell, its body checked for the shapes of these arguments. */
  | {
      readonly type: "apply";
      readonly name: string;
      readonly parameters: readonly string[];
      readonly arguments: readonly TypedTree[];
      readonly body: TypedTree;
    }
);

/** What the names in a formula stand for. */
export interface Scope {
  /** What a cell's name stands for, or undefined where there is none. */
  lookup(name: string): Named | undefined;
  readonly functions: ReadonlyMap<string, AnyFunctionSpec>;
  /** The name of a cell that is nearest to a misspelt one, for "did you mean"; null where none is near. */
  near(name: string): string | null;
  /** Parameters of the function cell being checked, by name. */
  readonly parameters?: ReadonlyMap<string, { readonly shape: Shape; readonly index: number }>;
  /** What was met so far, the bodies of the function cells that are called included. */
  readonly calls: Calls;
}

export interface Calls {
  /** Calls of function cells. */
  count: number;
  /** A function of the library is called that is slow. */
  isSlow: boolean;
}

/** A cell's value by its shape, a function cell, a study, or a cell without any: it waits for the cell at the root. */
export type Named =
  | { readonly shape: Shape }
  | { readonly definition: FunctionCell }
  | { readonly isStudy: true }
  | { readonly waitsFor: string };

/** A function cell that was read. */
export interface FunctionCell {
  readonly parameters: readonly string[];
  /** Names of the cells whose values its body takes, also by way of other function cells. */
  readonly inputs: readonly string[];
  /** How deep its body goes, with the bodies of the function cells put in that it calls. */
  readonly height: number;
  /** Its body checked for arguments of these shapes; the same shapes give the same tree. Throws a FormulaError. */
  check(shapes: readonly Shape[]): CheckedBody;
}

/** The body of a function cell, and what a call of it comes to at most, itself included. */
export interface CheckedBody {
  readonly body: TypedTree;
  readonly calls: Readonly<Calls>;
}
