import type { Program, Step } from "./step.ts";
import type { Result } from "./value.ts";

/** Computes every cell in one synchronous pass: for the command line, tests and studies. Results by cell id. */
export function runPlan(program: Program): Map<string, Result> {
  const results = new Map<string, Result>();
  for (const step of program.steps)
    results.set(
      step.id,
      runStep(step, (id) => results.get(id)),
    );
  return results;
}

/** Runs one step over the results of its inputs. @throws where one of them is not there yet */
export function runStep(step: Step, resultOf: (id: string) => Result | undefined): Result {
  const inputs = step.inputs.map((id) => {
    const result = resultOf(id);
    if (!result) throw new Error(`got no result for ${id}, expected it before ${step.id}`);
    return result;
  });
  return step.run(inputs);
}
