/**
 * A tolerance: a design built many times, its inputs off by chance as their laws have it (propagation of distributions,
 * JCGM 101:2008); how the results spread, how many builds pass every check, and what to tighten first.
 */
import type { Notebook, StudyCell, StudyInput } from "../cell.ts";
import type { Program } from "../step.ts";
import { drawsOf } from "./draws.ts";
import { deviate, deviatePair, drawsFor, type Law } from "./laws.ts";
import { type Sample, sampleOf, shareOf } from "./statistics.ts";
import type { Study, ToldResult } from "./study.ts";
import { type Input, inputOf, plusMinusOfInput } from "./study-input.ts";
import { studyMessages } from "./study-messages.ts";
import { inField, refusalAt } from "./study-refusal.ts";
import { type Known, type Subject, subjectOf, toldOf, variantsOfSubject } from "./subject.ts";
import { type Influence, influencesOn, type Tightening, tighteningsOf } from "./tightening.ts";

/** The results, then the checks (1 holds, 0 fails) of one build; a text is the reason of a gap. */
export type ToleranceRow = readonly (number | string)[];

export interface ToleranceOutcome {
  readonly study: "tolerance";
  readonly seed: number;
  /** How many were to be built, and how many are. */
  readonly builds: number;
  readonly built: number;
  readonly inputs: readonly {
    readonly target: string;
    readonly pair: string | null;
    readonly unit: string;
    readonly nominal: number;
    readonly plusMinus: number;
    readonly law: Law;
    /** Of the pair; null without one. */
    readonly correlation: number | null;
  }[];
  readonly results: readonly (ToldResult & {
    /** Of the builds in which it could be computed; null where there are none. */
    readonly sample: Sample | null;
    /** What share of its spread comes from each input, largest first; they add up to about 1 where they act apart. */
    readonly influences: readonly Influence[];
  })[];
  readonly checks: readonly {
    readonly name: string;
    readonly held: number;
    readonly failed: number;
    readonly unknown: number;
  }[];
  /** The share of builds that pass every check, with the interval that holds the true one at 95 %; null without checks. */
  readonly passing: { readonly share: number; readonly between: readonly [number, number] } | null;
  /** What halving each ± would do to the share that passes, the best first. */
  readonly tighten: readonly Tightening[];
  readonly gaps: readonly { readonly of: string; readonly reason: string; readonly builds: number }[];
}

/** An input, alone or with that of the other half, and how it is off. */
export interface Deviation {
  readonly input: Input;
  readonly pair: Input | null;
  readonly plusMinus: readonly [own: number, pair: number];
  readonly law: Law;
  readonly correlation: number;
}

export function toleranceStudy(
  notebook: Notebook,
  cell: StudyCell,
  functions: Program["functions"],
  known?: Known,
): Study<ToleranceRow, ToleranceOutcome> {
  const subject = subjectOf(notebook, cell, functions, known);
  const deviations = deviationsOf(cell, subject);
  const { builds = 2000, seed = 1 } = cell;
  const places = deviations.flatMap(({ input, pair }) => [input.place, ...(pair ? [pair.place] : [])]);
  const perBuild = deviations.reduce((sum, { law, pair }) => sum + drawsFor(law, pair !== null), 0);
  const columns = subject.results.length + subject.checks.length;
  return {
    cell,
    pieces: builds,
    variantsOfPiece: 1,
    *run(from, to) {
      const variants = variantsOfSubject(subject, places);
      const draws = drawsOf(seed);
      draws.skip(from * perBuild);
      for (let build = from; build < to; build++) {
        const values: number[] = [];
        for (const each of deviations) push(values, each, deviationsIn(each, draws));
        variants.run(values);
        yield Array.from({ length: columns }, (_, index) => toldOf(subject, variants, index));
      }
    },
    conclude: (rows) => outcomeOf(rows, builds, seed, deviations, subject),
  };
}

/** The deviations of one build, in units of ±: of an input, and of its pair where it has one. */
const deviationsIn = ({ law, pair, correlation }: Deviation, draws: ReturnType<typeof drawsOf>): readonly number[] =>
  pair ? deviatePair(law, correlation, draws) : [deviate(law, draws)];

function push(values: number[], { input, pair, plusMinus }: Deviation, [own = 0, other = 0]: readonly number[]): void {
  values.push(input.nominal + plusMinus[0] * own);
  if (pair) values.push(pair.nominal + plusMinus[1] * other);
}

