/** Cells with several formulas, each with a result of its own: a note's braces, a chart's axes. */
import type { ChartCell } from "./cell.ts";
import { FormulaError } from "./errors.ts";
import { check } from "./formula-check.ts";
import { type Compilation, compileTree } from "./formula-compile.ts";
import { messages } from "./messages.ts";
import { isName } from "./names.ts";
import type { Part } from "./reading.ts";
import { describe, listShape, textShape } from "./shapes.ts";
import type { Step } from "./step.ts";
import { cellError, waiting } from "./step-run.ts";
import type { Scope, TypedTree } from "./typed-tree.ts";
import type { Failed, Ok, Result } from "./value.ts";

type PartRun = (inputs: readonly Result[]) => Result;

/** What a cell of several formulas adds to its step. */
type Parts = Pick<Step, "run" | "hasFault">;

/**
 * A run that computes each part for itself. Its value is empty: what counts is in `parts`; where one failed, the first
 * such error is the cell's.
 */
export function compileParts(
  parts: readonly Part[],
  root: string,
  scope: Scope,
  compilation: Compilation,
  accept: (tree: TypedTree, text: string) => void = () => undefined,
): Parts {
  const runs = parts.map((part) => compilePart(part, root, scope, compilation, accept));
  const run: PartRun = (inputs) => {
    const results = runs.map((each) => (typeof each === "function" ? each(inputs) : each));
    const failed = results.find((result) => !result.ok);
    if (failed && !failed.ok) return { ok: false, error: failed.error, parts: results };
    return { ok: true, value: [], shape: listShape(textShape), parts: results };
  };
  return { run, hasFault: runs.some((each) => typeof each !== "function") };
}

/** Refuses what a chart cannot draw: a sweep of anything but a given with a range, axes that are no numbers. */
export function compileChart(
  cell: ChartCell,
  parts: readonly Part[],
  scope: Scope,
  compilation: Compilation,
  byName: (name: string) => Step | undefined,
): Parts {
  const compiled = compileParts(parts, cell.id, scope, compilation, (tree, text) => {
    // What a chart can show of a result is known to its view.
    if (text === cell.of || tree.shape.kind === "number") return;
    throw new FormulaError("wrong_shape", messages.chartNumber(text, describe(tree.shape)), tree.at);
  });
  const drawn = cell.curves && !compiled.hasFault ? { ...compiled, run: withGaps(compiled.run) } : compiled;
  if (cell.sweep === undefined) return drawn;
  const given = byName(cell.sweep);
  if (!given && isName(cell.sweep)) return drawn;
  if (given?.cell.kind !== "given") throw new FormulaError("wrong_shape", messages.sweepNeedsGiven(cell.sweep), [0, 0]);
  if (!given.error && !given.range) {
    throw new FormulaError("wrong_argument", messages.sweepNeedsRange(cell.sweep), [0, 0]);
  }
  return drawn;
}

/** Of several curves some are drawn where others have no value at the present design; none, where all have none. */
const withGaps =
  (run: PartRun): PartRun =>
  (inputs) => {
    const result = run(inputs);
    if (result.ok || result.parts?.slice(1).every((part) => !part.ok) !== false) return result;
    return { ok: true, value: [], shape: listShape(textShape), parts: result.parts };
  };

/** The run of one part, or its fault. */
function compilePart(
  part: Part,
  root: string,
  scope: Scope,
  compilation: Compilation,
  accept: (tree: TypedTree, text: string) => void,
): PartRun | Failed {
  try {
    if (part.tree instanceof FormulaError) throw part.tree;
    const tree = check(part.tree, part.text, scope);
    accept(tree, part.text);
    return partRun(tree, root, compilation);
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return { ok: false, error: cellError(error, root) };
  }
}

function partRun(tree: TypedTree, root: string, compilation: Compilation): PartRun {
  const slot = compilation.slots.get(rootName(tree)) ?? -1;
  const run = compileTree(tree, compilation);
  return (inputs) => {
    const input = inputs[slot];
    if (!input) throw new Error(`got no input for ${rootName(tree)}, expected its result`);
    if (!input.ok) return waiting(input, { at: tree.at });
    try {
      return { ok: true, value: run(inputs as readonly Ok[], []), shape: tree.shape };
    } catch (error) {
      if (!(error instanceof FormulaError)) throw error;
      return { ok: false, error: cellError(error, root) };
    }
  };
}

const rootName = (tree: TypedTree): string => {
  let node = tree;
  while (node.type === "field" || node.type === "element") node = node.of;
  return node.type === "input" ? node.name : "";
};
