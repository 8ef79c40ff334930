/** A map: two inputs over a grid, each result as heights to draw contours of, and where each check fails. */
import { unitOf } from "../../library/units.ts";
import type { Notebook, StudyCell } from "../cell.ts";
import { compile } from "../compile.ts";
import { runPlan } from "../plan.ts";
import type { Program } from "../step.ts";
import { applyTrial } from "../trials.ts";
import type { Study, ToldResult } from "./study.ts";
import { type Input, inputOf, rangeOfInput, valuesOver } from "./study-input.ts";
import { studyMessages } from "./study-messages.ts";
import { isForPerson, refusalAt } from "./study-refusal.ts";
import { type Known, marginOf, type Subject, subjectOf, toldOf, variantsOfSubject } from "./subject.ts";
import { mostVariants } from "./sweep-study.ts";

/** The results, the checks (1 holds, 0 fails), then the margin of each check in SI or null where it has none; texts are gaps. */
export type MapRow = readonly (number | string | null)[];

export interface MapOutcome {
  readonly study: "map";
  readonly inputs: readonly { readonly target: string; readonly unit: string; readonly values: readonly number[] }[];
  readonly results: readonly (ToldResult & { readonly heights: Heights; readonly levels: readonly number[] })[];
  readonly checks: readonly {
    readonly name: string;
    /** Row by row, as heights are. */
    readonly holds: readonly (boolean | null)[];
    /** How far the check is from its limit: 0 is the border of the region where it fails; null where it has no margin. */
    readonly margin: Heights;
  }[];
  /** Where the present design and each trial stand. A trial that cannot be made, or has no number there, is left out. */
  readonly marks: readonly { readonly trial: string | null; readonly at: readonly [number, number] }[];
  readonly gaps: readonly { readonly point: readonly [number, number]; readonly of: string; readonly reason: string }[];
}

/** Over the grid row by row: the value at `x[i]` and `y[j]` stands at `i + j * x.length`. Null is a gap. */
export type Heights = readonly (number | null)[];

export function mapStudy(
  notebook: Notebook,
  cell: StudyCell,
  functions: Program["functions"],
  known?: Known,
): Study<MapRow, MapOutcome> {
  const [first, second, ...more] = cell.inputs;
  if (!first || !second || more.length > 0) {
    throw refusalAt("inputs", null, studyMessages.inputCount("map", "two inputs", cell.inputs.length));
  }
  if (first.input.trim() === second.input.trim())
    throw refusalAt("input", second.input, studyMessages.inputTwice(first.input));
  const subject = subjectOf(notebook, cell, functions, known);
  const { program } = subject;
  const inputs = [first, second].map(({ input }) => inputOf(program, subject.present, input)) as [Input, Input];
  const x = valuesOver(rangeOfInput(inputs[0], first, program), first.points, 21, mostVariants);
  const y = valuesOver(rangeOfInput(inputs[1], second, program), second.points, 21, mostVariants);
  const count = x.length * y.length;
  if (count > mostVariants) throw refusalAt("points", null, studyMessages.tooMany(count, mostVariants));
  const marks = marksOf(notebook, cell, subject, functions);
  const columns = subject.results.length + subject.checks.length;
  return {
    cell,
    pieces: count,
    variantsOfPiece: 1,
    *run(from, to) {
      const variants = variantsOfSubject(
        subject,
        inputs.map(({ place }) => place),
      );
      for (let place = from; place < to; place++) {
        variants.run([x[place % x.length] as number, y[Math.floor(place / x.length)] as number]);
        const told = Array.from({ length: columns }, (_, index) => toldOf(subject, variants, index));
        yield [...told, ...subject.checks.map((_, index) => marginOf(variants, subject.results.length + index))];
      }
    },
    conclude: (rows) => outcomeOf(rows, x, y, inputs, subject, marks),
  };
}

function outcomeOf(
  rows: readonly (MapRow | undefined)[],
  x: readonly number[],
  y: readonly number[],
  inputs: readonly Input[],
  { told, checkNames }: Subject,
  marks: MapOutcome["marks"],
): MapOutcome {
  const points = Array.from({ length: x.length * y.length }, (_, place) => rows[place]);
  const column = (index: number): Heights =>
    points.map((row) => {
      const value = row?.[index];
      return typeof value === "number" ? value : null;
    });
  const names = [...told.map(({ text }) => text), ...checkNames];
  return {
    study: "map",
    inputs: inputs.map(({ target, shape }, axis) => ({ target, unit: shape.unit, values: axis === 0 ? x : y })),
    results: told.map((each, index) => {
      const heights = column(index);
      return { ...each, heights, levels: levelsOf(heights, each.unit) };
    }),
    checks: checkNames.map((name, index) => ({
      name,
      holds: column(told.length + index).map((each) => (each === null ? null : each === 1)),
      margin: column(names.length + index),
    })),
    marks,
    gaps: points.flatMap((row, place) =>
      (row ?? []).flatMap((value, index) =>
        typeof value === "string"
          ? [
              {
                point: [place % x.length, Math.floor(place / x.length)] as const,
                of: names[index] ?? "",
                reason: value,
              },
            ]
          : [],
      ),
    ),
  };
}

function marksOf(
  notebook: Notebook,
  { inputs }: StudyCell,
  { program, present }: Subject,
  functions: Program["functions"],
): MapOutcome["marks"] {
  const at = (of: Program, results: Subject["present"]): [number, number] =>
    inputs.map(({ input }) => inputOf(of, results, input).nominal) as [number, number];
  const marks: { trial: string | null; at: [number, number] }[] = [{ trial: null, at: at(program, present) }];
  for (const trial of notebook.trials) {
    try {
      const changed = compile(applyTrial(notebook, trial).cells, functions, program);
      const results = runPlan(changed);
      marks.push({ trial: trial.name, at: at(changed, (id) => results.get(id)) });
    } catch (error) {
      if (!isForPerson(error)) throw error;
    }
  }
  return marks.filter((mark) => mark.at.every((value) => !Number.isNaN(value)));
}

/** Heights at which to draw contours, round in a unit: a step of 1, 2 or 5 times a power of ten that gives five to twelve. */
export function levelsOf(heights: Heights, unit = "1"): number[] {
  const { factor, offset } = unitOf(unit);
  const values = heights.flatMap((each) => (each === null ? [] : [(each - offset) / factor]));
  const [least, most] = [
    values.reduce((a, b) => Math.min(a, b), Infinity),
    values.reduce((a, b) => Math.max(a, b), -Infinity),
  ];
  if (!(most > least)) return [];
  const rough = (most - least) / 10;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((each) => each * power >= rough) ?? 10) * power;
  const levels: number[] = [];
  for (let count = Math.ceil(least / step); count * step <= most; count++) levels.push(count * step * factor + offset);
  return levels;
}
