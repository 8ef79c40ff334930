/** A sensitivity: every input moved either way by what it may be off, one at a time; for each result the inputs ranked. */
import type { Notebook, StudyCell, StudyInput } from "../cell.ts";
import { dimensionText } from "../shapes.ts";
import type { Program, Step } from "../step.ts";
import type { Variants } from "../variants.ts";
import type { Study, ToldResult } from "./study.ts";
import { type Input, inputOf, plusMinusOfInput } from "./study-input.ts";
import { studyMessages } from "./study-messages.ts";
import { refusalAt } from "./study-refusal.ts";
import { type Known, type Subject, subjectOf, toldOf, variantsOfSubject } from "./subject.ts";

/** The results, then the checks (1 holds, 0 fails) of one variant; a text is the reason of a gap. */
export type SensitivityRow = readonly (number | string)[];

export interface SensitivityOutcome {
  readonly study: "sensitivity";
  readonly inputs: readonly {
    readonly target: string;
    readonly unit: string;
    readonly dimension: string;
    readonly nominal: number;
    /** How far it was moved either way; null, with the reason among the gaps, where that is not known. */
    readonly amount: number | null;
    /** The amount is 1 % because nothing is stated. */
    readonly isAssumed: boolean;
  }[];
  readonly results: readonly (ToldResult & {
    readonly nominal: number | null;
    /** The input that moves the result most comes first; those with a gap come last. */
    readonly ranked: readonly Effect[];
  })[];
  /** Checks that hold now and fail with one input moved. */
  readonly fallen: readonly { readonly check: string; readonly target: string; readonly way: "less" | "more" }[];
  readonly gaps: readonly { readonly target: string; readonly reason: string }[];
}

export interface Effect {
  readonly target: string;
  /** The result with the input less, and more, by its amount. */
  readonly less: number | null;
  readonly more: number | null;
  /** The larger of the two moves of the result, without its sign. */
  readonly move: number | null;
  /** Of the result by the input, in SI. */
  readonly derivative: number | null;
  /** Move of the result in per cent for one per cent of the input; null where the result is 0. */
  readonly elasticity: number | null;
}

/** Shares of the amount at which each input is computed: the ends tell the move, all four the derivative. */
const steps = [-1, -0.5, 0.5, 1] as const;

export function sensitivityStudy(
  notebook: Notebook,
  cell: StudyCell,
  functions: Program["functions"],
  known?: Known,
): Study<SensitivityRow, SensitivityOutcome> {
  const subject = subjectOf(notebook, cell, functions, known);
  const stated = cell.inputs.length > 0 ? cell.inputs : givensBehind(subject);
  if (stated.length === 0)
    throw refusalAt("inputs", null, studyMessages.inputCount("sensitivity", "at least one input", 0));
  const inputs = stated.map((each) => movedInput(each, subject));
  const columns = subject.results.length + subject.checks.length;
  return {
    cell,
    pieces: 1 + inputs.length * steps.length,
    variantsOfPiece: 1,
    *run(from, to) {
      let moved = -1;
      let variants: Variants | null = null;
      for (let piece = from; piece < to; piece++) {
        const place = Math.max(0, Math.floor((piece - 1) / steps.length));
        const { input, amount } = inputs[place] as MovedInput;
        const share = piece === 0 ? 0 : (steps[(piece - 1) % steps.length] as number);
        if (!variants || place !== moved) variants = variantsOfSubject(subject, [input.place]);
        moved = place;
        variants.run([share === 0 ? Number.NaN : input.nominal + share * amount]);
        const isUnknown = Number.isNaN(amount) && share !== 0;
        yield Array.from({ length: columns }, (_, index) =>
          isUnknown ? studyMessages.isZero(input.target) : toldOf(subject, variants as Variants, index),
        );
      }
    },
    conclude: (rows) => outcomeOf(rows, inputs, subject),
  };
}

interface MovedInput {
  readonly input: Input;
  /** NaN where nothing is stated and 1 % is nothing. */
  readonly amount: number;
  readonly isAssumed: boolean;
}

