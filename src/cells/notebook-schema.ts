/**
 * The notebook file as a JSON Schema (draft 2020-12), from which the types of cells derive. The kinds stand apart, so
 * that a fault is told of the kind that a cell says it is. Keys stand in the order in which a file has them.
 */

/** The word by which a file says that it is a notebook. */
export const fileFormat = "spanwise-notebook";

/** An object with these keys and no other: those it must have, then those it may have. */
const closed = <const R extends object, const O extends object>(required: R, optional: O) =>
  ({
    type: "object",
    properties: { ...required, ...optional } as R & O,
    required: Object.keys(required) as (keyof R & string)[],
    additionalProperties: false,
  }) as const;
const listOf = <const S extends object>(items: S, notes = {}) => ({ type: "array", items, ...notes }) as const;
const text = (description?: string) => ({ type: "string", ...(description && { description }) }) as const;
const texts = (description: string) =>
  ({
    type: "object",
    additionalProperties: text(),
    propertyNames: { not: { const: "__proto__" } },
    description,
  }) as const;

const id = { type: "string", minLength: 1, maxLength: 64, description: "unique within the notebook" } as const;
const name = text("by which formulas call it; a function cell's has its parameters, as in lift(v, cl)");
const formula = text("in the formula language");
const unit = text("the unit it is shown in");
const reason = text("why it is as it is");
const title = text("stands above it on the board");
const fraction = {
  enum: [2, 4, 8, 16, 32, 64],
  description: "shows inches as shop fractions, down to one part in this many",
} as const;

const whole = (minimum: number, maximum: number, description: string) =>
  ({ type: "integer", minimum, maximum, description }) as const;
const range = listOf(text(), { minItems: 2, maxItems: 3, description: "from, to, optional step" });
const plusMinus = text("how far it may be off either way, such as 0.5 deg, or 5% of it");

const columnSchema = closed(
  { name: { type: "string", minLength: 1, description: "the field under which formulas find it" } },
  {
    unit: text("of its bare numbers, and the one it is shown in"),
    text: { type: "boolean", description: "holds plain text instead of formulas" },
  },
);

/** Limits of a study's numbers, held by the schema. */
export const studyLimits = { points: 10_000, builds: 1_000_000, seed: 4_294_967_295 } as const;

const studyInputSchema = closed(
  { input: text("a given, or a table entry such as panels[2].break") },
  {
    range,
    points: whole(2, studyLimits.points, "how many values over the range, both ends among them"),
    plus_minus: plusMinus,
    law: {
      enum: ["uniform", "triangular", "normal"],
      description: "how it is spread within ±; of a normal one ± is two standard deviations",
    },
    pair: text("the same input of the other half, off by the same law"),
    correlation: { type: "number", minimum: -1, maximum: 1, description: "of the two halves: 1 together, 0 apart" },
  },
);

