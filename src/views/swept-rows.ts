import { type Program, type Result, type Step, sweep } from "../cells/index.ts";

type Row = readonly Result[];

/**
 * Sweeps a given for the charts of a notebook: charts that sweep the same one share its rows, and as long as that given
 * itself is all that moves, the rows are those of before.
 */
export class SweptRows {
  private readonly kept = new Map<string, { readonly key: readonly unknown[]; readonly rows: readonly Row[] }>();

  /** The result of a chart's cell at each value of its given, in SI. */
  take(
    program: Program,
    results: (id: string) => Result | undefined,
    given: Step,
    values: readonly number[],
    chart: string,
  ): readonly (Result | undefined)[] {
    const wanted = chartsOver(program, given);
    const key = [...wanted, ...values, ...whatCounts(program, results, given)];
    let kept = this.kept.get(given.id);
    if (!kept || key.length !== kept.key.length || key.some((each, index) => each !== kept?.key[index])) {
      kept = { key, rows: sweep(program, results, given.id, values, wanted) };
      this.kept.set(given.id, kept);
    }
    const place = wanted.indexOf(chart);
    return kept.rows.map((row) => row[place]);
  }
}

const chartsOver = (program: Program, given: Step): readonly string[] =>
  program.steps.flatMap(({ id, cell }) => (cell.kind === "chart" && cell.sweep === given.name ? [id] : []));

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
