import type { Program, Step } from "./step.ts";
import type { Result, Value } from "./value.ts";
import { stepsBetween, variantsOf } from "./variants.ts";

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
  const steps = wanted.map((id) => program.byId.get(id) as Step);
  const variants = variantsOf(program, [{ id: given, entry: null }], steps, results);
  return values.map((value) => {
    variants.run([value]);
    return steps.map((_, index) => variants.result(index));
  });
}

/** True where something slow would be computed at each value: such a sweep is no matter for the thread that draws. */
export const isSlowSweep = (program: Program, given: Step, wanted: Step): boolean =>
  stepsBetween(program, new Set([given.id]), [wanted]).some(({ isSlow }) => isSlow);
