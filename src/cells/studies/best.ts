/** A best: the design with the least, or the most, of a result over one to four inputs while checks hold; of two, the front. */
import type { Notebook, StudyCell } from "../cell.ts";
import type { Program } from "../step.ts";
import type { Variants } from "../variants.ts";
import { drawsOf } from "./draws.ts";
import { type Candidate, evolve, front, sizeOf } from "./evolution.ts";
import type { Study, ToldResult } from "./study.ts";
import { inputOf, rangeOfInput } from "./study-input.ts";
import { studyMessages } from "./study-messages.ts";
import { refusalAt } from "./study-refusal.ts";
import { type Known, type Subject, subjectOf, toldOf, variantsOfSubject } from "./subject.ts";

/**
 * What one search found last: designs, none of them better than another; then, of a single result, its best after each
 * round of candidates, null while none held every check.
 */
export type BestRow = readonly [designs: readonly Design[], course: readonly (number | null)[]];

export interface Design {
  /** By input, in SI. */
  readonly inputs: readonly number[];
  /** By result, in SI; a text is the reason of a gap. */
  readonly results: readonly (number | string)[];
  /** Checks that do not hold, by name. */
  readonly fails: readonly string[];
  /** How far it is from holding all of them; null where that cannot be computed. */
  readonly violation: number | null;
}

export interface BestOutcome {
  readonly study: "best";
  readonly inputs: readonly {
    readonly target: string;
    readonly unit: string;
    readonly from: number;
    readonly to: number;
    readonly nominal: number | null;
  }[];
  readonly results: readonly (ToldResult & { readonly goal: Goal })[];
  readonly checks: readonly string[];
  /** Whether a design was found in which every check holds. Where none was, `designs` has the one that comes nearest. */
  readonly isFound: boolean;
  /** The best design; with two results the front, in order of the first result. */
  readonly designs: readonly Design[];
  /** Inputs that stand at an end of their range in the best design: there may be better ones beyond. */
  readonly atEnds: readonly { readonly target: string; readonly end: "from" | "to" }[];
  /** How many searches there were, and how many of them came to the same best design. */
  readonly searches: { readonly done: number; readonly agree: number };
  /** The design as it is now. */
  readonly present: Design;
  /** Of a single result, search by search: its best after each round of so many candidates; null where none held every check. */
  readonly courses: readonly (readonly (number | null)[])[];
  readonly candidates: number;
}

type Goal = "least" | "most";

/** Searches apart from each other, each from a start of its own. */
const searches = 3;

