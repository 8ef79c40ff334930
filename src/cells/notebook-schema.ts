/**
 * The notebook file as a JSON Schema, from which its types derive. Kinds stand apart, so that a fault is told of the
 * kind that a cell says it is.
 */
import Type, { type Static } from "typebox";

const closed = { additionalProperties: false } as const;
const id = Type.String({ minLength: 1, maxLength: 64, description: "unique within the notebook" });
const name = Type.String({
  maxLength: 200,
  description: "by which formulas call it; a function cell's has parameters",
});
const formula = Type.String({ description: "in the formula language" });
const unit = Type.Optional(Type.String({ description: "the unit it is shown in" }));
const reason = Type.Optional(Type.String({ description: "why it is as it is" }));
const fraction = Type.Optional(
  Type.Union(
    [2, 4, 8, 16, 32, 64].map((of) => Type.Literal(of)),
    {
      description: "shows inches as shop fractions, down to one part in this many",
    },
  ),
);
const title = Type.Optional(Type.String({ description: "stands above it on the board" }));

const columnSchema = Type.Object(
  {
    name: Type.String({ minLength: 1 }),
    unit: Type.Optional(Type.String()),
    text: Type.Optional(Type.Boolean({ description: "holds plain text instead of formulas" })),
  },
  closed,
);

export const cellSchemas = {
  note: Type.Object({ id, kind: Type.Literal("note"), text: Type.String() }, closed),
  given: Type.Object(
    {
      id,
      kind: Type.Literal("given"),
      name,
      formula,
      unit,
      range: Type.Optional(
        Type.Array(Type.String(), { minItems: 2, maxItems: 3, description: "from, to, optional step" }),
      ),
      fraction,
      reason,
    },
    closed,
  ),
  derived: Type.Object({ id, kind: Type.Literal("derived"), name, formula, unit, fraction, reason }, closed),
  table: Type.Object(
    {
      id,
      kind: Type.Literal("table"),
      name,
      columns: Type.Array(columnSchema),
      rows: Type.Array(Type.Array(Type.String())),
      reason,
    },
    closed,
  ),
  check: Type.Object({ id, kind: Type.Literal("check"), name, formula, reason }, closed),
  decision: Type.Object(
    {
      id,
      kind: Type.Literal("decision"),
      question: Type.String(),
      chosen: Type.String(),
      why: Type.String(),
      alternatives: Type.Optional(
        Type.Array(Type.Object({ option: Type.String(), why_not: Type.String() }, closed), {
          description: "what else was considered",
        }),
      ),
      revisit: Type.Optional(Type.String({ description: "when to look again" })),
    },
    closed,
  ),
  question: Type.Object(
    {
      id,
      kind: Type.Literal("question"),
      about: Type.String({ description: "the cell whose value is hidden until this is answered" }),
      prompt: Type.String(),
      answer: Type.Union([Type.String(), Type.Null()]),
      because: Type.String(),
    },
    closed,
  ),
  drawing: Type.Object(
    {
      id,
      kind: Type.Literal("drawing"),
      view: Type.String(),
      of: Type.String({ description: "a name, with fields and elements" }),
      title,
    },
    closed,
  ),
  chart: Type.Object(
    {
      id,
      kind: Type.Literal("chart"),
      view: Type.String(),
      sweep: Type.Optional(Type.String({ description: "the given that is swept over its range" })),
      x: Type.Optional(Type.String({ description: "the name along the axis" })),
      y: Type.Optional(Type.Array(Type.String(), { minItems: 1, description: "the names drawn against it" })),
      title,
    },
    closed,
  ),
} as const;

export const trialSchema = Type.Object(
  { name: Type.String(), set: Type.Record(Type.String(), Type.String()) },
  { ...closed, description: "a named set of changed givens or table entries" },
);

export type Kind = keyof typeof cellSchemas;
export type CellOf<K extends Kind> = Readonly<Static<(typeof cellSchemas)[K]>>;
export type Column = Readonly<Static<typeof columnSchema>>;
export type Trial = Readonly<Static<typeof trialSchema>>;
