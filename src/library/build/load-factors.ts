import { freeFall } from "../units.ts";

/** Load factor of flight at a lift coefficient: ½·ρ·V²·C_L·S over the weight. */
export const loadAt = (speed: number, lift: number, mass: number, area: number, density: number): number =>
  (0.5 * density * speed ** 2 * lift * area) / (mass * freeFall);

/** Gust alleviation of Pratt and Walker, NACA TR 1206, 1954: K = 0.88·μ / (5.3 + μ), μ = 2(W/S)/(ρ·g·c·a). */
export function alleviation(mass: number, area: number, chord: number, slope: number, density: number): number {
  const ratio = (2 * mass) / (area * density * chord * slope);
  return (0.88 * ratio) / (5.3 + ratio);
}
