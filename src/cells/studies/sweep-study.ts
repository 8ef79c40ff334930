/** A sweep: one input over a range, any number of results, one curve for the present design and one for each trial. */
import type { Notebook, StudyCell } from "../cell.ts";
import type { Program } from "../step.ts";
import { applyTrial, trialNamed } from "../trials.ts";
import type { Study, ToldResult } from "./study.ts";
import { inputOf, rangeOfInput, valuesOver } from "./study-input.ts";
import { studyMessages } from "./study-messages.ts";
import { inField, refusalAt } from "./study-refusal.ts";
import { type Known, type Subject, subjectOf, toldOf, variantsOfSubject } from "./subject.ts";

/** The most variants of a sweep, a map or a solve. */
export const mostVariants = 100_000;

/** The results, then the checks (1 holds, 0 fails) of one variant; a text is the reason of a gap. */
export type SweepRow = readonly (number | string)[];

export interface SweepOutcome {
  readonly study: "sweep";
  readonly input: { readonly target: string; readonly unit: string; readonly values: readonly number[] };
  readonly results: readonly ToldResult[];
  readonly checks: readonly string[];
  readonly curves: readonly SweepCurve[];
}

export interface SweepCurve {
  /** Null for the present design. */
  readonly trial: string | null;
  /** What the input is there without the sweep; null where that cannot be computed. */
  readonly at: number | null;
  /** By result, then by value of the input; null where there is a gap, or nothing is there yet. */
  readonly results: readonly (readonly (number | null)[])[];
  /** By check, then by value. */
  readonly checks: readonly (readonly (boolean | null)[])[];
  readonly gaps: readonly { readonly point: number; readonly of: string; readonly reason: string }[];
}

export function sweepStudy(
  notebook: Notebook,
  cell: StudyCell,
  functions: Program["functions"],
  known?: Known,
): Study<SweepRow, SweepOutcome> {
  const [stated, ...more] = cell.inputs;
  if (!stated || more.length > 0)
    throw refusalAt("inputs", null, studyMessages.inputCount("sweep", "one input", cell.inputs.length));
  const base = subjectOf(notebook, cell, functions, known);
  const subjects = [
    base,
    ...(cell.trials ?? []).map((name) =>
      inField("trials", name, () =>
        subjectOf(applyTrial(notebook, trialNamed(notebook, name)), cell, functions, { program: base.program }),
      ),
    ),
  ];
  const inputs = subjects.map((subject) => inputOf(subject.program, subject.present, stated.input));
  const [input] = inputs;
  if (!input) throw new Error("got no subject, expected the present design");
  const range = rangeOfInput(input, stated, base.program);
  const values = valuesOver(range, stated.points, 41, Math.floor(mostVariants / subjects.length));
  return {
    cell,
    pieces: subjects.length * values.length,
    variantsOfPiece: 1,
    *run(from, to) {
      for (let curve = Math.floor(from / values.length); curve * values.length < to; curve++) {
        const subject = subjects[curve] as Subject;
        const variants = variantsOfSubject(subject, [(inputs[curve] ?? input).place]);
        const columns = subject.results.length + subject.checks.length;
        const [first, last] = [
          Math.max(0, from - curve * values.length),
          Math.min(values.length, to - curve * values.length),
        ];
        for (let point = first; point < last; point++) {
          variants.run([values[point] as number]);
          yield Array.from({ length: columns }, (_, index) => toldOf(subject, variants, index));
        }
      }
    },
    conclude: (rows) => ({
      study: "sweep",
      input: { target: input.target, unit: input.shape.unit, values },
      results: base.told,
      checks: base.checkNames,
      curves: subjects.map((subject, curve) => {
        const own = values.map((_, point) => rows[curve * values.length + point]);
        const nominal = inputs[curve]?.nominal ?? Number.NaN;
        return curveOf(curve === 0 ? null : (cell.trials?.[curve - 1] ?? ""), nominal, subject, own);
      }),
    }),
  };
}

function curveOf(
  trial: string | null,
  nominal: number,
  subject: Subject,
  rows: readonly (SweepRow | undefined)[],
): SweepCurve {
  const { told, checkNames } = subject;
  const column = (index: number): (number | null)[] =>
    rows.map((row) => {
      const value = row?.[index];
      return typeof value === "number" ? value : null;
    });
  const names = [...told.map(({ text }) => text), ...checkNames];
  return {
    trial,
    at: Number.isNaN(nominal) ? null : nominal,
    results: told.map((_, index) => column(index)),
    checks: checkNames.map((_, index) =>
      column(told.length + index).map((each) => (each === null ? null : each === 1)),
    ),
    gaps: rows.flatMap((row, point) =>
      (row ?? []).flatMap((value, index) =>
        typeof value === "string" ? [{ point, of: names[index] ?? "", reason: value }] : [],
      ),
    ),
  };
}
