import { type Lattice, type Strip, surfaces } from "./lattice.ts";

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
  const { strips, symmetric, runsOf } = lattice;
  const count = strips.length;
  const even = new Float64Array(count * count);
  const odd = symmetric ? new Float64Array(count * count) : even;
  for (let i = 0; i < count; i++) {
    const on = strips[i] as Strip;
    let at = i * count;
    for (const surface of surfaces) {
      const cored = on.surface !== surface;
      // The fin is its own mirror image.
      const share = symmetric && surface === "fin" ? 0.5 : 1;
      for (const { node, strips: length, rows } of runsOf[surface]) {
        let own = throughTrace(lattice, on, node, cored, 1);
        let image = symmetric ? throughTrace(lattice, on, node, cored, -1) : 0;
        for (let edge = 1; edge <= length; edge++) {
          const ownBefore = own;
          const imageBefore = image;
          own = throughTrace(lattice, on, node + edge * rows, cored, 1);
          const flow = own - ownBefore;
          even[at] = flow;
          if (symmetric) {
            image = throughTrace(lattice, on, node + edge * rows, cored, -1);
            // The mirror image of a vortex turns the other way round.
            even[at] = share * (flow - image + imageBefore);
            odd[at] = share * (flow + image - imageBefore);
          }
          at++;
        }
      }
    }
  }
  return { even, odd };
}

/** Flow through a strip's trace by the leg from a node, or from its mirror image at the other side. */
function throughTrace({ nodes, cores }: Lattice, on: Strip, node: number, cored: boolean, side: 1 | -1): number {
  const dy = on.edge.y - side * (nodes[3 * node + 1] as number);
  const dz = on.edge.z - (nodes[3 * node + 2] as number);
  const core = cored ? (cores[node] as number) : 0;
  return (dz * on.acrossZ + dy * on.acrossY) / (2 * Math.PI * (dy * dy + dz * dz + core));
}
