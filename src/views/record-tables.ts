import type { Result, Value } from "../cells/index.ts";
import { unitOf } from "../library/at-first.ts";
import type { ChartTable } from "./charts/chart-table.ts";
import { formatValue } from "./format.ts";
import { isTable } from "./is-table.ts";
import { numbersTables } from "./study-numbers.ts";

export { numbersTables };

type Ok = Extract<Result, { readonly ok: true }>;
type Shape = Ok["shape"];

/** All that a record holds: its single values in a table of their own, then each table within it. */
export function tablesOfRecord({ shape, value }: Ok): ChartTable[] {
  if (shape.kind !== "record") return [];
  const fields = Object.entries(shape.fields).flatMap(([name, field]) => {
    const own = (value as Readonly<Record<string, Value | undefined>>)[name];
    return own === undefined ? [] : [{ name: named(name), field, own }];
  });
  const singles = fields.flatMap(({ name, field, own }) => (isTable(field) ? [] : [[name, formatValue(own, field)]]));
  return [
    ...(singles.length > 0
      ? [
          {
            title: shape.type === null ? "" : named(shape.type),
            columns: [plain("field"), plain("value")],
            rows: singles,
          },
        ]
      : []),
    ...fields.flatMap(({ name, field, own }) =>
      field.kind === "record" && isTable(field) ? [tableOf(name, field, own)] : [],
    ),
  ];
}

const named = (name: string): string => name.replaceAll("_", " ");
const plain = (name: string) => ({ name, unit: "" });

function tableOf(title: string, shape: Extract<Shape, { readonly kind: "record" }>, value: Value): ChartTable {
  const columns = Object.entries(shape.fields).flatMap(([name, list]) => {
    const values = (value as Readonly<Record<string, readonly Value[] | undefined>>)[name];
    return list.kind === "list" && values ? [{ name, of: list.of, values }] : [];
  });
  const count = Math.max(0, ...columns.map(({ values }) => values.length));
  return {
    title,
    columns: columns.map(({ name, of }) => ({
      name: named(name),
      unit: of.kind === "number" && of.unit !== "1" ? of.unit : "",
    })),
    rows: Array.from({ length: count }, (_, row) =>
      columns.map(({ of, values }) => {
        const each = values[row];
        if (each === undefined) return null;
        // Numbers in the unit of their column.
        return of.kind === "number" ? Number(each) / unitOf(of.unit).factor : formatValue(each, of);
      }),
    ),
  };
}
