import { compileStep } from "./compile-step.ts";
import { FormulaError } from "./errors.ts";
import { type Reading, readFormula } from "./reading.ts";
import type { Program, Step } from "./step.ts";

/**
 * A formula that stands in no cell, compiled over a program: a step that takes the results of its cells. `id` tells it
 * from every cell and other probe. What is wrong with the formula is the step's error.
 */
export function probe(program: Program, text: string, id: string): Step {
  const { functions, byName, structure } = program;
  const reading: Reading = readFormula({ id, kind: "derived", name: "", formula: text }, functions);
  const around = { functions, byName: (name: string) => byName.get(name), near: structure.near };
  const needed = reading.names.flatMap((name) => byName.get(name) ?? []);
  return compileStep(reading, around, needed);
}

/** A probe that is known to be a number. Throws a FormulaError where its formula has a fault or gives anything else. */
export function numberProbe(program: Program, text: string, id: string, otherwise: (step: Step) => string): Step {
  const step = probe(program, text, id);
  if (step.error) throw new FormulaError(step.error.code, step.error.message, step.error.at);
  if (step.shape?.kind !== "number") throw new FormulaError("wrong_shape", otherwise(step), [0, text.length]);
  return step;
}
