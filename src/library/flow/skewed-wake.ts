import { evenStates } from "./flow-state.ts";
import type { Lattice, Strip } from "./lattice.ts";

/**
 * In sideslip the wake leaves a trailing edge along the wind, not along x. What turning it changes in the flow along the
 * normal of each control point, per sine of the sideslip: for each of `evenStates` a number, one panel after the other.
 * `circulation` holds lists of panels by number of the state. Derived: the velocity of a leg that turns about its start.
 *
 * Only a surface's own wake is turned. That of the wing passes the tail as it does without sideslip: with legs in place of
 * a sheet, their way past each control point would count more than the way of the wake as a whole.
 */
export function skewedWake(lattice: Lattice, circulation: Float64Array): Float64Array {
  const { strips, symmetric, count, control, normal, stripOf } = lattice;
  const columns = evenStates.length;
  const flows = new Float64Array(count * columns);
  const strengths = strengthsOf(lattice, circulation);
  const edges = trailingEdges(lattice);
  for (let i = 0; i < count; i++) {
    const { surface } = strips[stripOf[i] as number] as Strip;
    if (surface === "fin") continue;
    const x = control[3 * i] as number;
    const y = control[3 * i + 1] as number;
    const z = control[3 * i + 2] as number;
    const ny = normal[2 * i] as number;
    const nz = normal[2 * i + 1] as number;
    for (let j = 0; j < strips.length; j++) {
      if ((strips[j] as Strip).surface !== surface) continue;
      let flow = turnedLeg(edges, 6 * j + 3, x, y, z, ny, nz) - turnedLeg(edges, 6 * j, x, y, z, ny, nz);
      if (symmetric) {
        // Seen in a mirror the wake turns the other way.
        flow -= turnedLeg(edges, 6 * j + 3, x, -y, z, -ny, nz) - turnedLeg(edges, 6 * j, x, -y, z, -ny, nz);
      }
      for (let c = 0; c < columns; c++) {
        flows[i * columns + c] = (flows[i * columns + c] as number) + flow * (strengths[j * columns + c] as number);
      }
    }
  }
  return flows;
}

/**
 * Flow along (0, ny, nz) that a leg of unit strength gains per angle by which it turns towards −y about its start. With
 * v = L·(0, −z, y) and L = (r + x)/(4π·r·d²) before, it is (−z·L, −z·D, x·L + y·D) with D = x·∂L/∂y − y·∂L/∂x.
 */
function turnedLeg(
  starts: Float64Array,
  at: number,
  px: number,
  py: number,
  pz: number,
  ny: number,
  nz: number,
): number {
  const x = px - (starts[at] as number);
  const y = py - (starts[at + 1] as number);
  const z = pz - (starts[at + 2] as number);
  const aside = y * y + z * z;
  const r = Math.sqrt(x * x + aside);
  // (r + x)/d², also where x is far below 0.
  const reach = x > 0 ? (r + x) / aside : 1 / (r - x);
  const leg = reach / (4 * Math.PI * r);
  const turned = -y * reach * leg;
  return nz * (x * leg + y * turned) - ny * z * turned;
}

/** Start of each strip's legs behind the trailing edge: six numbers a strip. */
function trailingEdges({ strips, nodes, from, to, legs }: Lattice): Float64Array {
  const edges = new Float64Array(6 * strips.length);
  strips.forEach(({ first }, s) => {
    [from, to].forEach((ends, side) => {
      const node = 3 * (ends[first] as number);
      edges[6 * s + 3 * side] = (nodes[node] as number) + (legs[2 * first + side] as number);
      edges[6 * s + 3 * side + 1] = nodes[node + 1] as number;
      edges[6 * s + 3 * side + 2] = nodes[node + 2] as number;
    });
  });
  return edges;
}

/** Circulation of each strip for each of `evenStates`. */
function strengthsOf({ strips, count }: Lattice, circulation: Float64Array): Float64Array {
  const columns = evenStates.length;
  const strengths = new Float64Array(strips.length * columns);
  strips.forEach(({ first, rows }, s) => {
    evenStates.forEach((state, c) => {
      for (let i = first; i < first + rows; i++) {
        strengths[s * columns + c] =
          (strengths[s * columns + c] as number) + (circulation[state * count + i] as number);
      }
    });
  });
  return strengths;
}
