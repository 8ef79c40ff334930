import type { Lattice, Strip } from "./lattice.ts";

/**
 * What strips do to each other by their wakes far downstream, where legs are lines without end: the flow through the
 * trace of strip i, along its normal and times its width, for unit circulation of strip j, row by row. Where the lattice
 * holds one half, the mirror image's share is in it, once for equal (even) and once for opposite (odd) circulation.
 */
export interface WakeTrace {
  readonly even: Float64Array;
  readonly odd: Float64Array;
}

/** Strips of one surface act on each other without a core, those of two surfaces with the cores of the legs. */
export function wakeTrace(lattice: Lattice): WakeTrace {
  const { strips, symmetric } = lattice;
  const count = strips.length;
  const even = new Float64Array(count * count);
  const odd = symmetric ? new Float64Array(count * count) : even;
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < count; j++) {
      const [on, by] = [strips[i] as Strip, strips[j] as Strip];
      const flow = throughTrace(lattice, on, by, 1);
      const at = i * count + j;
      even[at] = flow;
      if (!symmetric) continue;
      const image = throughTrace(lattice, on, by, -1);
      // The fin is its own mirror image.
      const share = by.surface === "fin" ? 0.5 : 1;
      even[at] = share * (flow + image);
      odd[at] = share * (flow - image);
    }
  }
  return { even, odd };
}

/** Flow through one strip's trace by the two legs of another, or of its mirror image of equal circulation. */
function throughTrace({ nodes, from, to, cores }: Lattice, on: Strip, by: Strip, side: 1 | -1): number {
  const leg = (node: number): number => {
    const dy = on.edge.y - side * (nodes[3 * node + 1] as number);
    const dz = on.edge.z - (nodes[3 * node + 2] as number);
    const core = on.surface === by.surface ? 0 : (cores[node] as number);
    return (dz * on.acrossZ + dy * on.acrossY) / (2 * Math.PI * (dy * dy + dz * dz + core));
  };
  // The mirror image of a vortex turns the other way round.
  return side * (leg(to[by.first] as number) - leg(from[by.first] as number));
}
