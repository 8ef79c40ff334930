import { integrateProduct } from "../numerics/integrate-product.ts";
import { type Strip, wingStrips } from "../shape/strips.ts";
import type { Wing } from "../shape/wing-record.ts";

/** What errors of single panels do in roll, by strip theory. */
export interface RollEffect {
  /** Steady roll rate, rad/s to the right, of one rad of nose-down twist of a right panel (counted from 0), at 1 m/s. */
  ofTwist(panel: number): number;
  /** The same of a lift that is a share smaller on a right panel, at this lift coefficient and lift slope. */
  ofLift(panel: number, lift: number, slope: number): number;
  /** The same of a rolling moment over the dynamic pressure, m³, at this lift slope. */
  ofMoment(moment: number, slope: number): number;
}

/**
 * Strip theory: a panel whose incidence is wrong by δ rolls with a·δ·∫ c·y dy, roll damping is a·(p/V)·∫ c·y² dy over both
 * halves, so that p/V = δ·∫ c·y dy / ∫ c·y² dy, whatever the lift slope (derived). A constant chord whose whole half is
 * wrong by δ comes to p = 1.5·δ·V/b.
 */
export function rollEffect(wing: Wing): RollEffect {
  const strips = wingStrips(wing);
  const moment = ({ width, root, tip }: Strip) => integrateProduct(width, root.chord, tip.chord, root.y, tip.y);
  const damping = strips.reduce(
    (sum, { width, root, tip }) => sum + secondMoment(width, root.chord, tip.chord, root.y, tip.y),
    0,
  );
  const of = (panel: number) => moment(strips[panel] as Strip) / damping;
  return {
    ofTwist: of,
    ofLift: (panel, lift, slope) => (of(panel) * lift) / slope,
    ofMoment: (at, slope) => at / (slope * damping),
  };
}

/** ∫ c·y² dy of a panel over which both are straight: exact by Simpson's rule, a cubic. */
function secondMoment(width: number, c1: number, c2: number, y1: number, y2: number): number {
  const [c, y] = [(c1 + c2) / 2, (y1 + y2) / 2];
  return (width / 6) * (c1 * y1 ** 2 + 4 * c * y ** 2 + c2 * y2 ** 2);
}
