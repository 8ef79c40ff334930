/**
 * The state that all of the lattice is linear in, eight numbers. Of the body, in body axes (x forward, y right, z down)
 * at a reference point: speed u v w in m/s and turning p q r in rad/s. Then two controls, each an angle times u: how far
 * the tailplane is turned nose-up, and the fin nose-left (which turns the glider to the right).
 */
export const flowState = { u: 0, v: 1, w: 2, p: 3, q: 4, r: 5, tailplane: 6, fin: 7 } as const;
export const stateCount = 8;

export type Four = readonly [number, number, number, number];

/** Numbers of the state that a glider with equal halves answers by a flow with equal halves; the rest by opposite ones. */
export const evenStates: Four = [flowState.u, flowState.w, flowState.q, flowState.tailplane];
export const oddStates: Four = [flowState.v, flowState.p, flowState.r, flowState.fin];

/**
 * A flow has more parts than the state has numbers: in sideslip the wake leaves askew, and so each even number of the
 * state, times the sine of the sideslip, brings one more part, in the order of `evenStates`. All of these are odd.
 */
export const partCount = stateCount + evenStates.length;
export const askewParts: Four = [8, 9, 10, 11];

/** The number of the state that a part of the flow goes with. */
export const stateOf: readonly number[] = [...Array.from({ length: stateCount }, (_, k) => k), ...evenStates];

/** 1 for a part of the flow that has equal halves, else −1; for numbers of the state the same. */
export const parity: readonly number[] = Array.from({ length: partCount }, (_, k) => (evenStates.includes(k) ? 1 : -1));

/** Sine of the sideslip. */
export function skewOf(state: Float64Array): number {
  const u = state[0] as number;
  const v = state[1] as number;
  const w = state[2] as number;
  return v === 0 ? 0 : v / Math.sqrt(u * u + v * v + w * w);
}

/**
 * Sets `into` to how much there is of each part of the flow at a state, and returns it. `skew` is the sine of the
 * sideslip that turns the wake, where that is told for another point than the state.
 */
export function partsOf(state: Float64Array, into = new Float64Array(partCount), skew = skewOf(state)): Float64Array {
  for (let k = 0; k < stateCount; k++) into[k] = state[k] as number;
  for (let c = 0; c < 4; c++) into[stateCount + c] = skew * (state[evenStates[c] as number] as number);
  return into;
}

/** How many of the state's numbers move the air; the controls only turn surfaces. */
export const airStates = 6;

/**
 * Sets `into`, three numbers for each of `airStates` (and zeros behind them), to the velocity of the air against the body at a place (x aft, y
 * right, z up, from the reference point), for each number of the state alone being 1; its components in the same axes.
 */
export function airVelocities(x: number, y: number, z: number, into: Float64Array): void {
  for (let i = 0; i < into.length; i++) into[i] = 0; // quicker than fill for so few
  into[0] = 1; // u: from ahead
  into[4] = -1; // v: sideslip to the right, air from the right
  into[8] = 1; // w: sinking, air from below
  into[10] = -z; // p: right wing down
  into[11] = y;
  into[12] = -z; // q: nose up
  into[14] = x;
  into[15] = -y; // r: nose to the right
  into[16] = x;
}
