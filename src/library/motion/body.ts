import { inverse } from "../numerics/inverse.ts";
import type { Slope } from "../numerics/runge-kutta.ts";

/**
 * The state of a gliding body, 13 numbers: speed u v w and turning p q r in body axes (x forward, y right, z down, at the
 * balance point), attitude as a quaternion w x y z (body to earth), place north, east, down.
 */
export const stateSize = 13;

/** Sets `loads` (X Y Z in N, L M N in N m, about the balance point, body axes) to those of the air at `state`. */
export type AirLoads = (state: Float64Array, loads: Float64Array) => void;

/** What moves: all in SI and body axes. */
export interface Body {
  readonly mass: number;
  /** Mass matrix of the rigid body, 6 × 6. */
  readonly rigid: Float64Array;
  /** What the air adds to it by acceleration alone, 6 × 6: apparent mass, and the lag of the downwash. */
  readonly apparent: Float64Array;
  readonly gravity: number;
  readonly air: AirLoads;
}

/**
 * Equations of motion of a rigid body in still air, Newton and Euler in body axes (B. Etkin, L. D. Reid, Dynamics of
 * Flight, 3rd ed. 1996, section 4.7; from memory), with apparent mass as acceleration terms only.
 */
export function equationsOfMotion({ mass, rigid, apparent, gravity, air }: Body): Slope {
  const accelerations = inverse(
    rigid.map((value, i) => value + (apparent[i] ?? 0)),
    6,
  );
  const loads = new Float64Array(6);
  const inertia = (i: number, j: number): number => rigid[(i + 3) * 6 + j + 3] as number;
  const [ixx, ixy, ixz] = [inertia(0, 0), inertia(0, 1), inertia(0, 2)];
  const [iyy, iyz, izz] = [inertia(1, 1), inertia(1, 2), inertia(2, 2)];
  return (state, slope) => {
    const [u, v, w, p, q, r, e0, e1, e2, e3] = state as unknown as TenNumbers;
    air(state, loads);
    // Weight: gravity · the third row of the turn from earth to body.
    const weight = mass * gravity;
    const [hx, hy, hz] = [ixx * p + ixy * q + ixz * r, ixy * p + iyy * q + iyz * r, ixz * p + iyz * q + izz * r];
    const fx = (loads[0] as number) + weight * 2 * (e1 * e3 - e0 * e2) - mass * (q * w - r * v);
    const fy = (loads[1] as number) + weight * 2 * (e2 * e3 + e0 * e1) - mass * (r * u - p * w);
    const fz = (loads[2] as number) + weight * (e0 * e0 - e1 * e1 - e2 * e2 + e3 * e3) - mass * (p * v - q * u);
    const mx = (loads[3] as number) - (q * hz - r * hy);
    const my = (loads[4] as number) - (r * hx - p * hz);
    const mz = (loads[5] as number) - (p * hy - q * hx);
    for (let i = 0; i < 6; i++) {
      const row = i * 6;
      slope[i] =
        (accelerations[row] as number) * fx +
        (accelerations[row + 1] as number) * fy +
        (accelerations[row + 2] as number) * fz +
        (accelerations[row + 3] as number) * mx +
        (accelerations[row + 4] as number) * my +
        (accelerations[row + 5] as number) * mz;
    }
    // A drift of the quaternion's length dies out instead of growing.
    const drift = 1 - (e0 * e0 + e1 * e1 + e2 * e2 + e3 * e3);
    slope[6] = 0.5 * (-e1 * p - e2 * q - e3 * r) + drift * e0;
    slope[7] = 0.5 * (e0 * p + e2 * r - e3 * q) + drift * e1;
    slope[8] = 0.5 * (e0 * q + e3 * p - e1 * r) + drift * e2;
    slope[9] = 0.5 * (e0 * r + e1 * q - e2 * p) + drift * e3;
    slope[10] = (e0 * e0 + e1 * e1 - e2 * e2 - e3 * e3) * u + 2 * (e1 * e2 - e0 * e3) * v + 2 * (e1 * e3 + e0 * e2) * w;
    slope[11] = 2 * (e1 * e2 + e0 * e3) * u + (e0 * e0 - e1 * e1 + e2 * e2 - e3 * e3) * v + 2 * (e2 * e3 - e0 * e1) * w;
    slope[12] = 2 * (e1 * e3 - e0 * e2) * u + 2 * (e2 * e3 + e0 * e1) * v + (e0 * e0 - e1 * e1 - e2 * e2 + e3 * e3) * w;
  };
}

type TenNumbers = readonly [number, number, number, number, number, number, number, number, number, number];
