import { attitudeOf } from "./attitude.ts";
import { type Body, equationsOfMotion, stateSize } from "./body.ts";
import type { SteadyCircle } from "./steady-circle.ts";

/** What may be disturbed, in order: speeds, turning, bank and pitch. */
const parts = ["u", "v", "w", "p", "q", "r", "bank", "pitch"] as const;
type Part = (typeof parts)[number];

/**
 * Rates of change of small disturbances of a steady glide with each other, 8 × 8 row by row in the order u v w p q r bank
 * pitch: central differences of the equations of motion themselves, so that all of their air and mass is in it.
 */
export function disturbanceMatrix(body: Body, circle: SteadyCircle): Float64Array {
  const slope = equationsOfMotion(body);
  const [state, rates] = [new Float64Array(stateSize), new Float64Array(stateSize)];
  const { u, v, w, bank, pitch, rate } = circle;
  const turning = [-Math.sin(pitch), Math.sin(bank) * Math.cos(pitch), Math.cos(bank) * Math.cos(pitch)];
  const steady = [u, v, w, ...turning.map((part) => part * rate), bank, pitch];
  const rateOf = (at: readonly number[]): number[] => {
    const [, , , p = 0, q = 0, r = 0, phi = 0, theta = 0] = at;
    state.set([...at.slice(0, 6), ...attitudeOf({ bank: phi, pitch: theta, heading: 0 }), 0, 0, 0]);
    slope(state, rates);
    const across = q * Math.sin(phi) + r * Math.cos(phi);
    return [...rates.slice(0, 6), p + Math.tan(theta) * across, q * Math.cos(phi) - r * Math.sin(phi)];
  };
  const matrix = new Float64Array(parts.length ** 2);
  parts.forEach((_, k) => {
    const step = k < 3 ? 1e-4 * u : 1e-4;
    const [more, less] = [1, -1].map((sign) => rateOf(steady.map((each, i) => (i === k ? each + sign * step : each))));
    parts.forEach((_, i) => {
      matrix[i * parts.length + k] = ((more?.[i] ?? 0) - (less?.[i] ?? 0)) / (2 * step);
    });
  });
  return matrix;
}

/** The part of it within the plane of symmetry: u, w, q and pitch. */
export const longitudinalPart = (matrix: Float64Array): number[] => part(matrix, ["u", "w", "q", "pitch"]);

/** The part of it out of that plane: v, p, r and bank. In a circle the two hang together a little; that is left out. */
export const lateralPart = (matrix: Float64Array): number[] => part(matrix, ["v", "p", "r", "bank"]);

const part = (matrix: Float64Array, names: readonly Part[]): number[] =>
  names.flatMap((row) =>
    names.map((column) => matrix[parts.indexOf(row) * parts.length + parts.indexOf(column)] as number),
  );
