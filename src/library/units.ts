/**
 * The closed list of unit spellings and the reading of unit expressions such as `mm`, `kg/m^3`, `N s`, `1/rad`.
 * Factors: exact by definition (BIPM, The International System of Units, 9th ed. 2019; international yard and pound
 * agreement 1959; NIST SP 811, 2008, appendix B.8) unless a comment says otherwise.
 */
import { type Dimension, dimensionless, multiply, power } from "./quantity.ts";
import { nearest } from "./spelling.ts";

export { nearest, type Spelling, spelling } from "./spelling.ts";

/** One spelling: SI value = number × factor + offset. */
export interface Unit {
  readonly spelling: string;
  readonly factor: number;
  readonly dimension: Dimension;
  /** Only °C and °F have one: they name points of a scale and take no part in arithmetic. */
  readonly offset?: number;
}

/** A unit expression that was understood: SI value = number × factor + offset. */
export interface UnitExpression {
  readonly text: string;
  readonly factor: number;
  readonly offset: number;
  readonly dimension: Dimension;
}

/** Where a unit expression was not understood: the range of the word, and the nearest spelling if one is near. */
export interface UnitFault {
  readonly from: number;
  readonly to: number;
  readonly word: string;
  readonly nearest: string | null;
  /** True where °C or °F stands with a power or beside another unit. */
  readonly scale: boolean;
}

const inch = 0.0254;
const pound = 0.45359237;
/** Standard acceleration of free fall, m/s² (3rd CGPM, 1901). */
export const freeFall = 9.80665;

const list: readonly Unit[] = [
  unit("m", 1, [0, 1, 0, 0, 0]),
  unit("cm", 1e-2, [0, 1, 0, 0, 0]),
  unit("mm", 1e-3, [0, 1, 0, 0, 0]),
  unit("km", 1e3, [0, 1, 0, 0, 0]),
  unit("in", inch, [0, 1, 0, 0, 0]),
  unit("ft", 12 * inch, [0, 1, 0, 0, 0]),
  unit("yd", 36 * inch, [0, 1, 0, 0, 0]),
  unit("kg", 1, [1, 0, 0, 0, 0]),
  unit("g", 1e-3, [1, 0, 0, 0, 0]),
  unit("mg", 1e-6, [1, 0, 0, 0, 0]),
  unit("lb", pound, [1, 0, 0, 0, 0]),
  unit("oz", pound / 16, [1, 0, 0, 0, 0]),
  unit("N", 1, [1, 1, -2, 0, 0]),
  unit("lbf", pound * freeFall, [1, 1, -2, 0, 0]),
  unit("Pa", 1, [1, -1, -2, 0, 0]),
  unit("kPa", 1e3, [1, -1, -2, 0, 0]),
  unit("MPa", 1e6, [1, -1, -2, 0, 0]),
  unit("GPa", 1e9, [1, -1, -2, 0, 0]),
  unit("psi", (pound * freeFall) / (inch * inch), [1, -1, -2, 0, 0]),
  unit("s", 1, [0, 0, 1, 0, 0]),
  unit("min", 60, [0, 0, 1, 0, 0]),
  unit("h", 3600, [0, 0, 1, 0, 0]),
  unit("kn", 1852 / 3600, [0, 1, -1, 0, 0]),
  unit("mph", (5280 * 12 * inch) / 3600, [0, 1, -1, 0, 0]),
  unit("deg", Math.PI / 180, [0, 0, 0, 0, 1]),
  unit("°", Math.PI / 180, [0, 0, 0, 0, 1]),
  unit("rad", 1, [0, 0, 0, 0, 1]),
  unit("J", 1, [1, 2, -2, 0, 0]),
  unit("W", 1, [1, 2, -3, 0, 0]),
  unit("K", 1, [0, 0, 0, 1, 0]),
  unit("°C", 1, [0, 0, 0, 1, 0], 273.15),
  unit("°F", 5 / 9, [0, 0, 0, 1, 0], 459.67 * (5 / 9)),
  unit("%", 0.01, dimensionless),
];

/** Every unit by its spelling. */
export const units: ReadonlyMap<string, Unit> = new Map(list.map((each) => [each.spelling, each]));

/**
 * Reads a unit expression: spellings with whole powers (`m^2`, `s^-1`), joined by `/` (divides by the one unit after
 * it) or blanks (multiplies); `1` and a leading `1/` are allowed, as in `1/rad`. Gives a fault, never throws.
 */
export const parseUnit = (text: string): UnitExpression | UnitFault => read(text, wholePowers);

function read(text: string, term: RegExp): UnitExpression | UnitFault {
  let at = 0;
  let divides = false;
  let factor = 1;
  let offset = 0;
  let dimension = dimensionless;
  const one = /^\s*1\s*(\/|$)/.exec(text);
  if (one) {
    at = one[0].length;
    divides = one[1] === "/";
    if (!divides) return { text, factor, offset, dimension };
  }
  let count = 0;
  do {
    const match = term.exec(text.slice(at));
    const word = match?.[2] ?? "";
    const from = at + (match?.[1]?.length ?? 0);
    const found = units.get(word);
    const exponent = (divides ? -1 : 1) * Number(match?.[3] ?? 1);
    if (!match || !found) {
      const rest = word || text.slice(from).trim();
      return { from, to: from + rest.length, word: rest, nearest: nearest(rest, units.keys()), scale: false };
    }
    at += match[0].length;
    count++;
    const more = at < text.length;
    if (found.offset !== undefined) {
      if (count > 1 || exponent !== 1 || more || one) {
        return { from, to: from + word.length, word, nearest: "K", scale: true };
      }
      offset = found.offset;
    }
    factor *= found.factor ** exponent;
    dimension = multiply(dimension, power(found.dimension, exponent));
    divides = match[4] === "/";
    if (!more && divides) return { from: at - 1, to: at, word: "/", nearest: null, scale: false };
  } while (at < text.length);
  return { text, factor, offset, dimension };
}

/** Tells a fault from an expression. */
export const isUnitFault = (result: UnitExpression | UnitFault): result is UnitFault => "word" in result;

/**
 * The unit of our own code: throws where `parseUnit` would give a fault. It also reads the fractional powers of `siUnit`,
 * such as the `m^0.5` of the square root of a length.
 */
export function unitOf(text: string): UnitExpression {
  const result = read(text, anyPowers);
  if (isUnitFault(result)) throw new Error(`got the unit "${text}", expected one of ${[...units.keys()].join(" ")}`);
  return result;
}

/** A spelling with its power, and the slash after it. */
const termPattern = (power: string): RegExp =>
  new RegExp(`^([ \\t]*)([A-Za-z_°%][A-Za-z0-9_]*)(?:\\^(${power}))?[ \\t]*(/?)`);
const wholePowers = termPattern("-?\\d+");
const anyPowers = termPattern("-?\\d+(?:\\.\\d+)?(?:e-?\\d+)?");

function unit(spelling: string, factor: number, dimension: Dimension, offset?: number): Unit {
  return offset === undefined ? { spelling, factor, dimension } : { spelling, factor, dimension, offset };
}
