/** The step of one cell, from what it says and from the steps of the names it uses. */
import type { FunctionTable } from "../library/spec.ts";
import type { DerivedCell, GivenCell } from "./cell.ts";
import { compileChart, compileParts } from "./compile-parts.ts";
import { compileStudy } from "./compile-study.ts";
import { compileTable } from "./compile-table.ts";
import { checkWithUnit } from "./declared-unit.ts";
import { FormulaError } from "./errors.ts";
import { check } from "./formula-check.ts";
import { type Compilation, compilationOf, compileTree } from "./formula-compile.ts";
import { compileMargin, fitting } from "./formula-margin.ts";
import { nodes, type Tree } from "./formula-tree.ts";
import { functionCell } from "./function-cell.ts";
import { rangeOf, readPlusMinus } from "./given.ts";
import { messages } from "./messages.ts";
import type { Part, Reading } from "./reading.ts";
import { booleanShape, describe } from "./shapes.ts";
import { refuseNames } from "./standalone-number.ts";
import type { Face, Step } from "./step.ts";
import { type Computation, cellError, type Mentions, runnerOf } from "./step-run.ts";
import type { Named, Scope, TypedTree } from "./typed-tree.ts";
import type { Inputs } from "./value.ts";

/** What a cell can see of the others while it is compiled. */
export interface Surroundings {
  readonly functions: FunctionTable;
  byName(name: string): Step | undefined;
  /** The name nearest to a misspelt one, another than `except`. */
  near(name: string, except?: string): string | null;
}

/** Compiles a cell whose name and place are sound; what is wrong with its formulas becomes the step's error. */
export function compileStep(reading: Reading, around: Surroundings, needed: readonly Step[]): Step {
  const needs = needed.map(faceOf);
  try {
    return { ...stepOf(reading, around, needed), needs };
  } catch (error) {
    if (error instanceof FormulaError) return { ...failedStep(reading, error), needs };
    throw error;
  }
}

/** The step of a cell that fails before anything is computed. */
export function failedStep(reading: Reading, fault: FormulaError): Step {
  const error = cellError(fault, rootOf(reading));
  return { ...blank(reading), error, hasFault: true, run: () => ({ ok: false, error }) };
}

function stepOf(reading: Reading, around: Surroundings, needed: readonly Step[]): Step {
  const { cell, parts } = reading;
  const { inputs, names } = inputsOf(needed, around);
  const frame = { ...blank(reading), inputs };
  const compilation = compilationOf(names);
  const scope: Scope = {
    functions: around.functions,
    near: (name) => around.near(name, reading.signature?.name),
    lookup: (name) => namedOf(around.byName(name)),
    calls: { count: 0, isSlow: false },
  };
  const root = rootOf(reading);
  const mentions = mentionsOf(parts, names, cell.kind === "table" ? cell.columns.map(({ name }) => name) : []);
  const runner: Runner = (computation) => runnerOf(root, mentions, computation);
  switch (cell.kind) {
    case "given":
    case "derived":
    case "check": {
      const { text, tree } = onlyPart(parts);
      if (cell.kind === "given") refuseNames(tree, around.functions);
      const parameters = reading.signature?.parameters;
      if (cell.kind === "derived" && parameters) {
        const definition = functionCell(parameters, tree, cell.unit, text, scope, names);
        return { ...frame, definition, run: runner({ run: () => false, shape: booleanShape }) };
      }
      const typed = check(tree, text, scope);
      const { isSlow } = scope.calls;
      if (cell.kind === "check") return { ...frame, isSlow, ...checkStep(typed, compilation, runner) };
      return { ...frame, isSlow, ...valueStep(cell, typed, text, compilation, runner, around.functions) };
    }
    case "table": {
      const { shape, run } = compileTable(cell, parts, scope, compilation);
      return { ...frame, isSlow: scope.calls.isSlow, shape, run: runner({ run, shape }) };
    }
    case "drawing":
    case "sheet": {
      const { text, tree } = onlyPart(parts);
      return { ...frame, ...plainStep(check(tree, text, scope), compilation, runner) };
    }
    case "chart":
      return { ...frame, ...compileChart(cell, parts, scope, compilation, around.byName) };
    case "study":
      return { ...frame, run: runner(compileStudy(cell, parts, scope, around.byName)) };
    case "question":
    case "note":
      return { ...frame, ...compileParts(parts, cell.id, scope, compilation) };
    case "decision":
      throw new Error("got a decision, expected a cell that computes");
  }
}