/** The schema of each kind of cell. */
export const cellSchemas = {
  note: closed({ id, kind: { const: "note" }, text: text("prose, in which {name} shows a live value") }, {}),
  given: closed(
    { id, kind: { const: "given" }, name, formula },
    { unit, range, plus_minus: plusMinus, fraction, reason },
  ),
  derived: closed({ id, kind: { const: "derived" }, name, formula }, { unit, fraction, reason }),
  table: closed(
    {
      id,
      kind: { const: "table" },
      name,
      columns: listOf(columnSchema),
      rows: listOf(listOf(text()), { description: "each with one entry for each column" }),
    },
    { reason },
  ),
  check: closed({ id, kind: { const: "check" }, name, formula }, { reason }),
  decision: closed(
    { id, kind: { const: "decision" }, question: text("what was to be decided"), chosen: text(), why: text() },
    {
      alternatives: listOf(closed({ option: text(), why_not: text() }, {}), {
        description: "what else was considered",
      }),
      revisit: text("when to look again"),
    },
  ),
  question: closed(
    {
      id,
      kind: { const: "question" },
      about: text("the cell whose value is hidden until this is answered"),
      prompt: text(),
      answer: { type: ["string", "null"], description: "null until it is answered" },
      because: text("why the answer and the value differ"),
    },
    {},
  ),
  drawing: closed(
    { id, kind: { const: "drawing" }, view: text("which drawing"), of: text("a name, with fields and elements") },
    { title },
  ),
  chart: closed(
    { id, kind: { const: "chart" }, view: text("which chart") },
    {
      sweep: text("the given that is swept over its range"),
      x: text("the name along the axis"),
      y: listOf(text(), { minItems: 1, description: "the names drawn against it" }),
      curves: listOf(text(), {
        minItems: 1,
        description: "cells that give records, a curve for each; x and y are then fields of them",
      }),
      band: text("what is too small to see along the axis: a name of such a value, or of a share of it"),
      of: text("of a chart that shows one result, such as a flight: a name, with fields and elements"),
      title,
    },
  ),
  study: closed(
    {
      id,
      kind: { const: "study" },
      name,
      study: { enum: ["sweep", "map", "sensitivity", "tolerance", "solve", "best"], description: "what is asked" },
      inputs: listOf(studyInputSchema, { description: "what is set otherwise" }),
      results: listOf(text(), { description: "formulas that are told of each variant" }),
    },
    {
      goals: listOf({ enum: ["least", "most"] }, { description: "of best: what each result is to be" }),
      target: text("of solve: what the result is to reach"),
      checks: listOf(text(), { description: "the checks that count; all where left out" }),
      trials: listOf(text(), { description: "of sweep: one curve more for each" }),
      builds: whole(2, studyLimits.builds, "of tolerance: how many are built"),
      seed: whole(0, studyLimits.seed, "of tolerance and best: with the same one the same comes out"),
      title,
      reason,
    },
  ),
  sheet: closed(
    {
      id,
      kind: { const: "sheet" },
      of: text("a pattern, or what has one: a name, with fields and elements"),
    },
    {
      paper: { enum: ["A4", "A3", "Letter"], description: "A4 where left out" },
      lies: { enum: ["upright", "across"], description: "how the paper lies; upright where left out" },
      printed: closed(
        { on: text("day, as 2026-11-25"), parts: texts("what each part was then: its size, and a mark of its lines") },
        { trial: text("the trial that was on then") },
      ),
      title,
    },
  ),
} as const;

/** Every kind a cell can be, in the order of the schema. */
export const kinds = Object.keys(cellSchemas) as readonly Kind[];

const trialSchema = closed(
  {
    name: text(),
    set: texts("formulas by the given, or by the table entry such as panels[2].break, that they replace"),
  },
  {},
);

const head = { format: { const: fileFormat }, version: { const: 1 } } as const;
const trials = listOf(trialSchema, { description: "named sets of changed givens, held against the baseline" });
const board = listOf(id, {
  description:
    "ids of the drawings, charts and studies on the board, in its order; left out, all drawings and charts, in the order of the page",
});
const expectation = texts('what the tests hold it to, such as "9.21 deg ± 0.01 deg"');

/** The file without its format, its version and what is within its cells. */
export const bodySchema = closed({ title: text(), cells: { type: "array" } }, { board, trials, expect: expectation });

/** The whole file: shipped as notebook.schema.json. */
export const notebookSchema = {
  $schema: "https://json-schema.org/draft/2020-12/schema",
  title: "Spanwise notebook, version 1",
  ...closed(
    { ...head, title: text(), cells: listOf({ oneOf: Object.values(cellSchemas) }) },
    { board, trials, expect: expectation },
  ),
};

/** A JSON Schema as far as the ones above go. */
export interface Schema {
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly additionalProperties?: false | Schema;
  readonly minimum?: number;
  readonly maximum?: number;
}

/** The value that a schema describes, as far as the schemas above go. */
type Value<S> = S extends { readonly const: infer C }
  ? C
  : S extends { readonly enum: readonly (infer E)[] }
    ? E
    : S extends { readonly properties: infer P; readonly required: readonly (infer R)[] }
      ? { readonly [K in keyof P as K extends R ? K : never]: Value<P[K]> } & {
          readonly [K in keyof P as K extends R ? never : K]?: Value<P[K]>;
        }
      : S extends { readonly items: infer I }
        ? readonly Value<I>[]
        : S extends { readonly additionalProperties: infer V }
          ? { readonly [key: string]: Value<V> }
          : S extends { readonly type: infer T }
            ? Named[(T extends readonly (infer E)[] ? E : T) & keyof Named]
            : never;
interface Named {
  readonly string: string;
  readonly boolean: boolean;
  readonly null: null;
  readonly number: number;
  readonly integer: number;
}

export type Kind = keyof typeof cellSchemas;
export type CellOf<K extends Kind> = Value<(typeof cellSchemas)[K]>;
export type Column = Value<typeof columnSchema>;
export type Trial = Value<typeof trialSchema>;
export type StudyInput = Value<typeof studyInputSchema>;
