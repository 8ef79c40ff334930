/**
 * Dimensions of quantities and the laws by which they combine. Angle is a base dimension with the radian as its SI
 * unit, so that a sine can refuse a bare number; see `agree` for where an angle may pass as a number.
 */

/** Exponents of mass, length, time, temperature and angle. Fractions such as 0.5 occur after a square root. */
export type Dimension = readonly [mass: number, length: number, time: number, temperature: number, angle: number];

export const dimensionless: Dimension = [0, 0, 0, 0, 0];
export const angle: Dimension = [0, 0, 0, 0, 1];

/** Dimension of a product. */
export const multiply = (a: Dimension, b: Dimension): Dimension => combine(a, b, 1);

/** Dimension of a quotient. */
export const divide = (a: Dimension, b: Dimension): Dimension => combine(a, b, -1);

/** Dimension of `a` raised to a number without dimension. */
export function power(a: Dimension, exponent: number): Dimension {
  return [
    tidy(a[0] * exponent),
    tidy(a[1] * exponent),
    tidy(a[2] * exponent),
    tidy(a[3] * exponent),
    tidy(a[4] * exponent),
  ];
}

/** True where all five exponents are the same. */
export const equal = (a: Dimension, b: Dimension): boolean => sameBesidesAngle(a, b) && a[4] === b[4];

/** True for a number without any dimension. */
export const isDimensionless = (a: Dimension): boolean => equal(a, dimensionless);

/**
 * Two dimensions agree when mass, length, time and temperature agree and either the angle agrees too, or mass, length
 * or temperature is present: an arc is a length, a turn rate times a radius a speed, but `1/s` is no `rad/s`.
 */
export const agree = (a: Dimension, b: Dimension): boolean =>
  sameBesidesAngle(a, b) && (a[4] === b[4] || a[0] !== 0 || a[1] !== 0 || a[3] !== 0);

/** The dimension of two that agree, taken together: where their angles differ the result has none. */
export const join = (a: Dimension, b: Dimension): Dimension => (a[4] === b[4] ? a : [a[0], a[1], a[2], a[3], 0]);

/**
 * The SI unit of a dimension, as a formula writes it: `m`, `rad`, `kg/m^3`, `1/s`, `1`. The four named ones (N, Pa, J,
 * W) stand for themselves.
 */
export function siUnit(dimension: Dimension): string {
  const named = namedUnits.find(([, other]) => equal(dimension, other));
  if (named) return named[0];
  const over: string[] = [];
  const under: string[] = [];
  baseUnits.forEach((spelling, index) => {
    const exponent = dimension[index] ?? 0;
    if (exponent > 0) over.push(exponent === 1 ? spelling : `${spelling}^${short(exponent)}`);
    if (exponent < 0) under.push(exponent === -1 ? spelling : `${spelling}^${short(-exponent)}`);
  });
  return [over.join(" ") || "1", ...under].join("/");
}

/** The dimension in words, with its article: "a length", "an angle", "a number", else "a value in kg/m^3". */
export function inWords(dimension: Dimension): string {
  const named = words.find(([, other]) => equal(dimension, other));
  return named ? named[0] : `a value in ${siUnit(dimension)}`;
}

const baseUnits = ["kg", "m", "s", "K", "rad"] as const;

const namedUnits: readonly (readonly [string, Dimension])[] = [
  ["N", [1, 1, -2, 0, 0]],
  ["Pa", [1, -1, -2, 0, 0]],
  ["J", [1, 2, -2, 0, 0]],
  ["W", [1, 2, -3, 0, 0]],
];

const words: readonly (readonly [string, Dimension])[] = [
  ["a number", dimensionless],
  ["a mass", [1, 0, 0, 0, 0]],
  ["a length", [0, 1, 0, 0, 0]],
  ["a time", [0, 0, 1, 0, 0]],
  ["a temperature", [0, 0, 0, 1, 0]],
  ["an angle", angle],
  ["an area", [0, 2, 0, 0, 0]],
  ["a volume", [0, 3, 0, 0, 0]],
  ["a speed", [0, 1, -1, 0, 0]],
  ["an acceleration", [0, 1, -2, 0, 0]],
  ["a turn rate", [0, 0, -1, 0, 1]],
  ["a rate", [0, 0, -1, 0, 0]],
  ["a density", [1, -3, 0, 0, 0]],
  ["a mass per area", [1, -2, 0, 0, 0]],
  ["a force", [1, 1, -2, 0, 0]],
  ["a pressure", [1, -1, -2, 0, 0]],
  ["an energy or moment", [1, 2, -2, 0, 0]],
  ["a power", [1, 2, -3, 0, 0]],
  ["an impulse", [1, 1, -1, 0, 0]],
  ["a moment of inertia", [1, 2, 0, 0, 0]],
  ["a slope per angle", [0, 0, 0, 0, -1]],
];

const sameBesidesAngle = (a: Dimension, b: Dimension): boolean =>
  a[0] === b[0] && a[1] === b[1] && a[2] === b[2] && a[3] === b[3];

function combine(a: Dimension, b: Dimension, sign: 1 | -1): Dimension {
  return [
    tidy(a[0] + sign * b[0]),
    tidy(a[1] + sign * b[1]),
    tidy(a[2] + sign * b[2]),
    tidy(a[3] + sign * b[3]),
    tidy(a[4] + sign * b[4]),
  ];
}

/** The least number that all of 1 to 12 divide. */
const common = 27720;

/**
 * Exponents such as 3 · 0.1 must not miss 0.3 by a rounding error, a cube root must come back when it is cubed, and no
 * exponent is −0: what is next to a fraction of 1 to 12 parts is that fraction.
 */
function tidy(exponent: number): number {
  const fraction = Math.round(exponent * common) / common;
  return (Math.abs(fraction - exponent) < 1e-9 ? fraction : Math.round(exponent * 1e9) / 1e9) + 0;
}

const short = (exponent: number): number => Number(exponent.toPrecision(6));
