import { inverse } from "../numerics/inverse.ts";
import { attitudeOf } from "./attitude.ts";
import { type Body, equationsOfMotion, stateSize } from "./body.ts";

/** A steady glide, straight or in a circle: what the motion comes to rest in where it is stable. */
export interface SteadyCircle {
  readonly u: number;
  readonly v: number;
  readonly w: number;
  readonly bank: number;
  readonly pitch: number;
  /** Turning about the vertical, rad/s; to the right is above 0. */
  readonly rate: number;
}

type Six = [u: number, v: number, w: number, bank: number, pitch: number, rate: number];

/**
 * The steady glide near a first guess, in which no speed and no turning changes: Newton's steps on the six accelerations,
 * cut to what leaves the body on its wings. Null where there is none near by: a glider that only dives, stalls, or turns
 * ever tighter.
 */
export function steadyCircle(body: Body, guess: SteadyCircle): SteadyCircle | null {
  const slope = equationsOfMotion(body);
  const [state, rates] = [new Float64Array(stateSize), new Float64Array(stateSize)];
  const accelerations = (at: Six): Float64Array => {
    setSteady(state, at);
    slope(state, rates);
    return rates.slice(0, 6);
  };
  const at: Six = [guess.u, guess.v, guess.w, guess.bank, guess.pitch, guess.rate];
  const sizes = [guess.u, guess.u, guess.u, 1, 1, 1];
  for (let round = 0; round < 40; round++) {
    const off = accelerations(at);
    if (!off.every(Number.isFinite)) return null;
    const jacobian = new Float64Array(36);
    for (let k = 0; k < 6; k++) {
      const step = 1e-5 * (sizes[k] ?? 1);
      const [more, less] = [1, -1].map((sign) =>
        accelerations(at.map((each, i) => (i === k ? each + sign * step : each)) as Six),
      ) as [Float64Array, Float64Array];
      for (let i = 0; i < 6; i++) jacobian[i * 6 + k] = ((more[i] as number) - (less[i] as number)) / (2 * step);
    }
    const steps = stepsOf(jacobian, off);
    if (!steps) return null;
    const largest = Math.max(...steps.map((each, i) => Math.abs(each) / (sizes[i] ?? 1)));
    const share = Math.min(1, 0.2 / largest);
    steps.forEach((each, i) => {
      at[i] = (at[i] as number) - share * each;
    });
    if (largest < 1e-9) break;
    if (Math.abs(at[3]) > 1.4 || Math.abs(at[4]) > 1.4 || !(at[0] > 0)) return null;
  }
  const left = Math.max(...accelerations(at).map(Math.abs));
  if (!(left < 1e-5)) return null;
  const [u, v, w, bank, pitch, rate] = at;
  return { u, v: unlessRounding(v), w, bank: unlessRounding(bank), pitch, rate: unlessRounding(rate) };
}

/** What rounding leaves of nothing is no bank, no slip and no turning to be told of. */
export const unlessRounding = (value: number): number => (Math.abs(value) < 1e-10 ? 0 : value);

/** Sets a state to a steady circle at heading 0 and height 0. */
export function setSteady(state: Float64Array, [u, v, w, bank, pitch, rate]: Six): void {
  const [p, q, r] = [-Math.sin(pitch), Math.sin(bank) * Math.cos(pitch), Math.cos(bank) * Math.cos(pitch)];
  state.set([u, v, w, rate * p, rate * q, rate * r, ...attitudeOf({ bank, pitch, heading: 0 }), 0, 0, 0]);
}

function stepsOf(jacobian: Float64Array, off: Float64Array): number[] | null {
  try {
    const inverted = inverse(jacobian, 6);
    return Array.from({ length: 6 }, (_, i) =>
      off.reduce((sum, each, k) => sum + each * (inverted[i * 6 + k] as number), 0),
    );
  } catch {
    return null;
  }
}
