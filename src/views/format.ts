/**
 * How values are told on the screen and on the command line. Pure text, no page. The display unit is the cell's
 * choice; where it declares none, a number is told in the unit of its shape: that of the literal or of the library's field
 * it is, else the SI unit.
 */
import type { Value } from "../cells/index.ts";
import { unitOf } from "../library/at-first.ts";
import type { ListShape, RecordShape, Shape } from "../library/index.ts";

/** How a number is told. */
export interface NumberFormat {
  /** Significant figures, 4 unless said. Digits before the point are never rounded off. */
  readonly figures?: number;
  /** Tells inches and feet as shop fractions, down to one part in this many. Other units keep decimals. */
  readonly fraction?: number;
}

/** A number and its unit apart, so that the unit can stand smaller and softer. The unit is "" where there is none. */
export interface NumberText {
  readonly number: string;
  readonly unit: string;
}

/**
 * A number in SI, told in a unit: 0.2029… and "deg" give 11.63 and "deg". The sign is a true minus. From 0.0001 up to
 * 10 million it has no exponent, outside it reads 1.234e-7. Shop fractions are marked "≈" where they had to be rounded.
 * Throws where the unit is not one of the list.
 */
export const formatNumber = (value: number, unit: string, format: NumberFormat = {}): NumberText =>
  numberFormat(unit, format)(value);

/** As formatNumber, for many numbers in one unit, which is read once. */
export function numberFormat(
  unit: string,
  { figures = 4, fraction }: NumberFormat = {},
): (value: number) => NumberText {
  const { factor, offset } = unitOf(unit || "1");
  const shop = unit === "in" || unit === "ft" ? fraction : undefined;
  const told = unit === "1" ? "" : unit;
  return (value) => {
    const read = (value - offset) / factor;
    // A scale with an offset finds its zero only to a rounding error, which must not read −4e-12 °F.
    const shown = offset !== 0 && Math.abs(read) < 1e-9 ? 0 : read;
    return { number: shop === undefined ? decimal(shown, figures) : shopFraction(shown, shop), unit: told };
  };
}

/** A number and its unit as one text; no blank before % and °: "11.63 deg", "3.1%", "8°". */
export function joinUnit({ number, unit }: NumberText): string {
  return `${number}${jointOf(unit)}${unit}`;
}

/** What stands between a figure and the unit, or whatever else follows it. */
export const jointOf = (rest: string): "" | " " => (/^([%,]|°?$)/.test(rest) ? "" : " ");

/**
 * Any value of a cell as one line of text. Lists carry their unit once, at the end, and beyond eight elements are cut
 * short with the count; a table tells its rows; a record is told by the line of its own shape.
 */
export function formatValue(value: Value, shape: Shape, unit?: string, fraction?: number): string {
  switch (shape.kind) {
    case "number":
    case "any":
      return joinUnit(numberOf(value, shape, unit, fraction));
    case "text":
      return String(value);
    case "boolean":
      return value ? "yes" : "no";
    case "list":
      return listText(value as readonly Value[], shape, unit, fraction);
    case "record":
      return recordText(value, shape);
  }
}

const shortest = 1e-4;
const longest = 1e7;
const longestList = 8;

function decimal(value: number, figures: number): string {
  if (!Number.isFinite(value)) return Number.isNaN(value) ? "no number" : value > 0 ? "∞" : "−∞";
  const size = Math.abs(value);
  const sign = value < 0 ? "−" : "";
  if (size === 0) return "0";
  const rounded = size.toPrecision(figures);
  if (Number(rounded) < shortest || Math.round(size) >= longest) {
    const [digits = "", exponent = ""] = size.toExponential(figures - 1).split("e");
    return `${sign}${trimZeros(digits)}e${exponent.replace("+", "")}`;
  }
  // An exponent appears here only where there are more digits before the point than figures.
  return `${sign}${rounded.includes("e") ? Math.round(size) : trimZeros(rounded)}`;
}

function trimZeros(digits: string): string {
  if (!digits.includes(".")) return digits;
  let end = digits.length;
  while (digits[end - 1] === "0") end--;
  return digits.slice(0, digits[end - 1] === "." ? end - 1 : end);
}

function shopFraction(value: number, parts: number): string {
  if (!Number.isFinite(value)) return decimal(value, 4);
  const size = Math.abs(value);
  const count = Math.round(size * parts);
  // A value that came from a fraction differs from it by rounding errors only.
  const about = Math.abs(size - count / parts) > 1e-9 * Math.max(1, size) ? "≈ " : "";
  const whole = Math.floor(count / parts);
  const shared = commonDivisor(count % parts, parts);
  const rest = count % parts === 0 ? "" : `${(count % parts) / shared}/${parts / shared}`;
  const sign = value < 0 && count > 0 ? "−" : "";
  return `${about}${sign}${whole > 0 && rest ? `${whole} ${rest}` : rest || whole}`;
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

function numberOf(value: Value, shape: Shape, unit: string | undefined, fraction: number | undefined): NumberText {
  const told = unit ?? (shape.kind === "number" ? shape.unit : "1");
  return formatNumber(Number(value), told, fraction === undefined ? {} : { fraction });
}

function listText(values: readonly Value[], shape: ListShape, unit?: string, fraction?: number): string {
  if (values.length === 0) return "empty list";
  const told = values.length > longestList ? values.slice(0, longestList - 2) : values;
  const more = values.length > longestList ? ["…"] : [];
  const { bare, unit: shared } = elements(told, shape.of, unit, fraction);
  const count = values.length > longestList ? `, ${values.length} in all` : "";
  return `${joinUnit({ number: `[${[...bare, ...more].join(shape.of.kind === "record" ? "; " : ", ")}]`, unit: shared })}${count}`;
}

/** The elements without their unit, and the unit they share. */
function elements(values: readonly Value[], of: Shape, unit?: string, fraction?: number) {
  if (of.kind === "number" || of.kind === "any") {
    const texts = values.map((each) => numberOf(each, of, unit, fraction));
    return { bare: texts.map(({ number }) => number), unit: texts[0]?.unit ?? "" };
  }
  return { bare: values.map((each) => formatValue(each, of, unit, fraction)), unit: "" };
}

function recordText(value: Value, shape: RecordShape): string {
  if (shape.text) return shape.text(value as never);
  const fields = Object.entries(shape.fields);
  if (fields.length === 0 || fields.some(([, field]) => field.kind !== "list")) {
    return fields.length === 0 ? "no fields" : `fields ${fields.map(([name]) => name).join(", ")}`;
  }
  const columns = Object.values(value as Readonly<Record<string, readonly Value[] | undefined>>);
  const rows = Math.max(0, ...columns.map((column) => column?.length ?? 0));
  return rows === 1 ? "1 row" : `${rows} rows`;
}
