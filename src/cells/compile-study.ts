/** A study as a cell: it has no value of its own, but names others, all of which must be there and fit. */
import type { StudyCell } from "./cell.ts";
import { FormulaError } from "./errors.ts";
import { check } from "./formula-check.ts";
import { messages } from "./messages.ts";
import { placeOfTarget } from "./override.ts";
import type { Part } from "./reading.ts";
import { describe, listShape, textShape } from "./shapes.ts";
import type { Step } from "./step.ts";
import type { Computation } from "./step-run.ts";
import { targetsOf } from "./target.ts";
import type { Scope, TypedTree } from "./typed-tree.ts";

/**
 * What a study computes as a cell: nothing, once all that it names has a value. Throws a FormulaError at the first name
 * that is not there or cannot be what it is asked to be. What else a study needs is told when it is run.
 */
export function compileStudy(
  cell: StudyCell,
  parts: readonly Part[],
  scope: Scope,
  byName: (name: string) => Step | undefined,
): Computation {
  const targets = targetsOf(cell).length;
  parts.forEach((part, index) => {
    if (part.tree instanceof FormulaError) throw part.tree;
    const typed = check(part.tree, part.text, scope);
    if (index < targets) refuseUnsettable(part.text, typed, byName);
    else if (index < targets + cell.results.length) refuseUncounted(part.text, typed);
    else if (byName(part.text.trim())?.cell.kind !== "check") {
      throw new FormulaError("wrong_shape", messages.studyNeedsCheck(part.text.trim()), typed.at);
    }
  });
  return { run: () => [], shape: listShape(textShape) };
}

function refuseUnsettable(target: string, { at, type }: TypedTree, byName: (name: string) => Step | undefined): void {
  const cell = type === "input" ? byName(target.match(/\w+/)?.[0] ?? "")?.cell : undefined;
  try {
    placeOfTarget(cell ? [cell] : [], target);
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    throw new FormulaError("wrong_argument", error.message, at);
  }
}

function refuseUncounted(text: string, { shape, at }: TypedTree): void {
  if (shape.kind !== "number") throw new FormulaError("wrong_shape", messages.studyNumber(text, describe(shape)), at);
}
