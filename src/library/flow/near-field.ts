import { stateCount } from "./flow-state.ts";
import { lookFrom, sightFor, velocitiesAt } from "./induced-velocity.ts";
import { hasCore, surfaces } from "./lattice.ts";
import type { LatticeFlow } from "./solve-lattice.ts";

/**
 * Induced drag per unit of air density by the velocities at the bound vortices themselves: what the far field must also
 * give. For a state of equal halves. On swept wings it converges slowly, so it only serves for comparison.
 */
export function nearFieldDrag({ lattice, circulation }: LatticeFlow, state: Float64Array): number {
  const { symmetric, count, bound, nodes, from, to, wing, tailplane, fin } = lattice;
  const strength = new Float64Array(count);
  for (let j = 0; j < count; j++) {
    for (let k = 0; k < stateCount; k++) {
      strength[j] = (strength[j] as number) + (circulation[k * count + j] as number) * (state[k] as number);
    }
  }
  const [here, there] = [new Float64Array(3 * count), new Float64Array(3 * count)];
  const sight = sightFor(lattice);
  const end = symmetric ? fin.start : count;
  let drag = 0;
  for (let i = 0; i < end; i++) {
    const [x, y, z] = [bound[3 * i] as number, bound[3 * i + 1] as number, bound[3 * i + 2] as number];
    const on = i < wing.end ? "wing" : i < tailplane.end ? "tailplane" : "fin";
    let vy = 0;
    let vz = 0;
    for (const surface of surfaces) {
      const cored = hasCore(lattice, surface, on);
      for (const [side, into] of symmetric
        ? ([
            [1, here],
            [-1, there],
          ] as const)
        : ([[1, here]] as const)) {
        const runs = lattice.runsOf[surface];
        lookFrom(lattice, runs, cored, side * y, z, 0, 1, sight);
        velocitiesAt(lattice, runs, sight, x, into);
        for (let j = lattice[surface].start; j < Math.min(end, lattice[surface].end); j++) {
          vy += side * (strength[j] as number) * (into[3 * j + 1] as number);
          vz += (strength[j] as number) * (into[3 * j + 2] as number);
        }
      }
    }
    const [a, b] = [3 * (from[i] as number), 3 * (to[i] as number)];
    const ly = (nodes[b + 1] as number) - (nodes[a + 1] as number);
    const lz = (nodes[b + 2] as number) - (nodes[a + 2] as number);
    drag += (symmetric ? 2 : 1) * (strength[i] as number) * (vy * lz - vz * ly);
  }
  return drag;
}
