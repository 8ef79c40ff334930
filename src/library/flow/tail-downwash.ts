import { partCount, stateCount } from "./flow-state.ts";
import { addInduced, lookOut, outlookFor } from "./induced-by-state.ts";
import type { LatticeFlow } from "./solve-lattice.ts";

/**
 * Upward speed that the wing's vortices induce at the tailplane, for each number of the state alone being 1: the mean over
 * its line of quarter chords, by area. Null without a tailplane. Negative is downwash.
 */
export function tailUpwash({ lattice, circulation }: LatticeFlow): Float64Array | null {
  const strips = lattice.strips.filter((strip) => strip.surface === "tailplane");
  if (strips.length === 0) return null;
  const outlook = outlookFor(lattice, "wing");
  const upwash = new Float64Array(stateCount);
  const velocities = new Float64Array(3 * partCount);
  let area = 0;
  for (const { edge, acrossY } of strips) {
    velocities.fill(0);
    lookOut(lattice, outlook, "tailplane", edge.y, edge.z);
    addInduced(lattice, outlook, circulation, edge.x + edge.chord / 4, velocities);
    const own = edge.chord * acrossY;
    area += own;
    for (let k = 0; k < stateCount; k++) {
      upwash[k] = (upwash[k] as number) + own * (velocities[3 * k + 2] as number);
    }
  }
  return upwash.map((sum) => sum / area);
}
