import type { Glider } from "../shape/glider-record.ts";
import { latticeOf } from "./build-lattice.ts";
import { circulations } from "./circulation.ts";
import { forcesOn } from "./forces.ts";
import type { Lattice, LatticeOptions } from "./lattice.ts";
import { tailLiesInWing } from "./overlap.ts";
import type { QuadraticLoads } from "./quadratic-loads.ts";
import { type WakeTrace, wakeTrace } from "./wake-trace.ts";

/** A solved lattice: everything that the flow of a glider's shape has to say, at every angle and rate. */
export interface LatticeFlow {
  readonly lattice: Lattice;
  /** Circulation of each panel, `stateCount` lists of `lattice.count`: see circulation.ts. */
  readonly circulation: Float64Array;
  readonly trace: WakeTrace;
  /** Loads about the origin, the leading edge of the wing's root at the height that heights are counted from. */
  readonly loads: QuadraticLoads;
}

/** Null where the equations cannot be solved: surfaces that lie upon each other, or a tailplane within the wing. */
export function solveLattice(glider: Glider, options: LatticeOptions): LatticeFlow | null {
  if (tailLiesInWing(glider)) return null;
  const lattice = latticeOf(glider, options);
  const circulation = circulations(lattice);
  if (!circulation) return null;
  const trace = wakeTrace(lattice);
  return { lattice, circulation, trace, loads: forcesOn(lattice, circulation, trace) };
}