function movedInput(stated: StudyInput, { program, present }: Subject): MovedInput {
  const input = inputOf(program, present, stated.input);
  const plusMinus = plusMinusOfInput(input, stated.plus_minus, program);
  const amount = plusMinus ?? 0.01 * Math.abs(input.nominal);
  return { input, amount: amount > 0 ? amount : Number.NaN, isAssumed: plusMinus === null };
}

/** Every given that is a number and that a result depends on, in the order of the notebook. */
function givensBehind({ program, results }: Subject): StudyInput[] {
  const needed = new Set(results.flatMap(({ inputs }) => inputs));
  for (const step of [...program.steps].reverse()) {
    if (needed.has(step.id)) for (const id of step.inputs) needed.add(id);
  }
  const isMoved = (step: Step | undefined): step is Step =>
    step?.cell.kind === "given" && step.shape?.kind === "number" && needed.has(step.id);
  return program.cells
    .map(({ id }) => program.byId.get(id))
    .filter(isMoved)
    .map(({ name }) => ({ input: name ?? "" }));
}

function outcomeOf(
  rows: readonly (SensitivityRow | undefined)[],
  inputs: readonly MovedInput[],
  { told, checkNames }: Subject,
): SensitivityOutcome {
  const at = (input: number, step: number, column: number): number | string | undefined =>
    rows[1 + input * steps.length + step]?.[column];
  const number = (value: number | string | undefined): number | null => (typeof value === "number" ? value : null);
  const fallen = checkNames.flatMap((check, index) => {
    const column = told.length + index;
    if (rows[0]?.[column] !== 1) return [];
    return inputs.flatMap(({ input: { target } }, place) => [
      ...(at(place, 0, column) === 0 ? [{ check, target, way: "less" as const }] : []),
      ...(at(place, 3, column) === 0 ? [{ check, target, way: "more" as const }] : []),
    ]);
  });
  return {
    study: "sensitivity",
    inputs: inputs.map(({ input: { target, shape, nominal }, amount, isAssumed }) => ({
      target,
      unit: shape.unit,
      dimension: dimensionText(shape),
      nominal,
      amount: Number.isNaN(amount) ? null : amount,
      isAssumed,
    })),
    results: told.map((each, column) => {
      const nominal = number(rows[0]?.[column]);
      const effects = inputs.map(({ input, amount }, place): Effect => {
        const values = steps.map((_, step) => number(at(place, step, column)));
        return effectOf(input, amount, nominal, values);
      });
      return { ...each, nominal, ranked: effects.sort((a, b) => (b.move ?? -1) - (a.move ?? -1)) };
    }),
    fallen,
    gaps: inputs.flatMap(({ input: { target } }, place) => {
      const reasons = steps.flatMap((_, step) => told.map((__, column) => at(place, step, column)));
      return [...new Set(reasons.filter((each) => typeof each === "string"))].map((reason) => ({ target, reason }));
    }),
  };
}

function effectOf(
  { target, nominal: x }: Input,
  amount: number,
  nominal: number | null,
  values: (number | null)[],
): Effect {
  // What differs from the present design in its last figures only does not differ: rounding is no effect.
  const [less, halfLess, halfMore, more] = values.map((value) => {
    const isSame = value !== null && nominal !== null && Math.abs(value - nominal) <= 1e-12 * Math.abs(nominal);
    return isSame ? nominal : value;
  }) as [number | null, number | null, number | null, number | null];
  const isMoved = nominal !== null && less !== null && more !== null;
  const move = isMoved ? Math.max(Math.abs(less - nominal), Math.abs(more - nominal)) : null;
  const isWhole = less !== null && halfLess !== null && halfMore !== null && more !== null;
  const derivative = isWhole ? extrapolated((more - less) / (2 * amount), (halfMore - halfLess) / amount) : null;
  const elasticity = derivative === null || !nominal ? null : (derivative * x) / nominal;
  return { target, less, more, move, derivative, elasticity };
}

/**
 * A derivative from central differences over a step and over half of it, whose errors of second order cancel
 * (L. F. Richardson, Philosophical Transactions of the Royal Society A 210 (1911) 307–357; from memory).
 */
const extrapolated = (wide: number, narrow: number): number => (4 * narrow - wide) / 3;
