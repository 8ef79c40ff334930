import { rungeKutta } from "../numerics/runge-kutta.ts";
import { type Attitude, anglesOf } from "./attitude.ts";
import { equationsOfMotion, stateSize } from "./body.ts";
import type { FlyingBody } from "./flying-body.ts";
import type { Flight } from "./settling.ts";

/** A flight with all that is told of it: columns of equal length, a row each sample. */
export interface FullFlight extends Flight {
  readonly pitch: readonly number[];
  readonly heading: readonly number[];
  readonly sideslip: readonly number[];
  readonly angle: readonly number[];
  readonly north: readonly number[];
  readonly east: readonly number[];
  /** How far the most stalled strip has stalled, 0 to 1. */
  readonly stalled: readonly number[];
}

export interface FlyOptions {
  readonly seconds: number;
  /** Length of a step, s. The roll's root is near −30/s: 0.01 s leaves an error far below what can be seen. */
  readonly step?: number;
  /** Steps from one sample to the next. */
  readonly every?: number;
}

/**
 * Flies a body from a state for so long. It ends early where the state is no longer finite or the body turns faster
 * than ten times a second: then the model has long ended.
 */
export function fly(
  body: FlyingBody,
  start: Float64Array,
  { seconds, step = 0.01, every = 2 }: FlyOptions,
): FullFlight {
  const columns = {
    ...{ time: [], bank: [], speed: [], height: [], pitch: [], heading: [], sideslip: [], angle: [] },
    ...{ north: [], east: [], stalled: [] },
  } as { [K in keyof FullFlight]: number[] };
  const state = Float64Array.from(start);
  const move = rungeKutta(stateSize, equationsOfMotion(body));
  const loads = new Float64Array(6);
  const note = (time: number): void => {
    const [u, v, w] = state as unknown as readonly [number, number, number];
    const speed = Math.hypot(u, v, w);
    body.air(state, loads);
    const { bank, pitch, heading } = anglesOf([...state.slice(6, 10)] as unknown as Attitude);
    const sample = { time, bank, pitch, heading, speed, height: -(state[12] as number) };
    const more = { sideslip: Math.asin(v / speed), angle: Math.atan2(w, u), stalled: body.stalled() };
    const place = { north: state[10] as number, east: state[11] as number };
    for (const [name, value] of Object.entries({ ...sample, ...more, ...place })) {
      columns[name as keyof FullFlight].push(value);
    }
  };
  note(0);
  const count = Math.round(seconds / step);
  for (let i = 1; i <= count; i++) {
    move(state, step);
    const turning = Math.hypot(state[3] as number, state[4] as number, state[5] as number);
    if (!(turning < 20 * Math.PI) || !state.every(Number.isFinite)) break;
    if (i % every === 0) note(i * step);
  }
  return columns;
}
