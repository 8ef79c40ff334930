import { runPlan, runStep } from "./plan.ts";
import type { Program, Step } from "./step.ts";
import type { Result, Value } from "./value.ts";

/**
 * Takes a given through values and computes the wanted cells at each, running only the steps between. `results` are
 * those of the present design and serve wherever the given plays no part; what is missing there is computed. All ids;
 * values in SI. Gives one row a value, one result a wanted cell.
 */
export function sweep(
  program: Program,
  results: (id: string) => Result | undefined,
  given: string,
  values: readonly Value[],
  wanted: readonly string[],
): Result[][] {
  const step = program.byId.get(given);
  if (!step?.shape) throw new Error(`got the cell ${given}, expected a given with a value`);
  const { shape } = step;
  const between = stepsBetween(program, given, wanted);
  let whole: Map<string, Result> | null = null;
  const present = (id: string): Result | undefined => {
    const result = whole ? undefined : results(id);
    if (result) return result;
    whole ??= runPlan(program);
    return whole.get(id);
  };
  return values.map((value) => {
    const varied = new Map<string, Result>([[given, { ok: true, value, shape }]]);
    const resultOf = (id: string): Result | undefined => varied.get(id) ?? present(id);
    for (const each of between) varied.set(each.id, runStep(each, resultOf));
    return wanted.map((id) => resultOf(id) as Result);
  });
}

/** The steps that follow from `from` and that some of `wanted` need, in order. */
export function stepsBetween(program: Program, from: string, wanted: readonly string[]): Step[] {
  const moved = new Set([from]);
  const following: Step[] = [];
  for (const step of program.steps) {
    if (step.id === from || !step.inputs.some((id) => moved.has(id))) continue;
    moved.add(step.id);
    following.push(step);
  }
  const needed = new Set(wanted);
  return following
    .reverse()
    .filter((step) => {
      if (!needed.has(step.id)) return false;
      for (const id of step.inputs) needed.add(id);
      return true;
    })
    .reverse();
}