export function bestStudy(
  notebook: Notebook,
  cell: StudyCell,
  functions: Program["functions"],
  known?: Known,
): Study<BestRow, BestOutcome> {
  const { inputs: stated, results, goals = [], seed = 1 } = cell;
  if (stated.length < 1 || stated.length > 4)
    throw refusalAt("inputs", null, studyMessages.inputCount("best", "one to four inputs", stated.length));
  if (results.length > 2)
    throw refusalAt(
      "result",
      results[2] ?? null,
      studyMessages.resultCount("best", "one or two results", results.length),
    );
  if (goals.length !== results.length)
    throw refusalAt("goal", null, studyMessages.goalCount(results.length, goals.length));
  const subject = subjectOf(notebook, cell, functions, known);
  const ranges = stated.map((each) => {
    const input = inputOf(subject.program, subject.present, each.input);
    return { input, ...rangeOfInput(input, each, subject.program) };
  });
  const twice = stated.find(({ input }, index) =>
    stated.some((each, other) => other < index && each.input.trim() === input.trim()),
  );
  if (twice) throw refusalAt("input", twice.input, studyMessages.inputTwice(twice.input));
  const size = sizeOf(stated.length, results.length);
  const valuesAt = (x: readonly number[]): number[] =>
    ranges.map(({ from, to }, axis) => {
      const share = x[axis] as number;
      // But for a billionth of the range the end itself is meant.
      return share < 1e-9 ? from : share > 1 - 1e-9 ? to : from + share * (to - from);
    });
  let present: Design | null = null;
  const presentOf = (): Design => {
    if (present) return present;
    const variants = variantsOfSubject(subject, []);
    variants.run([]);
    const inputs = ranges.map(({ input }) => input.nominal);
    present = designOf(inputs, subject, variants);
    return present;
  };
  return {
    cell,
    pieces: searches,
    variantsOfPiece: size.candidates * (size.generations + 1),
    *run(from, to) {
      const variants = variantsOfSubject(
        subject,
        ranges.map(({ input }) => input.place),
      );
      const evaluate = (x: readonly number[]): Candidate<Design> => {
        const inputs = valuesAt(x);
        variants.run(inputs);
        const data = designOf(inputs, subject, variants);
        return watched(candidateOf(x, data, goals));
      };
      let course: (number | null)[] = [];
      let best: Candidate<Design> | null = null;
      let tried = 0;
      const watched = (candidate: Candidate<Design>): Candidate<Design> => {
        if (candidate.violation === 0 && !(best && (best.sizes[0] as number) <= (candidate.sizes[0] as number)))
          best = candidate;
        if (++tried % size.candidates === 0) course.push(best ? Number(best.data.results[0]) : null);
        return candidate;
      };
      for (let search = from; search < to; search++) {
        [course, best, tried] = [[], null, 0];
        const last = yield* evolve(stated.length, size, evaluate, drawsOf(seed, search));
        yield [front(last).map(({ data }) => data), results.length > 1 ? [] : course] as const;
      }
    },
    conclude: (rows) => {
      const found = rows.map((row) => (row?.[0] ?? []).map((design) => candidateOf(design.inputs, design, goals)));
      const best = front(found.flat());
      const isFound = best.some(({ violation }) => violation === 0);
      const designs = best.slice(0, results.length > 1 && isFound ? undefined : 1).map(({ data }) => data);
      return {
        study: "best",
        inputs: ranges.map(({ input, from, to }) => ({
          target: input.target,
          unit: input.shape.unit,
          from,
          to,
          nominal: Number.isNaN(input.nominal) ? null : input.nominal,
        })),
        results: subject.told.map((each, index) => ({ ...each, goal: goals[index] as Goal })),
        checks: subject.checkNames,
        isFound,
        designs,
        atEnds: results.length > 1 || !isFound ? [] : endsOf(designs[0], ranges),
        searches: { done: rows.filter(Boolean).length, agree: agreeing(found, best[0]) },
        present: presentOf(),
        courses: rows.flatMap((row) => (row && row[1].length > 0 ? [row[1]] : [])),
        candidates: size.candidates,
      };
    },
  };
}

function designOf(inputs: readonly number[], subject: Subject, variants: Variants): Design {
  const { results, checkNames } = subject;
  const told = results.map((_, index) => toldOf(subject, variants, index));
  let violation = told.some((each) => typeof each === "string") ? Number.POSITIVE_INFINITY : 0;
  const fails = checkNames.filter((_, index) => {
    const result = variants.result(results.length + index);
    if (result.ok && result.value === true) return false;
    // As a share of the limit, so that checks of different sorts count alike; 1 where a check has no margin.
    const margin = result.ok ? (result.margin?.share ?? result.margin?.gap ?? -1) : Number.NEGATIVE_INFINITY;
    violation += Math.max(1e-12, -margin);
    return true;
  });
  return { inputs, results: told, fails, violation: Number.isFinite(violation) ? violation : null };
}

const candidateOf = (x: readonly number[], data: Design, goals: readonly Goal[]): Candidate<Design> => ({
  x,
  sizes: data.results.map((each, index) => (goals[index] === "most" ? -Number(each) : Number(each))),
  violation: data.violation ?? Number.POSITIVE_INFINITY,
  data,
});

/** Inputs at an end of their range, but for a ten-thousandth of it. */
function endsOf(
  design: Design | undefined,
  ranges: readonly { readonly input: { readonly target: string }; readonly from: number; readonly to: number }[],
): BestOutcome["atEnds"] {
  return ranges.flatMap(({ input: { target }, from, to }, axis) => {
    const share = ((design?.inputs[axis] ?? Number.NaN) - from) / (to - from);
    if (share > 1e-4 && share < 1 - 1e-4) return [];
    return [{ target, end: share < 0.5 ? ("from" as const) : ("to" as const) }];
  });
}

/** Searches whose best is as good as the best of all, but for a millionth. */
function agreeing(found: readonly (readonly Candidate<Design>[])[], best: Candidate<Design> | undefined): number {
  if (!best) return 0;
  return found.filter((all) =>
    all.some(({ sizes, violation }) => {
      if (violation > 0 || best.violation > 0) return Math.abs(violation - best.violation) <= 1e-6 * best.violation;
      const [size = Number.NaN, least = Number.NaN] = [sizes[0], best.sizes[0]];
      return Math.abs(size - least) <= 1e-6 * Math.max(1e-12, Math.abs(least));
    }),
  ).length;
}
