import fc from "fast-check";
import { isFigure } from "../../src/cells/board.ts";
import type { Cell, Notebook } from "../../src/cells/cell.ts";
import { bodySchema, cellSchemas, kinds, type Schema } from "../../src/cells/notebook-schema.ts";

/** What people type and what breaks programs: units, signs, other scripts, halves of letters, marks of the format itself. */
const words = [
  ..."12 mm|3/32 in|tip_break|wing(panels)|-20|°C|±|\n|\r\n|\t|\u2028|\ud83d\ude80|\ud83d|\udc00|\u0000|é|e\u0301|שלום".split(
    "|",
  ),
  ...'"|\\|{name}|[1]|, |: |</script>|__proto__|constructor|toString|~1|/|%|\ufeff'.split("|"),
];
const text = fc.oneof(
  fc.array(fc.constantFrom(...words), { maxLength: 12 }).map((parts) => parts.join("")),
  fc.string({ unit: "binary", maxLength: 20 }),
  fc.string({ minLength: 60, maxLength: 160 }),
);

/** Random notebooks, made from the schema itself, so that every kind and key occurs that a file can have. */
export const randomNotebook: fc.Arbitrary<Notebook> = fc
  .record(
    {
      title: text,
      cells: fc.uniqueArray(fc.oneof(...kinds.map((kind) => anyOf(cellSchemas[kind]))) as fc.Arbitrary<Cell>, {
        selector: ({ id }) => id,
        maxLength: 8,
      }),
      trials: anyOf(bodySchema.properties.trials),
      expect: anyOf(bodySchema.properties.expect),
      board: fc.array(fc.nat(20), { maxLength: 3 }),
    },
    { requiredKeys: ["title", "cells", "trials"] },
  )
  .map(({ board, ...notebook }) => {
    const whole = { ...notebook, cells: notebook.cells.map(withFullRows) } as Notebook;
    return board ? { ...whole, board: someFigures(whole, board) } : whole;
  });

/** Some of its drawings and charts, each once. */
function someFigures({ cells }: Notebook, picks: readonly number[]): readonly string[] {
  const ids = cells.filter(isFigure).map(({ id }) => id);
  return [...new Set(picks.flatMap((pick) => ids[pick % Math.max(1, ids.length)] ?? []))];
}

interface Limits extends Schema {
  readonly minLength?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
}

function anyOf(schema: Limits): fc.Arbitrary<unknown> {
  if ("const" in schema) return fc.constant(schema.const);
  if (schema.enum) return fc.constantFrom(...schema.enum);
  if (schema.properties) {
    const { properties } = schema;
    const { required } = schema as { readonly required: string[] };
    const values = Object.fromEntries(Object.entries(properties).map(([key, each]) => [key, anyOf(each)]));
    // Their keys in any order: the writer has to bring its own.
    return fc
      .record(values, { requiredKeys: required })
      .chain((object) =>
        fc
          .shuffledSubarray(Object.keys(object), { minLength: Object.keys(object).length })
          .map((keys) => Object.fromEntries(keys.map((key) => [key, object[key]]))),
      );
  }
  if (schema.items) {
    return fc.array(anyOf(schema.items), { minLength: schema.minItems ?? 0, maxLength: schema.maxItems ?? 5 });
  }
  if (schema.additionalProperties) {
    const key = text.filter((each) => each !== "__proto__");
    return fc
      .array(fc.tuple(key, anyOf(schema.additionalProperties)), { maxLength: 4 })
      .map((entries) => Object.fromEntries(entries));
  }
  return fc.oneof(...[schema.type ?? []].flat().map((type) => simple(type, schema)));
}

function simple(type: string, { minLength = 0, minimum: min = 0, maximum: max = 0 }: Limits): fc.Arbitrary<unknown> {
  if (type === "null") return fc.constant(null);
  if (type === "boolean") return fc.boolean();
  if (type === "string") return minLength === 0 ? text : fc.string({ minLength, maxLength: 12 });
  if (type === "integer") return fc.integer({ min, max });
  // JSON has no minus zero.
  if (type === "number") return fc.double({ min, max, noNaN: true }).map((value) => value + 0);
  throw new Error(`got the type ${type}, expected one that the schema of notebooks has; add it here`);
}

/** Rows of a table as wide as it: cut, or filled up. */
function withFullRows(cell: Cell): Cell {
  if (cell.kind !== "table") return cell;
  return { ...cell, rows: cell.rows.map((row) => cell.columns.map((_, column) => row[column] ?? "")) };
}
