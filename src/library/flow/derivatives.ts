import type { Derivatives } from "./derivatives-record.ts";
import { flowState, stateCount } from "./flow-state.ts";
import { loadSlopes, loadsAt, type QuadraticLoads } from "./quadratic-loads.ts";
import { type Reference, straightFlight } from "./wind-axes.ts";

/** Downwash that reaches the tailplane late: its slope by angle of attack, and the way from the wing to the tail. */
export interface Lag {
  readonly slope: number;
  readonly way: number;
}

/**
 * Stability derivatives of straight flight at an angle of attack, about the point of the loads. `axes`: "stability" has x
 * along the flight path in the plane of symmetry, as books have it, "body" along the glider. Lift and drag are always
 * square to and along the wind. Exact: the loads are quadratic in the state.
 */
export function derivativesAt(
  loads: QuadraticLoads,
  alpha: number,
  reference: Reference,
  axes: "stability" | "body",
  lag: Lag,
): Derivatives {
  const { area, span, chord } = reference;
  const state = straightFlight(alpha);
  const slopes = loadSlopes(loads, state);
  const at = new Float64Array(6);
  loadsAt(loads, state, at);
  const [x = 0, , z = 0] = at;
  const perArea = 2 / area;
  const [cos, sin] = [Math.cos(alpha), Math.sin(alpha)];
  const slope = (c: number, k: number) => perArea * (slopes[c * stateCount + k] as number);
  const [X, Y, Z, L, M, N] = [0, 1, 2, 3, 4, 5] as const;
  const { u, v, w, p, q, r, tailplane, fin } = flowState;
  const byAlpha = (c: number) => cos * slope(c, w) - sin * slope(c, u);
  // A control's number in the state is its angle times u.
  const byControl = (c: number, k: number) => cos * slope(c, k);
  const liftOf = (fx: number, fz: number) => fx * sin - fz * cos;
  // From body to stability axes, both of moment and of turning: C_lr,s = C_lr,b − α·C_lp,b + … (checked against books).
  const [cosAxes, sinAxes] = axes === "stability" ? [cos, sin] : [1, 0];
  const roll = (k: (c: number) => number) => (cosAxes * k(L) + sinAxes * k(N)) / span;
  const yaw = (k: (c: number) => number) => (cosAxes * k(N) - sinAxes * k(L)) / span;
  const perSpan = 2 / span;
  const byP = (c: number) => perSpan * (cosAxes * slope(c, p) + sinAxes * slope(c, r));
  const byR = (c: number) => perSpan * (cosAxes * slope(c, r) - sinAxes * slope(c, p));
  const byBeta = (c: number) => slope(c, v);
  const byFin = (c: number) => byControl(c, fin);
  const lift_tailplane = liftOf(byControl(X, tailplane), byControl(Z, tailplane));
  const pitch_tailplane = byControl(M, tailplane) / chord;
  // The tail meets the downwash of a time way/V ago: Etkin and Reid 1996, section 5.5 (from memory).
  const late = (2 * lag.slope * lag.way) / chord;
  return {
    lift_alpha: liftOf(byAlpha(X), byAlpha(Z)) + perArea * (x * cos + z * sin),
    drag_alpha: -(byAlpha(X) * cos + byAlpha(Z) * sin) + perArea * (x * sin - z * cos),
    pitch_alpha: byAlpha(M) / chord,
    lift_q: (2 * liftOf(slope(X, q), slope(Z, q))) / chord,
    pitch_q: (2 * slope(M, q)) / chord ** 2,
    lift_alpha_rate: late * lift_tailplane,
    pitch_alpha_rate: late * pitch_tailplane,
    side_beta: byBeta(Y),
    roll_beta: roll(byBeta),
    yaw_beta: yaw(byBeta),
    side_p: byP(Y),
    roll_p: roll(byP),
    yaw_p: yaw(byP),
    side_r: byR(Y),
    roll_r: roll(byR),
    yaw_r: yaw(byR),
    lift_tailplane,
    pitch_tailplane,
    side_fin: byFin(Y),
    roll_fin: roll(byFin),
    yaw_fin: yaw(byFin),
  };
}
