import { isSlowSweep, type Program, type Result, type Step, sweep } from "../cells/index.ts";

/**
 * Sweeps a given for the charts of a notebook: charts that sweep the same one are computed together, each point one
 * design, and as long as that given itself is all that moves, the rows are those of before. A chart that did not ask
 * when things moved last, such as one off the screen, is left out until it asks.
 */
export class SweptRows {
  private readonly kept = new Map<string, Kept>();

  /** The result of a chart's cell at each value of its given, in SI; `of` names the design, where it is not the one shown. */
  take(
    program: Program,
    results: (id: string) => Result | undefined,
    given: Step,
    values: readonly number[],
    chart: string,
    of = "",
  ): readonly (Result | undefined)[] {
    const key = [...values, ...whatCounts(program, results, given)];
    const place = JSON.stringify([of, given.id]);
    let kept = this.kept.get(place);
    const together = new Set([chart]);
    if (!kept || key.length !== kept.key.length || key.some((each, index) => each !== kept?.key[index])) {
      for (const id of kept?.asked ?? []) if (isQuickChart(program, given, id)) together.add(id);
      kept = { key, columns: new Map(), asked: new Set() };
      this.kept.set(place, kept);
    }
    kept.asked.add(chart);
    const known = kept.columns.get(chart);
    if (known) return known;
    const ids = [...together];
    const rows = sweep(program, results, given.id, values, ids);
    ids.forEach((id, column) => {
      kept.columns.set(
        id,
        rows.map((row) => row[column]),
      );
    });
    return kept.columns.get(chart) ?? [];
  }
}

interface Kept {
  /** Whatever the columns follow from. */
  readonly key: readonly unknown[];
  /** By chart: its result at each value. */
  readonly columns: Map<string, readonly (Result | undefined)[]>;
  /** The charts that have asked for them. */
  readonly asked: Set<string>;
}

function isQuickChart(program: Program, given: Step, id: string): boolean {
  const step = program.byId.get(id);
  return step?.cell.kind === "chart" && !isSlowSweep(program, given, step);
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
