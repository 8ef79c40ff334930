import { degrees } from "../numerics/degrees.ts";
import { smoothStep } from "../numerics/smooth-curve.ts";

/**
 * How a section lifts and drags before its stall, at any Reynolds number: what `thinPolar` makes of a thin section and
 * `measuredPolar` of a table. Smooth to the first derivative in lift and Reynolds number, so that whatever is solved or
 * differentiated on top of it is smooth as well. Angles in radians, of the chord line; coefficients on the chord.
 */
export interface Polar {
  readonly zeroLiftAngle: number;
  /** Nose-up moment coefficient about a quarter of the chord. */
  readonly moment: number;
  /** Lift slope per radian. */
  slope(reynolds: number): number;
  /** Largest lift, and largest downward lift (below 0). */
  maxLift(reynolds: number): number;
  minLift(reynolds: number): number;
  /** Drag at a lift between those two. */
  drag(lift: number, reynolds: number): number;
  /** The least of it at any lift: friction. */
  leastDrag(reynolds: number): number;
}

/** What a strip of a surface feels, on its chord. */
export interface StripForces {
  readonly lift: number;
  readonly drag: number;
  /** 0 while the flow follows the section, 1 once it has left it. */
  readonly stalled: number;
}

/** By how far before and behind the straight line's crossing of the largest lift its corner is rounded. */
const rounding = 0.1;
/** Lift lost past the stall, and over which angle (from memory). */
const fall = 0.15;
const fallAngle = degrees(5);
/** Reynolds number at which the laws are held in nearly still air. */
const stillest = 1000;

/**
 * Lift and drag of a strip whose lift would be `straight` if its lift curve never bent: slope · (angle − zero-lift
 * angle), or what a lattice says that it carries. The corner at the largest lift is rounded, then lift falls by 15 % over
 * 5 deg; past it the force comes to stand square on the chord, so drag goes from that of the polar to friction plus
 * lift · tan(angle) (derived: no suction is left at the leading edge). Smooth in both arguments.
 */
export function stripForces(polar: Polar, straight: number, reynolds: number): StripForces {
  const re = Math.max(reynolds, stillest);
  const up = straight >= 0;
  const most = Math.abs(up ? polar.maxLift(re) : polar.minLift(re));
  const round = Math.min(rounding, most / 2);
  const past = Math.abs(straight) - most;
  if (past <= -round) return { lift: straight, drag: polar.drag(straight, re), stalled: 0 };
  const slope = polar.slope(re);
  const size =
    past < round
      ? most + past - (past + round) ** 2 / (4 * round)
      : most * (1 - fall * smoothStep((past - round) / (slope * fallAngle)));
  const lift = up ? size : -size;
  const stalled = smoothStep((past + round) / (2 * round + slope * fallAngle));
  const angle = Math.max(-1, Math.min(1, straight / slope + polar.zeroLiftAngle));
  const square = polar.leastDrag(re) + Math.abs(lift * Math.tan(angle));
  return { lift, drag: polar.drag(lift, re) * (1 - stalled) + square * stalled, stalled };
}

/** Drag at a lift that is asked for: beyond the largest one it grows by all that is missing. */
export const wantedDrag = (polar: Polar, lift: number, reynolds: number): number =>
  polar.drag(lift, reynolds) + Math.max(0, lift - polar.maxLift(reynolds));
