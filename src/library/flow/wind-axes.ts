import { flowState, stateCount } from "./flow-state.ts";
import { loadSlopes, loadsAt, type QuadraticLoads } from "./quadratic-loads.ts";

/** What coefficients are told on: area, span and mean chord of the wing. */
export interface Reference {
  readonly area: number;
  readonly span: number;
  readonly chord: number;
}

/** The state of straight flight at an angle of attack, at unit speed. */
export function straightFlight(alpha: number): Float64Array {
  const state = new Float64Array(stateCount);
  state[flowState.u] = Math.cos(alpha);
  state[flowState.w] = Math.sin(alpha);
  return state;
}

/** Coefficients of straight flight: lift square to the wind and drag along it, pitching moment nose-up. */
export interface Coefficients {
  readonly lift: number;
  readonly drag: number;
  readonly side: number;
  readonly roll: number;
  readonly pitch: number;
  readonly yaw: number;
}

/** Coefficients of straight flight at an angle of attack; roll and yaw about body axes. */
export function coefficientsAt(loads: QuadraticLoads, alpha: number, { area, span, chord }: Reference): Coefficients {
  const found = new Float64Array(6);
  loadsAt(loads, straightFlight(alpha), found);
  const [x = 0, y = 0, z = 0, l = 0, m = 0, n = 0] = found;
  const [cos, sin] = [Math.cos(alpha), Math.sin(alpha)];
  const perArea = 2 / area;
  return {
    lift: perArea * (x * sin - z * cos),
    drag: -perArea * (x * cos + z * sin),
    side: perArea * y,
    roll: (perArea * l) / span,
    pitch: (perArea * m) / chord,
    yaw: (perArea * n) / span,
  };
}

/** x of the neutral point, where pitching moment no more changes with the angle of attack; aft, in the loads' origin. */
export function neutralPlace(loads: QuadraticLoads, alpha: number): number {
  const slopes = loadSlopes(loads, straightFlight(alpha));
  const byAlpha = (c: number) =>
    Math.cos(alpha) * (slopes[c * stateCount + flowState.w] as number) -
    Math.sin(alpha) * (slopes[c * stateCount + flowState.u] as number);
  return loads.point[0] + byAlpha(4) / byAlpha(2);
}
