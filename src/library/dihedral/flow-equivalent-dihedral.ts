import { flowState, stateCount } from "../flow/flow-state.ts";
import { loadSlopes } from "../flow/quadratic-loads.ts";
import { solveLattice } from "../flow/solve-lattice.ts";
import { straightFlight } from "../flow/wind-axes.ts";
import { degrees } from "../numerics/degrees.ts";
import type { Half } from "../shape/half-record.ts";
import { plainVWing, taperedTipWing, tipDihedralWing } from "../shape/sample-wings.ts";
import { type Wing, wingRecord } from "../shape/wing-record.ts";
import { define, number } from "../spec.ts";
import { equivalentDihedral } from "./equivalent-dihedral.ts";

/** `flow_equivalent_dihedral(wing)`: the same V by the flow, in which neighbouring strips feel each other. */
export const flowEquivalentDihedral = define({
  name: "flow_equivalent_dihedral",
  summary: "The angle of the plain V of the same plan view that rolls as much per sideslip, by the flow about both.",
  topic: "dihedral",
  parameters: { wing: wingRecord },
  result: number("deg", "angle of each half of the equivalent V"),
  formula:
    "the angle G of a V with the chords and sweep of the plan view, for which C_lβ by vortex lattice, without lift, is that of the wing",
  errors: ["The flow cannot be solved."],
  assumptions: [
    "equivalent_dihedral lets each strip lift by itself alone, as if it knew nothing of its neighbours. In the flow a raised tip loses part of its lift round its end, and shares the rest with the panel inboard: breaks far out count for less than the strip rule says, by about a tenth for a break at half of the half span.",
    "Without lift: what a flat wing rolls in sideslip by its lift is the same for the wing and its V.",
    "Twist and camber are left out, which add nothing to it; the moment is about the root's lower face.",
    "Sections of the slope 2π, 24 strips of a half wing and 4 rows.",
  ],
  sources: [{ text: "Vortex lattice of both wings: see flow", mark: "derived" }],
  examples: [
    {
      summary: "flat centre, 20 deg tips from half of the plan view, constant chord: the strip rule says 15 deg",
      arguments: { wing: tipDihedralWing },
      result: degrees(13.6505),
      tolerance: 1e-3,
    },
    {
      summary: "a plain V is its own equivalent",
      arguments: { wing: plainVWing },
      result: degrees(12),
      tolerance: 1e-9,
    },
    {
      summary: "20 deg tips tapered to three quarters: 14.08 deg by the strip rule, 13.69 deg with its angles exact",
      arguments: { wing: taperedTipWing },
      result: degrees(13.0425),
      tolerance: 1e-3,
    },
  ],
  isSlow: true,
  compute: ({ wing }, refuse) => {
    const rollOf = (each: Wing): number => {
      const slope = rollPerSideslip(each);
      return slope ?? refuse("wing", "The flow cannot be solved: panels of the wing lie upon each other.");
    };
    const wanted = rollOf(levelled(wing, (half) => half.stations.z));
    const offBy = (angle: number): number => rollOf(plainV(wing, angle)) - wanted;
    // Next to straight over the angle: the secant rule needs few steps. A level wing without lift does not roll.
    let before = 0;
    let offBefore = -wanted;
    let angle = equivalentDihedral.compute({ wing }, refuse) || degrees(1);
    for (let step = 0; step < 12; step++) {
      const off = offBy(angle);
      if (Math.abs(off) < 1e-12 * Math.abs(wanted) || off === offBefore) break;
      const next = angle - (off * (angle - before)) / (off - offBefore);
      [before, offBefore, angle] = [angle, off, next];
      if (Math.abs(angle - before) < 1e-12) break;
    }
    return angle;
  },
});

/** The wing bent to a plain V, its plan view unchanged. */
const plainV = (wing: Wing, angle: number): Wing =>
  levelled(wing, ({ stations: { y } }) => y.map((each) => Math.abs(each) * Math.tan(angle)));

/** A wing of these heights at its stations, without twist or camber: what the lattice takes of it. */
function levelled(wing: Wing, heights: (half: Half) => readonly number[]): Wing {
  const change = (half: Half): Half => ({
    ...half,
    twist: half.twist.map(() => 0),
    camber: half.camber.map(() => 0),
    stations: { ...half.stations, z: heights(half) },
  });
  return { ...wing, right: change(wing.right), left: change(wing.left) };
}

/** Rolling moment per sideslip about the root, over density and speed squared; null where the flow cannot be solved. */
function rollPerSideslip(wing: Wing): number | null {
  const counts = { strips: 24, rows: 4, tailStrips: 1, finStrips: 1, tailRows: 1 };
  const options = { ...counts, sectionSlope: 2 * Math.PI, camber: 0 };
  const flow = solveLattice({ wing, seat_height: 0, seat_angle: 0 }, options);
  return flow && (loadSlopes(flow.loads, straightFlight(0))[3 * stateCount + flowState.v] as number);
}
