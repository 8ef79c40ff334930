import { agree, inWords } from "../library/quantity.ts";
import type { Shape } from "../library/spec.ts";
import type { UnitExpression } from "../library/units.ts";
import type { Column, TableCell } from "./cell.ts";
import { declaredUnit } from "./declared-unit.ts";
import { FormulaError } from "./errors.ts";
import { check } from "./formula-check.ts";
import { type Compilation, compileTree } from "./formula-compile.ts";
import { limits } from "./formula-parse.ts";
import { remedyFor } from "./formula-remedy.ts";
import { messages } from "./messages.ts";
import { isName } from "./names.ts";
import type { Part } from "./reading.ts";
import { describe, listShape, numberShape, tableShape, textShape } from "./shapes.ts";
import { isPlain } from "./standalone-number.ts";
import type { Scope } from "./typed-tree.ts";
import type { Inputs, RecordValue, Value } from "./value.ts";

type Entry = (inputs: Inputs) => number;

/** A table's shape, a record of lists, and the run that fills it from its entries. */
export function compileTable(
  cell: TableCell,
  parts: readonly Part[],
  scope: Scope,
  compilation: Compilation,
): { readonly shape: Shape; run(inputs: Inputs): Value } {
  if (cell.rows.length > limits.list) {
    throw new FormulaError("too_large", messages.tooManyRows(cell.rows.length, limits.list), [0, 0]);
  }
  const units = cell.columns.map((column, index) => unitOfColumn(column, cell.columns.slice(0, index)));
  const fields: Record<string, Shape> = Object.create(null);
  cell.columns.forEach((column, index) => {
    const unit = units[index];
    fields[column.name] = listShape(unit ? numberShape(unit.dimension, unit.text) : textShape);
  });
  const entries: Entry[][] = cell.columns.map(() => []);
  for (const part of parts) {
    const { row, column } = part.place ?? { row: 0, column: 0 };
    const name = cell.columns[column]?.name ?? "";
    const unit = units[column] as UnitExpression;
    entries[column]?.push(inPlace(row, name, () => compileEntry(part, unit, scope, compilation, row, name)));
  }
  const run = (inputs: Inputs): RecordValue => {
    const value: Record<string, Value> = Object.create(null);
    cell.columns.forEach((column, index) => {
      value[column.name] = column.text
        ? cell.rows.map((row) => row[index] ?? "")
        : (entries[index] ?? []).map((entry) => entry(inputs));
    });
    return value;
  };
  return { shape: tableShape(fields), run };
}

/** The unit of a column of numbers; null for a column of text. */
function unitOfColumn(column: Column, before: readonly Column[]): UnitExpression | null {
  if (!isName(column.name)) throw new FormulaError("syntax", messages.notAName(column.name), [0, 0]);
  if (before.some(({ name }) => name === column.name)) {
    throw new FormulaError("duplicate_name", messages.duplicateColumn(column.name), [0, 0]);
  }
  return column.text ? null : inColumn(column.name, () => declaredUnit(column.unit ?? "1", 0));
}

function compileEntry(
  part: Part,
  unit: UnitExpression,
  scope: Scope,
  compilation: Compilation,
  row: number,
  column: string,
): Entry {
  if (part.tree instanceof FormulaError) throw part.tree;
  const typed = check(part.tree, part.text, scope);
  if (typed.shape.kind !== "number") {
    throw new FormulaError("wrong_shape", messages.entryShape(describe(typed.shape)), typed.at);
  }
  const run = compileTree(typed, compilation);
  const plain = isPlain(part.tree);
  if (!plain && !agree(typed.shape.dimension, unit.dimension)) {
    const remedy = remedyFor(typed, unit.dimension, unit.text, part.text);
    const [wanted, got] = [inWords(unit.dimension), inWords(typed.shape.dimension)];
    throw new FormulaError("wrong_dimension", messages.unitDisagrees(unit.text, wanted, got, remedy), typed.at);
  }
  const { factor, offset } = plain ? unit : { factor: 1, offset: 0 };
  return (inputs) => inPlace(row, column, () => (run(inputs, []) as number) * factor + offset);
}

function inColumn<T>(column: string, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    throw new FormulaError(error.code, messages.inColumn(column, error.message), error.at);
  }
}

function inPlace<T>(row: number, column: string, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    const message =
      error.code === "bad_entry" || error.code === "waits"
        ? error.message
        : messages.inEntry(row + 1, column, error.message);
    throw new FormulaError(error.code, message, error.at, error.root, { row, column });
  }
}
