import { type Program, type Result, type Step, sweep } from "../cells/index.ts";

/** Sweeps a given for one chart; as long as the given itself is all that moves, the rows are those of before. */
export class SweptRows {
  private key: readonly unknown[] = [];
  private rows: readonly (Result | undefined)[] = [];

  /** The result of `wanted` at each value of the given, in SI. */
  take(
    program: Program,
    results: (id: string) => Result | undefined,
    given: Step,
    values: readonly number[],
    wanted: string,
  ): readonly (Result | undefined)[] {
    const key = [wanted, ...values, ...whatCounts(program, results, given)];
    const same = key.length === this.key.length && key.every((each, index) => each === this.key[index]);
    if (!same) {
      this.rows = sweep(program, results, given.id, values, [wanted]).map(([row]) => row);
      this.key = key;
    }
    return this.rows;
  }
}

/** The compiled cells that follow from the given, and the results of all that do not. */
function* whatCounts(program: Program, results: (id: string) => Result | undefined, given: Step): Generator<unknown> {
  const following = new Set([given.id]);
  for (const step of program.steps) {
    if (step.id === given.id) continue;
    if (step.inputs.some((id) => following.has(id))) {
      following.add(step.id);
      yield step;
    } else yield results(step.id);
  }
}
