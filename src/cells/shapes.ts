import { agree, type Dimension, dimensionless, equal, inWords, join, siUnit } from "../library/quantity.ts";
import type { BooleanShape, ListShape, NumberShape, RecordShape, Shape, TextShape } from "../library/spec.ts";

export const textShape: TextShape = { kind: "text" };
export const booleanShape: BooleanShape = { kind: "boolean" };

/** A number of this dimension, told in `unit`, or in the SI unit where none is said. */
export const numberShape = (dimension: Dimension, unit: string = siUnit(dimension)): NumberShape => ({
  kind: "number",
  dimension,
  unit,
});

export const listShape = (of: Shape): ListShape => ({ kind: "list", of });

/** A table: a record of lists, without a kind of its own. */
export const tableShape = (fields: Readonly<Record<string, Shape>>): RecordShape => ({
  kind: "record",
  type: null,
  fields,
});

/** The number a shape stands for, or each element of the list it stands for; null for any other shape. */
export function numberWithin(shape: Shape): NumberShape | null {
  if (shape.kind === "number") return shape;
  return shape.kind === "list" && shape.of.kind === "number" ? shape.of : null;
}

/** A shape in words with its article: "a length", "a list, each element an angle", "a wing", "a table". */
export function describe(shape: Shape): string {
  switch (shape.kind) {
    case "number":
      return inWords(shape.dimension);
    case "any":
      return "a number";
    case "text":
      return "a text";
    case "boolean":
      return "a yes or no";
    case "list":
      return `a list, each element ${describe(shape.of)}`;
    case "record": {
      if (shape.type === null) return "a table";
      const name = shape.type.replaceAll("_", " ");
      // More than one: "joint bevels".
      if (/[^s]s$/.test(name)) return name;
      return `${/^[aeiou]/.test(name) ? "an" : "a"} ${name}`;
    }
  }
}

/** The shape that both fit, or null where they are of two kinds. Units of the first are kept. */
export function joinShapes(a: Shape, b: Shape): Shape | null {
  if (a.kind === "number" && b.kind === "number") {
    if (!agree(a.dimension, b.dimension)) return null;
    const joined = join(a.dimension, b.dimension);
    return equal(joined, a.dimension) ? a : numberShape(joined);
  }
  if (a.kind === "list" && b.kind === "list") {
    const of = joinShapes(a.of, b.of);
    return of && (of === a.of ? a : listShape(of));
  }
  if (a.kind === "record" && b.kind === "record") {
    if (a.type !== b.type) return null;
    return a.type !== null ? a : joinTables(a, b);
  }
  return a.kind === b.kind && (a.kind === "text" || a.kind === "boolean") ? a : null;
}

/** True where both stand for the same values, units of display included: a cell's readers need no second check. */
export function sameShape(a: Shape, b: Shape): boolean {
  if (a === b) return true;
  if (a.kind === "number" && b.kind === "number") return equal(a.dimension, b.dimension) && a.unit === b.unit;
  if (a.kind === "list" && b.kind === "list") return sameShape(a.of, b.of);
  if (a.kind === "record" && b.kind === "record") {
    if (a.type !== b.type) return false;
    const names = Object.keys(a.fields);
    if (names.length !== Object.keys(b.fields).length) return false;
    return names.every((name) => {
      const [left, right] = [fieldOf(a, name), fieldOf(b, name)];
      return left && right ? sameShape(left, right) : false;
    });
  }
  return a.kind === b.kind && (a.kind === "text" || a.kind === "boolean");
}

/** A text that is the same for two shapes where `sameShape` is true, and for no others. */
export function shapeKey(shape: Shape): string {
  switch (shape.kind) {
    case "number":
      return `${shape.dimension.join(" ")} ${shape.unit}`;
    case "list":
      return `[${shapeKey(shape.of)}]`;
    case "record": {
      const fields = Object.keys(shape.fields).sort();
      return `${shape.type}{${fields.map((name) => `${name}: ${shapeKey(shape.fields[name] as Shape)}`).join()}}`;
    }
    default:
      return shape.kind;
  }
}

/** The shape of a record's field; names of the prototype are no fields. */
export const fieldOf = (shape: RecordShape, name: string): Shape | undefined =>
  Object.hasOwn(shape.fields, name) ? shape.fields[name] : undefined;

/** SI unit of a number, or what stands for it: `text`, `boolean`, `record`; a list is told by its elements. */
export function dimensionText(shape: Shape): string {
  switch (shape.kind) {
    case "number":
      return siUnit(shape.dimension);
    case "any":
      return siUnit(dimensionless);
    case "list":
      return dimensionText(shape.of);
    default:
      return shape.kind;
  }
}

function joinTables(a: RecordShape, b: RecordShape): Shape | null {
  const names = Object.keys(a.fields);
  if (names.length !== Object.keys(b.fields).length) return null;
  const fields: Record<string, Shape> = Object.create(null);
  for (const name of names) {
    const [left, right] = [fieldOf(a, name), fieldOf(b, name)];
    const joined = left && right && joinShapes(left, right);
    if (!joined) return null;
    fields[name] = joined;
  }
  return tableShape(fields);
}
