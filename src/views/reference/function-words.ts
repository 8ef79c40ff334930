/** What a spec says, in words: signature, units, ranges, what may be left out, what comes out. */
import { describe } from "../../cells/index.ts";
import type { AnyFunctionSpec, FunctionTable, Shape } from "../../library/index.ts";
import { formatNumber, formatValue, joinUnit } from "../format.ts";
import { words } from "../words.ts";

const { reference } = words;

/** How it is called: `glide(mass, wing, [shape])`, what may be left out in brackets. */
export function signatureOf({ name, parameters }: AnyFunctionSpec): string {
  const all = Object.entries(parameters).map(([each, shape]) => (mayBeLeftOut(shape) ? `[${each}]` : each));
  return `${name}(${all.join(", ")})`;
}

export const mayBeLeftOut = (shape: Shape): boolean => shape.optional === true || shape.default !== undefined;

/** One line of a table of parameters, columns or fields. */
export interface Line {
  readonly name: string;
  readonly summary: string;
  readonly unit: string;
  /** What it may be, and what stands where it is left out. */
  readonly limits: string;
  /** A column of the table above it. */
  readonly isColumn: boolean;
}

/** The parameters, the columns of a table below it; `functions` tell what makes a record. */
export function parameterLines({ parameters }: AnyFunctionSpec, functions: FunctionTable): Line[] {
  return Object.entries(parameters).flatMap(([name, shape]) => [
    lineOf(name, shape, functions, false),
    ...(shape.kind === "record" && shape.type === null ? columnLines(shape.fields, functions) : []),
  ]);
}

/** The fields of the record that it gives; none where it gives anything else. */
export function fieldLines({ result }: AnyFunctionSpec, functions: FunctionTable): Line[] {
  if (result.kind !== "record") return [];
  return Object.entries(result.fields).map(([name, shape]) => lineOf(name, shape, functions, false));
}

/** What it gives, in words: what it is, and its unit. */
export function resultText({ result }: AnyFunctionSpec): string {
  const unit = unitText(result);
  const summary = result.summary ?? describe(result);
  return unit === "" ? summary : `${summary}, ${reference.inUnit(unit)}`;
}

/** The unit of a number, or of each number of a list; what else it is. */
export function unitText(shape: Shape): string {
  switch (shape.kind) {
    case "number":
      return shape.unit === "1" ? reference.plainNumber : shape.unit;
    case "any":
      return reference.anyUnit;
    case "list":
      return unitText(shape.of);
    case "text":
      return reference.text;
    case "boolean":
      return reference.yesOrNo;
    case "record":
      return "";
  }
}

function columnLines(columns: Readonly<Record<string, Shape>>, functions: FunctionTable): Line[] {
  return Object.entries(columns).map(([name, column]) => {
    // A column is a list of what is said of each entry; that it may be missing is said of the column.
    const of = column.kind === "list" ? column.of : column;
    return lineOf(name, column.optional ? { ...of, optional: true } : of, functions, true);
  });
}

function lineOf(name: string, shape: Shape, functions: FunctionTable, isColumn: boolean): Line {
  const summary = shape.summary ?? (shape.kind === "list" ? shape.of.summary : undefined) ?? describe(shape);
  return { name, summary, unit: unitText(shape), limits: limitsText(shape, functions), isColumn };
}

function limitsText(shape: Shape, functions: FunctionTable): string {
  const of = shape.kind === "list" ? shape.of : shape;
  const parts = [rangeText(of), choicesText(of), makersText(of, functions), omissionText(shape)];
  return parts.filter((part) => part !== "").join("; ");
}

/** "more than 0, at most 1.5". */
function rangeText(shape: Shape): string {
  const { min, max, above, below } = shape;
  if (min !== undefined && max !== undefined) return reference.fromTo(told(min, shape), told(max, shape));
  const parts = [
    ...(above === undefined ? [] : [reference.above(told(above, shape))]),
    ...(min === undefined ? [] : [reference.atLeast(told(min, shape))]),
    ...(below === undefined ? [] : [reference.below(told(below, shape))]),
    ...(max === undefined ? [] : [reference.atMost(told(max, shape))]),
  ];
  return parts.join(", ");
}

function told(value: number, shape: Shape): string {
  if (!Number.isFinite(value)) return String(value);
  return joinUnit(formatNumber(value, value === 0 || shape.kind !== "number" ? "1" : shape.unit));
}

const choicesText = (shape: Shape): string =>
  shape.kind === "text" && shape.choices ? reference.oneOf(shape.choices.map((each) => `“${each}”`).join(", ")) : "";

/** A record comes from the functions that give one of its kind. */
function makersText(shape: Shape, functions: FunctionTable): string {
  if (shape.kind !== "record" || shape.type === null) return "";
  const { type } = shape;
  const makers = [...functions.values()].filter(({ result }) => result.kind === "record" && result.type === type);
  return makers.length === 0 ? "" : reference.madeBy(makers.map(({ name }) => name).join(", "));
}

function omissionText(shape: Shape): string {
  if (shape.default === undefined) return shape.optional ? reference.leftOut : "";
  const text = formatValue(shape.default, shape);
  return reference.byDefault(shape.kind === "text" ? `“${text}”` : text);
}
