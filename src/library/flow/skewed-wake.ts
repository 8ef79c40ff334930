import { evenStates } from "./flow-state.ts";
import type { Lattice, Surface } from "./lattice.ts";

/**
 * In sideslip the wake leaves a trailing edge along the wind, not along x. What turning it changes in the flow along the
 * normal of each control point, per sine of the sideslip: for each of `evenStates` a number, one panel after the other.
 * `circulation` holds lists of panels by number of the state. Derived: the velocity of a leg that turns about its start.
 *
 * Only a surface's own wake is turned. That of the wing passes the tail as it does without sideslip: with legs in place of
 * a sheet, their way past each control point would count more than the way of the wake as a whole.
 */
export function skewedWake(lattice: Lattice, circulation: Float64Array): Float64Array {
  const { strips, symmetric, count, control, normal } = lattice;
  const flows = new Float64Array(count * columns);
  const legsOf = {
    wing: trailingLegs(lattice, "wing", circulation),
    tailplane: trailingLegs(lattice, "tailplane", circulation),
  };
  for (const { surface, first, rows, edge } of strips) {
    if (surface === "fin") continue;
    const legs = legsOf[surface];
    const { y, z } = edge;
    const ny = normal[2 * first] as number;
    const nz = normal[2 * first + 1] as number;
    for (let i = first; i < first + rows; i++) {
      const x = control[3 * i] as number;
      let a = 0;
      let b = 0;
      let c = 0;
      let d = 0;
      for (let leg = 0; leg < legs.length; leg += legSize) {
        let flow = turnedLeg(legs, leg, x, y, z, ny, nz);
        // Seen in a mirror the wake turns the other way.
        if (symmetric) flow -= turnedLeg(legs, leg, x, -y, z, -ny, nz);
        a += flow * (legs[leg + 3] as number);
        b += flow * (legs[leg + 4] as number);
        c += flow * (legs[leg + 5] as number);
        d += flow * (legs[leg + 6] as number);
      }
      flows[i * columns] = a;
      flows[i * columns + 1] = b;
      flows[i * columns + 2] = c;
      flows[i * columns + 3] = d;
    }
  }
  return flows;
}

/**
 * Flow along (0, ny, nz) that a leg of unit strength gains per angle by which it turns towards −y about its start. With
 * v = L·(0, −z, y) and L = (r + x)/(4π·r·d²) before, it is (−z·L, −z·D, x·L + y·D) with D = x·∂L/∂y − y·∂L/∂x.
 */
function turnedLeg(legs: Float64Array, at: number, px: number, py: number, pz: number, ny: number, nz: number): number {
  const x = px - (legs[at] as number);
  const y = py - (legs[at + 1] as number);
  const z = pz - (legs[at + 2] as number);
  const aside = y * y + z * z;
  const r = Math.sqrt(x * x + aside);
  // (r + x)/d², also where x is far below 0.
  const reach = x > 0 ? (r + x) / aside : 1 / (r - x);
  const leg = reach / (4 * Math.PI * r);
  const turned = -y * reach * leg;
  return nz * (x * leg + y * turned) - ny * z * turned;
}

const columns = evenStates.length;
const legSize = 3 + columns;

/**
 * The legs that a surface's trailing edge sheds, `legSize` numbers each: where it starts, and its strength for each of
 * `evenStates`, what the strip on its one side has more than that on its other.
 */
function trailingLegs(
  { runsOf, nodes, legs, count }: Lattice,
  surface: Surface,
  circulation: Float64Array,
): Float64Array {
  const runs = runsOf[surface];
  const result = new Float64Array(legSize * runs.reduce((sum, { strips }) => sum + strips + 1, 0));
  let at = 0;
  for (const { node, panel, strips, rows } of runs) {
    for (let edge = 0; edge <= strips; edge++) {
      const start = 3 * (node + edge * rows);
      const length = edge < strips ? legs[2 * (panel + edge * rows)] : legs[2 * (panel + (edge - 1) * rows) + 1];
      result[at] = (nodes[start] as number) + (length as number);
      result[at + 1] = nodes[start + 1] as number;
      result[at + 2] = nodes[start + 2] as number;
      for (let c = 0; c < columns; c++) {
        const first = (evenStates[c] as number) * count + panel + edge * rows;
        let strength = 0;
        if (edge > 0) for (let i = first - rows; i < first; i++) strength += circulation[i] as number;
        if (edge < strips) for (let i = first; i < first + rows; i++) strength -= circulation[i] as number;
        result[at + 3 + c] = strength;
      }
      at += legSize;
    }
  }
  return result;
}
