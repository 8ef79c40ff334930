/** Many variants of one compiled design: some inputs set otherwise, only the steps between them and what is wanted run. */
import { runPlan } from "./plan.ts";
import type { Program, Step } from "./step.ts";
import type { Ok, RecordValue, Result, Value } from "./value.ts";

/** What variants set: a given, or one entry of a table; its row counts from 0. */
export interface Place {
  readonly id: string;
  readonly entry: { readonly row: number; readonly column: string } | null;
}

/** A design that is run over and over. */
export interface Variants {
  /** Runs one variant: a value in SI for each place, in their order. A value of NaN leaves its place as it is. */
  run(values: ArrayLike<Value>): void;
  /** Of the variant that ran last: the result of one of the wanted steps, by its position among them. */
  result(index: number): Result;
  /** Of the same variant: the result of any cell, by id; the present one where it plays no part. */
  resultOf(id: string): Result | undefined;
}

/**
 * Compiles variants of a program. `wanted` are steps of it, or further ones that need its cells. `results` are those of
 * the present design and serve wherever the places play no part; what is missing there is computed once.
 */
export function variantsOf(
  program: Program,
  places: readonly Place[],
  wanted: readonly Step[],
  results: (id: string) => Result | undefined = () => undefined,
): Variants {
  const present = presentOf(program, results);
  const set = new Set(places.map(({ id }) => id));
  const steps = stepsBetween(program, set, wanted);
  const slots = new Map<string, number>();
  const held: Result[] = [];
  const slotOf = (step: Step): number => {
    const known = slots.get(step.id);
    if (known !== undefined) return known;
    slots.set(step.id, held.length);
    return held.push(blank) - 1;
  };
  const sources = [...set].map((id) => sourceOf(program, id, places, slotOf, present));
  const moving = new Map(sources.map((source) => [source.id, source]));
  const runs = steps.map((step): StepRun => {
    const inputs = step.inputs.map((id) => program.byId.get(id) as Step);
    const taken = inputs.map((input) => slotOf(input));
    return { step, slot: slotOf(step), taken, inputs: inputs.map(() => blank), source: moving.get(step.id) ?? null };
  });
  const wantedSlots = wanted.map((step) => slotOf(step));
  const computed = new Set(steps.map(({ id }) => id));
  for (const [id, slot] of slots)
    if (!computed.has(id) && !moving.has(id) && program.byId.get(id)) held[slot] = present(id);
  for (const step of wanted) {
    // A further step that nothing moves.
    if (!computed.has(step.id) && !program.byId.get(step.id)) held[slotOf(step)] = step.run(step.inputs.map(present));
  }
  // A table of which entries are set, and which nothing else moves, is taken as it is now.
  const still = sources.filter(({ id }) => !computed.has(id));
  return {
    run(values) {
      for (const source of still) held[source.slot] = source.set(source.base(), values);
      for (const { step, slot, taken, inputs, source } of runs) {
        for (let index = 0; index < taken.length; index++) inputs[index] = held[taken[index] as number] as Result;
        const result = step.run(inputs);
        held[slot] = source ? source.set(result, values) : result;
      }
    },
    result: (index) => held[wantedSlots[index] as number] as Result,
    resultOf: (id) => (program.byId.get(id) ? (held[slots.get(id) ?? -1] ?? present(id)) : undefined),
  };
}

/** The steps that follow from `from` and that some of `wanted` need, in order, tables among `from` included. */
export function stepsBetween(program: Program, from: ReadonlySet<string>, wanted: readonly Step[]): Step[] {
  const moved = new Set(from);
  const following: Step[] = [];
  const further = wanted.filter(({ id }) => program.byId.get(id) === undefined);
  for (const step of [...program.steps, ...further]) {
    if (!step.inputs.some((id) => moved.has(id))) continue;
    moved.add(step.id);
    following.push(step);
  }
  const needed = new Set(wanted.map(({ id }) => id));
  return following
    .reverse()
    .filter((step) => {
      if (!needed.has(step.id)) return false;
      for (const id of step.inputs) needed.add(id);
      return true;
    })
    .reverse();
}

interface StepRun {
  readonly step: Step;
  readonly slot: number;
  /** Slots of what it takes, and the list that is filled from them at each run. */
  readonly taken: readonly number[];
  readonly inputs: Result[];
  /** Where some of its entries are set. */
  readonly source: Source | null;
}

/** A cell that is set, whole or in some entries. */
interface Source {
  readonly id: string;
  readonly slot: number;
  base(): Result;
  /** What it becomes with the values of a variant. */
  set(result: Result, values: ArrayLike<Value>): Result;
}

const blank: Result = { ok: true, value: false, shape: { kind: "boolean" } };

/** The present results; where one is missing the whole design is computed, once. */
function presentOf(program: Program, results: (id: string) => Result | undefined): (id: string) => Result {
  let whole: Map<string, Result> | null = null;
  return (id) => {
    const result = whole ? undefined : results(id);
    if (result) return result;
    whole ??= runPlan(program);
    const computed = whole.get(id);
    if (!computed) throw new Error(`got no result for ${id}, expected that of a cell that computes`);
    return computed;
  };
}

function sourceOf(
  program: Program,
  id: string,
  places: readonly Place[],
  slotOf: (step: Step) => number,
  present: (id: string) => Result,
): Source {
  const step = program.byId.get(id);
  if (!step?.shape) throw new Error(`got the cell ${id}, expected a given with a value or a table`);
  const { shape } = step;
  const own = places.flatMap((place, index) => (place.id === id ? [{ ...place, index }] : []));
  const whole = own.find(({ entry }) => entry === null);
  const frame = { id, slot: slotOf(step), base: (): Result => (whole ? blank : present(id)) };
  if (!whole) return { ...frame, set: (result, values) => withEntries(result, own, values) };
  return {
    ...frame,
    set: (_, values) => {
      const value = values[whole.index] as Value;
      return Number.isNaN(value) ? present(id) : { ok: true, value, shape };
    },
  };
}

/** A table's result with some entries set: lists and record made anew, since who took the ones before may hold them. */
function withEntries(
  result: Result,
  entries: readonly (Place & { readonly index: number })[],
  values: ArrayLike<Value>,
): Result {
  if (!result.ok) return result;
  const before = result.value as RecordValue;
  const record: Record<string, Value> = Object.assign(Object.create(null), before);
  for (const { entry, index } of entries) {
    const value = values[index] as Value;
    if (!entry || Number.isNaN(value)) continue;
    const { column, row } = entry;
    if (record[column] === before[column]) record[column] = [...(before[column] as readonly Value[])];
    (record[column] as Value[])[row] = value;
  }
  return { ...(result as Ok), value: record };
}