/** The inputs of the study, else every given that states its ±. */
function deviationsOf(cell: StudyCell, subject: Subject): Deviation[] {
  const { program } = subject;
  const own = program.steps.flatMap(({ plusMinus, name }) => (plusMinus && name ? [{ input: name }] : []));
  const stated: readonly StudyInput[] = cell.inputs.length > 0 ? cell.inputs : own;
  if (stated.length === 0) throw refusalAt("inputs", null, studyMessages.noPlusMinus);
  const deviations = stated.map((each) => deviationOf(each, subject));
  const seen = new Set<string>();
  for (const { input, pair } of deviations) {
    for (const each of [input, ...(pair ? [pair] : [])]) {
      if (seen.has(JSON.stringify(each.place)))
        throw refusalAt("input", each.target, studyMessages.inputTwice(each.target));
      seen.add(JSON.stringify(each.place));
    }
  }
  return deviations;
}

function deviationOf(stated: StudyInput, { program, present }: Subject): Deviation {
  const { input: target, pair: other, plus_minus, law = "uniform", correlation = 0 } = stated;
  if (other === undefined && stated.correlation !== undefined)
    throw refusalAt("correlation", target, studyMessages.correlationAlone(target));
  const input = known(inputOf(program, present, target));
  const pair = other === undefined ? null : inField("pair", target, () => known(inputOf(program, present, other)));
  const own = plusMinusOfInput(input, plus_minus, program);
  // The other half is off as the first is, unless it says otherwise itself.
  const pairOwn = pair && (plusMinusOfInput(pair, plus_minus, program) ?? own);
  if (own === null) throw refusalAt("plus_minus", target, studyMessages.inputWithoutPlusMinus(target));
  return { input, pair, plusMinus: [own, pairOwn ?? own], law, correlation };
}

function known(input: Input): Input {
  if (Number.isNaN(input.nominal))
    throw refusalAt("input", input.target, studyMessages.waits(input.target, input.target));
  return input;
}

function outcomeOf(
  rows: readonly (ToleranceRow | undefined)[],
  builds: number,
  seed: number,
  deviations: readonly Deviation[],
  { told, checkNames }: Subject,
): ToleranceOutcome {
  // What a build was like follows from the seed and is drawn again, so that rows need not carry it.
  const draws = drawsOf(seed);
  const built: ToleranceRow[] = [];
  const off: (readonly number[])[][] = deviations.map(() => []);
  for (let build = 0; build < builds; build++) {
    const row = rows[build];
    deviations.forEach((each, index) => {
      const drawn = deviationsIn(each, draws);
      if (row) off[index]?.push(drawn);
    });
    if (row) built.push(row);
  }
  const passes = built.map((row) => row.slice(told.length).every((each) => each === 1));
  const passed = passes.filter(Boolean).length;
  return {
    study: "tolerance",
    seed,
    builds,
    built: built.length,
    inputs: deviations.map(({ input, pair, plusMinus, law, correlation }) => ({
      target: input.target,
      pair: pair?.target ?? null,
      unit: input.shape.unit,
      nominal: input.nominal,
      plusMinus: plusMinus[0],
      law,
      correlation: pair ? correlation : null,
    })),
    results: told.map((each, column) => ({
      ...each,
      sample: sampleOf(built.map((row) => row[column]).filter((value) => typeof value === "number")),
      influences: influencesOn(
        built.map((row) => row[column]),
        off,
        deviations,
      ),
    })),
    checks: checkNames.map((name, index) => {
      const column = built.map((row) => row[told.length + index]);
      const [held, failed] = [1, 0].map((value) => column.filter((each) => each === value).length) as [number, number];
      return { name, held, failed, unknown: built.length - held - failed };
    }),
    passing: checkNames.length > 0 && built.length > 0 ? shareOf(passed, built.length) : null,
    tighten: checkNames.length > 0 && built.length > 0 ? tighteningsOf(passes, off, deviations) : [],
    gaps: gapsOf(built, [...told.map(({ text }) => text), ...checkNames]),
  };
}

/** Each reason once, whatever numbers stand in it, with how many builds it kept from a value. */
function gapsOf(rows: readonly ToleranceRow[], names: readonly string[]): ToleranceOutcome["gaps"] {
  const gaps = new Map<string, { of: string; reason: string; builds: number }>();
  for (const row of rows) {
    row.forEach((reason, index) => {
      if (typeof reason !== "string") return;
      const key = `${index} ${reason.replaceAll(/\d+(\.\d+)?(e[-+]?\d+)?/g, "#")}`;
      const known = gaps.get(key);
      if (known) known.builds++;
      else gaps.set(key, { of: names[index] ?? "", reason, builds: 1 });
    });
  }
  return [...gaps.values()];
}
