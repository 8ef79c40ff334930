import { integrateProduct } from "../numerics/integrate-product.ts";
import { wingStrips } from "../shape/strips.ts";
import type { Wing } from "../shape/wing-record.ts";

/** How lift is spread over the span: a share of it as an ellipse, the rest evenly. */
export const ellipticShare = (wing: Wing): number => {
  // Spanwise middle of the chords' area: half of the half span for even chords, 4/(3π) of it for an ellipse.
  let [moment, area] = [0, 0];
  for (const { width, root, tip } of wingStrips(wing)) {
    moment += integrateProduct(width, root.chord, tip.chord, root.y, tip.y);
    area += integrateProduct(width, root.chord, tip.chord, 1, 1);
  }
  const middle = moment / area / (wing.span / 2);
  const ofChords = (0.5 - middle) / (0.5 - 4 / (3 * Math.PI));
  // O. Schrenk 1940, NACA TM 948 (from memory): the loading lies halfway between the chords and the ellipse.
  return (1 + Math.min(1, Math.max(0, ofChords))) / 2;
};

/**
 * Downwash angle over lift coefficient at a place behind the middle of a wing: x aft of its line of quarter chords, z
 * above it. Biot–Savart of a straight lifting line with straight wake (derived), its loading part ellipse, part even.
 */
export function downwashPerLift(wing: Wing, x: number, z: number): number {
  const half = wing.span / 2;
  const elliptic = ellipticShare(wing);
  // The mean circulation over the speed is CL·S/(2·span).
  const strength = wing.area / (2 * wing.span) / (4 * Math.PI);
  return strength * (elliptic * fromEllipse(half, x, z) + (1 - elliptic) * fromEven(half, x, z));
}

/** Even loading of unit circulation: one horseshoe vortex with its legs at the tips; 4π times the downwash speed. */
function fromEven(half: number, x: number, z: number): number {
  const away = Math.hypot(x, half, z);
  const legs = (2 * half * (1 + x / away)) / (half ** 2 + z ** 2);
  const bound = (2 * half * x) / (away * (x ** 2 + z ** 2));
  return legs + bound;
}

/** Elliptic loading of unit mean circulation: a sheet of such legs, summed over y = half·sin θ by the midpoint rule. */
function fromEllipse(half: number, x: number, z: number): number {
  const count = 256;
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const angle = ((i + 0.5) / count) * (Math.PI / 2);
    const y = half * Math.sin(angle);
    const away = Math.hypot(x, y, z);
    const legs = ((Math.sin(angle) * y) / (y ** 2 + z ** 2)) * (1 + x / away);
    const bound = (half * Math.cos(angle) ** 2 * x) / away ** 3;
    sum += legs + bound;
  }
  // 4/π is the middle's circulation over the mean; both halves count.
  return ((4 / Math.PI) * 2 * sum * (Math.PI / 2)) / count;
}
