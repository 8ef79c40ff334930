import { fixedPoint } from "../numerics/roots.ts";
import { freeFall } from "../units.ts";

/**
 * What the air does to a glider in steady flight without sideslip, over the dynamic pressure: lift and drag across and
 * along the flight path, and the nose-up moment about the balance point.
 */
export interface SteadyLoads {
  /** m². */
  readonly lift: number;
  readonly drag: number;
  /** The part of the drag that lift costs; the rest is friction and its like, and known only within its spread. */
  readonly induced: number;
  /** m³. */
  readonly moment: number;
  /** How far its most stalled strip has stalled: 0 not at all, 1 fully. */
  readonly stalled: number;
}

/** A glider as steady flight sees it. All functions of it are smooth. */
export interface Glides {
  readonly mass: number;
  /** Density of the air. */
  readonly density: number;
  /** Loads at an angle of attack of the fuselage, a speed, and an angle by which the tailplane is set more nose-up. */
  loads(angle: number, speed: number, tail: number): SteadyLoads;
  /** Nose-up moment over dynamic pressure that a pitch rate of one radian a metre of flight path makes, m⁴; below 0. */
  pitchDamping(angle: number, speed: number): number;
}

/** One steady flight: straight, or banked in a circle. */
export interface SteadyFlight {
  readonly angle: number;
  readonly tail: number;
  readonly bank: number;
  readonly speed: number;
  /** Angle of the path below the horizon. */
  readonly descent: number;
  /** Height lost each second. */
  readonly sink: number;
  readonly loads: SteadyLoads;
}

/**
 * The flight at an angle of attack. Across the path L·cos φ = W·cos γ, along it D = W·sin γ, so the dynamic pressure is
 * W/√(L²·cos² φ + D²) and tan γ = D/(L·cos φ) (derived; on a helix without sideslip). The moment is left as it comes.
 * With a guess of the speed the loads are those at the guess, and the flight is nearly steady.
 */
export function steadyFlight(glider: Glides, angle: number, bank = 0, tail = 0, guess?: number): SteadyFlight {
  const weight = glider.mass * freeFall;
  const speedFor = ({ lift, drag }: SteadyLoads) =>
    Math.sqrt((2 * weight) / (glider.density * Math.hypot(lift * Math.cos(bank), drag)));
  // Loads hang on the speed only through the Reynolds number.
  const speed = guess ?? fixedPoint((at) => speedFor(glider.loads(angle, at, tail)), 5);
  const loads = glider.loads(angle, speed, tail);
  const descent = Math.atan2(loads.drag, loads.lift * Math.cos(bank));
  const flown = guess === undefined ? speed : speedFor(loads);
  return { angle, tail, bank, speed: flown, descent, sink: flown * Math.sin(descent), loads };
}

/** Radius of its circle on the ground: V²·cos γ/(g·tan φ) (derived). Without bank it is infinite. */
export const turnRadius = ({ speed, bank, descent }: SteadyFlight): number =>
  (speed ** 2 * Math.cos(descent)) / (freeFall * Math.tan(Math.abs(bank)));

/** Lift over weight. */
export const loadFactor = ({ bank, descent }: SteadyFlight): number => Math.cos(descent) / Math.cos(bank);

/**
 * Pitch rate of a circle, for each metre of its path: Ω·sin φ·cos γ over the speed, with Ω = V·cos γ/R (derived). It
 * damps, and so wants the tail set more nose-down than straight flight at the same angle of attack.
 */
export function pitchPerMetre(flight: SteadyFlight): number {
  if (flight.bank === 0) return 0;
  return (Math.sin(Math.abs(flight.bank)) * Math.cos(flight.descent) ** 2) / turnRadius(flight);
}

/** The moment that is left over, with the damping of a circle. */
export const leftMoment = (glider: Glides, flight: SteadyFlight): number =>
  flight.loads.moment + glider.pitchDamping(flight.angle, flight.speed) * pitchPerMetre(flight);
