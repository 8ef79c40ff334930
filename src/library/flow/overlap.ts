import type { Glider } from "../shape/glider-record.ts";

/**
 * Whether a tailplane lies in the wing: within its chord at the root, and nearer to it than a tenth of that chord. So near
 * a lattice of a few rows tells nothing any more: what it computes jumps from one millimetre to the next (tried with a gap
 * of 0 to 60 mm at a chord of 74 mm: wild up to 4 mm, smooth from 6 mm on).
 */
export function tailLiesInWing({ wing, tailplane, seat_height }: Glider): boolean {
  if (!tailplane) return false;
  const chord = Math.max(wing.right.root_chord[0] ?? 0, wing.left.root_chord[0] ?? 0);
  const isBeside = tailplane.x < chord && tailplane.x + tailplane.root_chord > 0;
  return isBeside && Math.abs(tailplane.z - seat_height) < chord / 10;
}
