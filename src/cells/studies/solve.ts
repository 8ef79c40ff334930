/** A solve: every value of one input, within its range, at which a result reaches a target. */
import type { Notebook, StudyCell } from "../cell.ts";
import { FormulaError } from "../errors.ts";
import { standaloneNumber } from "../standalone-number.ts";
import type { Program } from "../step.ts";
import { type Crossing, crossingBetween, crossingsInDip } from "./roots.ts";
import type { Study, ToldResult } from "./study.ts";
import { inputOf, rangeOfInput, valuesOver } from "./study-input.ts";
import { studyMessages } from "./study-messages.ts";
import { refusalAt, StudyRefusal } from "./study-refusal.ts";
import { type Known, subjectOf, toldOf, variantsOfSubject } from "./subject.ts";
import { mostVariants } from "./sweep-study.ts";

/** Of one stretch of the range: the result at its two ends, then what was found within it. */
export type SolveRow = readonly [from: number | string, to: number | string, ...found: Crossing[]];

export interface SolveOutcome {
  readonly study: "solve";
  readonly input: { readonly target: string; readonly unit: string; readonly nominal: number | null };
  readonly result: ToldResult;
  /** What the result is to reach, in SI. */
  readonly goal: number;
  /** Values of the input at which it does, in order; `touches` where it only just does. */
  readonly solutions: readonly { readonly at: number; readonly kind: "crosses" | "touches" }[];
  /** Where the result passes the target in a jump, without ever having that value. */
  readonly jumps: readonly number[];
  /** Where it comes nearest among the values looked at: all there is to say where there is no solution. */
  readonly nearest: { readonly at: number; readonly value: number } | null;
  /** The result over the range, null in gaps. */
  readonly curve: { readonly x: readonly number[]; readonly y: readonly (number | null)[] };
  readonly gaps: readonly { readonly at: number; readonly reason: string }[];
}

export function solveStudy(
  notebook: Notebook,
  cell: StudyCell,
  functions: Program["functions"],
  known?: Known,
): Study<SolveRow, SolveOutcome> {
  const [stated, ...more] = cell.inputs;
  if (!stated || more.length > 0)
    throw refusalAt("inputs", null, studyMessages.inputCount("solve", "one input", cell.inputs.length));
  if (cell.results.length > 1)
    throw refusalAt(
      "result",
      cell.results[1] ?? null,
      studyMessages.resultCount("solve", "one result", cell.results.length),
    );
  const subject = subjectOf(notebook, { ...cell, checks: [] }, functions, known);
  const { program } = subject;
  const input = inputOf(program, subject.present, stated.input);
  const range = rangeOfInput(input, stated, program);
  const x = valuesOver(range, stated.points, 101, mostVariants / 2);
  const [result] = subject.told;
  if (!result) throw refusalAt("result", null, studyMessages.noResult);
  const goal = goalOf(cell, result.unit, functions);
  const middleOf = (place: number): number => ((x[place] as number) + (x[place + 1] as number)) / 2;
  return {
    cell,
    pieces: x.length - 1,
    variantsOfPiece: 2,
    *run(from, to) {
      const variants = variantsOfSubject(subject, [input.place]);
      const told = (at: number): number | string => {
        variants.run([at]);
        return toldOf(subject, variants, 0);
      };
      const off = (value: number | string): number => (typeof value === "number" ? value - goal : Number.NaN);
      const f = (at: number): number => off(told(at));
      let start = told(x[from] as number);
      let middle = f(middleOf(from));
      for (let place = from; place < to; place++) {
        const [a, b] = [x[place] as number, x[place + 1] as number];
        const end = told(b);
        yield null;
        const isLast = place === x.length - 2;
        const next = isLast ? Number.NaN : f(middleOf(place + 1));
        yield null;
        const m = middleOf(place);
        const [fa, fb] = [off(start), off(end)];
        const found: Crossing[] = [];
        // A value that is met exactly: whether the curve goes through is told by its neighbours.
        const met = (at: number, before: number, after: number): void => {
          found.push({ at, kind: before * after > 0 ? "touches" : "crosses" });
        };
        if (place === 0 && fa === 0) met(a, Number.NaN, middle);
        if (middle === 0) met(m, fa, fb);
        if (fb === 0) met(b, middle, next);
        for (const [p, q, fp, fq] of [
          [a, m, fa, middle],
          [m, b, middle, fb],
        ] as const) {
          if (fp * fq < 0) found.push(yield* crossingBetween(f, p, q, fp, fq));
        }
        const dips = [
          isDip(fa, middle, fb) && ([a, b, fa, fb] as const),
          isDip(middle, fb, next) && ([m, middleOf(place + 1), middle, next] as const),
          // At an end of the range, or of where there are values, the curve is seen from one side only.
          ((place === 0 && nears(fa, middle)) || (Number.isNaN(fb) && nears(middle, fa))) &&
            ([a, m, fa, middle] as const),
          ((Number.isNaN(next) && nears(fb, middle)) || (Number.isNaN(fa) && nears(middle, fb))) &&
            ([m, b, middle, fb] as const),
        ];
        for (const dip of dips) if (dip) found.push(...(yield* crossingsInDip(f, ...dip)));
        yield [start, end, ...found];
        [start, middle] = [end, next];
      }
    },
    conclude: (rows) => outcomeOf(rows, x, input.target, input.shape.unit, input.nominal, result, goal),
  };
}

/** The middle one of three values of one sign is the smallest in size: between the outer two the curve bends towards zero. */
const isDip = (a: number, b: number, c: number): boolean =>
  a * b > 0 && b * c > 0 && Math.abs(b) <= Math.abs(a) && Math.abs(b) <= Math.abs(c);

/** The first of two values of one sign is the smaller in size. */
const nears = (a: number, b: number): boolean => a * b > 0 && Math.abs(a) < Math.abs(b);

function goalOf({ target }: StudyCell, unit: string, functions: Program["functions"]): number {
  if (target === undefined) throw refusalAt("target", null, studyMessages.noTarget);
  try {
    return standaloneNumber(target, { unit, isPoint: true, takesUnit: false }, functions);
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    throw new StudyRefusal(
      { field: "target", of: null, sentence: error.message },
      studyMessages.inTarget(error.message),
    );
  }
}

function outcomeOf(
  rows: readonly (SolveRow | undefined)[],
  x: readonly number[],
  target: string,
  unit: string,
  nominal: number,
  result: ToldResult,
  goal: number,
): SolveOutcome {
  const told = x.map((_, place) => rows[place]?.[0] ?? rows[place - 1]?.[1]);
  const found = rows.flatMap((row) => (row ? (row.slice(2) as Crossing[]) : [])).sort((a, b) => a.at - b.at);
  const y = told.map((value) => (typeof value === "number" ? value : null));
  const known = y.flatMap((value, place) => (value === null ? [] : [{ at: x[place] as number, value }]));
  const nearest = known.reduce<(typeof known)[number] | null>(
    (best, each) => (best && Math.abs(best.value - goal) <= Math.abs(each.value - goal) ? best : each),
    null,
  );
  return {
    study: "solve",
    input: { target, unit, nominal: Number.isNaN(nominal) ? null : nominal },
    result,
    goal,
    solutions: found.flatMap(({ at, kind }) => (kind === "jumps" ? [] : [{ at, kind }])),
    jumps: found.flatMap(({ at, kind }) => (kind === "jumps" ? [at] : [])),
    nearest,
    curve: { x, y },
    gaps: told.flatMap((value, place) =>
      typeof value === "string" ? [{ at: x[place] as number, reason: value }] : [],
    ),
  };
}