type Runner = (computation: Computation) => Step["run"];

function plainStep(tree: TypedTree, compilation: Compilation, runner: Runner): Pick<Step, "tree" | "shape" | "run"> {
  const { shape } = tree;
  return { tree, shape, run: runner({ run: compileTree(tree, compilation), shape }) };
}

function valueStep(
  cell: GivenCell | DerivedCell,
  typed: TypedTree,
  text: string,
  compilation: Compilation,
  runner: Runner,
  functions: FunctionTable,
): Partial<Step> {
  const tree = checkWithUnit(typed, cell.unit, text);
  const shape = tree.shape.kind === "list" ? tree.shape.of : tree.shape;
  if (cell.fraction !== undefined && (shape.kind !== "number" || shape.unit !== "in")) {
    throw new FormulaError("unknown_unit", messages.fractionUnit, tree.at);
  }
  const step = plainStep(tree, compilation, runner);
  if (cell.kind !== "given") return step;
  const unit = cell.unit ?? (shape.kind === "number" ? shape.unit : "1");
  const plusMinus = cell.plus_minus ? readPlusMinus(cell.plus_minus, tree.shape, unit, functions, false) : null;
  return { ...step, range: rangeOf(cell, tree, functions), plusMinus };
}

function checkStep(tree: TypedTree, compilation: Compilation, runner: Runner): Partial<Step> {
  if (tree.shape.kind !== "boolean") {
    throw new FormulaError("wrong_shape", messages.checkNeedsBoolean(describe(tree.shape)), tree.at);
  }
  const { shape } = tree;
  const [run, marginOf] = [compileTree(tree, compilation), compileMargin(tree, compilation)];
  const margin = (inputs: Inputs, holds: boolean) => fitting(marginOf(inputs), holds);
  return { tree, shape, run: runner({ run, shape, margin }) };
}

/** The inputs of a step and their names: those it uses itself, and those of the function cells it calls. */
function inputsOf(needed: readonly Step[], around: Surroundings): { inputs: string[]; names: string[] } {
  const found = new Map<string, string>();
  for (const step of needed) {
    const names = step.definition ? step.definition.inputs : [step.name ?? step.id];
    for (const name of names) {
      const input = around.byName(name);
      if (input && !input.definition) found.set(name, input.id);
    }
  }
  return { inputs: [...found.values()], names: [...found.keys()] };
}

/** What the name of a step stands for in formulas. */
export function namedOf(step: Step | undefined): Named | undefined {
  if (!step) return undefined;
  if (step.error) return { waitsFor: step.error.root };
  if (step.definition) return { definition: step.definition };
  if (step.cell.kind === "study") return { isStudy: true };
  return step.shape ? { shape: step.shape } : undefined;
}

/** Where each input is first named; the whole of the first formula for what only a function cell takes. */
function mentionsOf(parts: readonly Part[], names: readonly string[], columns: readonly string[]): Mentions {
  return (input) => {
    for (const { tree, place } of parts) {
      if (tree instanceof FormulaError) continue;
      for (const node of nodes(tree)) {
        if (node.type !== "name" || node.name !== names[input]) continue;
        return { at: node.at, ...(place && { place: { row: place.row, column: columns[place.column] ?? "" } }) };
      }
    }
    return { at: [0, parts[0]?.text.length ?? 0] };
  };
}

function onlyPart(parts: readonly Part[]): { text: string; tree: Tree } {
  const [part] = parts;
  if (!part) throw new Error("got a cell without its formula, expected one");
  if (part.tree instanceof FormulaError) throw part.tree;
  return { text: part.text, tree: part.tree };
}

const rootOf = ({ cell, signature }: Reading): string => signature?.name || cell.id;

const faceOf = ({ id, shape, definition, range }: Step): Face => ({ id, shape, definition, range });

const blank = (reading: Reading): Step => ({
  id: reading.cell.id,
  name: reading.signature?.name ?? null,
  cell: reading.cell,
  reading,
  inputs: [],
  shape: null,
  error: null,
  hasFault: false,
  tree: null,
  needs: [],
  definition: null,
  range: null,
  plusMinus: null,
  isSlow: false,
  run: () => {
    throw new Error("got a run of a blank step, expected a compiled one");
  },
});
