import { airVelocities, askewParts, evenStates, oddStates, partCount, stateCount, stateOf } from "./flow-state.ts";
import { addInduced, roomFor } from "./induced-by-state.ts";
import type { Vortices } from "./induced-velocity.ts";
import type { Lattice, Strip } from "./lattice.ts";
import { loadCount, type QuadraticLoads } from "./quadratic-loads.ts";
import type { WakeTrace } from "./wake-trace.ts";

/**
 * Loads of a lattice about the origin, as quadratic forms of the state: with Γ and the local velocity V both linear in
 * it, F = ρ·V × Γ·l (Kutta, Joukowski), on bound vortices and on the legs that lie upon the surface.
 *
 * A leg on the surface feels only the flow along the panel's span: what crosses the panel is taken up by the surface
 * itself. This force, Γ·(spanwise speed)·length square to the panel, is what gives a flat wing its roll in sideslip.
 *
 * Of what the vortices induce, V takes what other surfaces do. What a surface does to itself is its induced drag. That is
 * not taken from the velocities at its bound vortices, which on a swept wing are never fine enough, but strip by strip
 * from the trace of its wake: by Munk's theorem (NACA TR 121, 1921; from memory) the two are the same over the surface as
 * a whole. What it does along its own span and chord is small of second order and left out, on bound vortices as on legs:
 * one without the other would not keep lift and drag in step with the energy left in the wake.
 */
export function forcesOn(
  lattice: Lattice,
  vortices: Vortices,
  circulation: Float64Array,
  trace: WakeTrace,
): QuadraticLoads {
  const { symmetric, count, wing, tailplane, bound, nodes, from, to, normal, legs } = lattice;
  const sums = new Float64Array(loadCount * partCount * partCount);
  const flow = new Float64Array(3 * partCount);
  const loads = new Float64Array(loadCount * partCount);
  const strength = new Float64Array(partCount);
  const room = roomFor(lattice);
  for (let i = 0; i < count; i++) {
    const surface = i < wing.end ? "wing" : i < tailplane.end ? "tailplane" : "fin";
    const x = bound[3 * i] as number;
    const y = bound[3 * i + 1] as number;
    const z = bound[3 * i + 2] as number;
    airVelocities(x, y, z, flow);
    if (surface !== "wing") addInduced(lattice, vortices, "wing", circulation, x, y, z, room, flow);
    if (surface !== "tailplane") addInduced(lattice, vortices, "tailplane", circulation, x, y, z, room, flow);
    if (surface !== "fin") addInduced(lattice, vortices, "fin", circulation, x, y, z, room, flow);
    const a = 3 * (from[i] as number);
    const b = 3 * (to[i] as number);
    const lx = (nodes[b] as number) - (nodes[a] as number);
    const ly = (nodes[b + 1] as number) - (nodes[a + 1] as number);
    const lz = (nodes[b + 2] as number) - (nodes[a + 2] as number);
    loads.fill(0);
    for (let l = 0; l < partCount; l++) {
      const part = 3 * (order[l] as number);
      const vx = flow[part] as number;
      const vy = flow[part + 1] as number;
      const vz = flow[part + 2] as number;
      addLoad(loads, l, x, y, z, vy * lz - vz * ly, vz * lx - vx * lz, vx * ly - vy * lx);
    }
    const ny = normal[2 * i] as number;
    const nz = normal[2 * i + 1] as number;
    addLeg(loads, nodes, a, legs[2 * i] as number, 1, ny, nz, flow);
    addLeg(loads, nodes, b, legs[2 * i + 1] as number, -1, ny, nz, flow);
    for (let k = 0; k < partCount; k++) strength[k] = circulation[(order[k] as number) * count + i] as number;
    collect(sums, loads, strength, symmetric && surface !== "fin");
  }
  addOwnDrag(sums, lattice, circulation, trace);
  return { ...formsFrom(sums), point: [0, 0, 0] };
}

type Forms = Pick<QuadraticLoads, "form" | "skew">;

const formSize = stateCount * stateCount;

/** Adds the load of a force at a place, both in the axes of the lattice, as load for the part number l in `order`, body axes. */
function addLoad(
  into: Float64Array,
  l: number,
  x: number,
  y: number,
  z: number,
  fx: number,
  fy: number,
  fz: number,
): void {
  const n = partCount;
  into[l] = (into[l] as number) - fx;
  into[n + l] = (into[n + l] as number) + fy;
  into[2 * n + l] = (into[2 * n + l] as number) - fz;
  into[3 * n + l] = (into[3 * n + l] as number) + z * fy - y * fz;
  into[4 * n + l] = (into[4 * n + l] as number) + z * fx - x * fz;
  into[5 * n + l] = (into[5 * n + l] as number) + y * fx - x * fy;
}

/** Adds the load of a leg that lies on the surface from a node on; `air` is room to work in. */
function addLeg(
  into: Float64Array,
  nodes: Float64Array,
  node: number,
  length: number,
  sign: 1 | -1,
  ny: number,
  nz: number,
  air: Float64Array,
): void {
  const x = (nodes[node] as number) + length / 2;
  const y = nodes[node + 1] as number;
  const z = nodes[node + 2] as number;
  airVelocities(x, y, z, air);
  for (let l = 0; l < stateCount; l++) {
    // Along the span: (0, nz, −ny) · V.
    const at = 3 * (order[l] as number);
    const force = sign * length * (nz * (air[at + 1] as number) - ny * (air[at + 2] as number));
    if (force !== 0) addLoad(into, l, x, y, z, 0, ny * force, nz * force);
  }
}

/**
 * Adds to the sums a load per circulation times circulations, both by parts of the flow in `order`, of a panel and of its
 * mirror image if it has one: of X, Z and M the image's share is the same where both parts are even or both odd, else the
 * opposite; of Y, L and N it is the other way round.
 */
function collect(sums: Float64Array, loads: Float64Array, strength: Float64Array, hasImage: boolean): void {
  for (let c = 0; c < loadCount; c++) {
    if (!hasImage) addBlock(sums, c, loads, strength, 1, 0, partCount, 0, partCount);
    else if (c % 2 === 0) {
      addBlock(sums, c, loads, strength, 2, 0, evenCount, 0, evenCount);
      addBlock(sums, c, loads, strength, 2, evenCount, partCount, evenCount, partCount);
    } else {
      addBlock(sums, c, loads, strength, 2, 0, evenCount, evenCount, partCount);
      addBlock(sums, c, loads, strength, 2, evenCount, partCount, 0, evenCount);
    }
  }
}

function addBlock(
  sums: Float64Array,
  c: number,
  loads: Float64Array,
  strength: Float64Array,
  weight: number,
  start: number,
  end: number,
  first: number,
  last: number,
): void {
  const row = c * partCount;
  for (let k = start; k < end; k++) {
    const own = weight * (strength[k] as number);
    if (own === 0) continue;
    const at = (row + k) * partCount;
    for (let l = first; l < last; l++) sums[at + l] = (sums[at + l] as number) + own * (loads[row + l] as number);
  }
}

/** Parts of the flow, the even ones first. */
const order: readonly number[] = [...evenStates, ...oddStates, ...askewParts];
const evenCount = evenStates.length;

/** The forms of the state from sums by parts; what is of second order in sideslip is left out. */
function formsFrom(sums: Float64Array): Forms {
  const form = new Float64Array(loadCount * formSize);
  const skew = new Float64Array(loadCount * formSize);
  for (let c = 0; c < loadCount; c++) {
    for (let k = 0; k < partCount; k++) {
      for (let l = 0; l < partCount; l++) {
        const [one, other] = [order[k] as number, order[l] as number];
        if (one >= stateCount && other >= stateCount) continue;
        const into = one >= stateCount || other >= stateCount ? skew : form;
        const half = (sums[(c * partCount + k) * partCount + l] as number) / 2;
        // Both ways round: forms are symmetric.
        const [m, n] = [stateOf[one] as number, stateOf[other] as number];
        for (const at of [m * stateCount + n, n * stateCount + m]) {
          into[c * formSize + at] = (into[c * formSize + at] as number) + half;
        }
      }
    }
  }
  return { form, skew };
}

/**
 * Adds the drag that each surface makes for itself: −½·Γ·(flow through its wake's trace), at the strip. It is part of a
 * force square to the bound vortices, so that where these are swept it also pulls along the span.
 */
function addOwnDrag(sums: Float64Array, lattice: Lattice, circulation: Float64Array, trace: WakeTrace): void {
  const { strips, symmetric, count } = lattice;
  const total = strips.length;
  const strengths = new Float64Array(total * partCount);
  for (let s = 0; s < total; s++) {
    const { first, rows } = strips[s] as Strip;
    for (let k = 0; k < partCount; k++) {
      for (let i = first; i < first + rows; i++) {
        strengths[s * partCount + k] =
          (strengths[s * partCount + k] as number) + (circulation[(order[k] as number) * count + i] as number);
      }
    }
  }
  const drag = new Float64Array(partCount);
  const loads = new Float64Array(loadCount * partCount);
  for (let i = 0; i < total; i++) {
    const { surface, edge, acrossY, acrossZ, sweep } = strips[i] as Strip;
    drag.fill(0);
    for (let j = 0; j < total; j++) {
      if ((strips[j] as Strip).surface !== surface) continue;
      const even = (trace.even[i * total + j] as number) / 2;
      const odd = (trace.odd[i * total + j] as number) / 2;
      for (let l = 0; l < partCount; l++) {
        drag[l] = (drag[l] as number) - (l < evenCount ? even : odd) * (strengths[j * partCount + l] as number);
      }
    }
    loads.fill(0);
    const perWidth = sweep / Math.hypot(acrossY, acrossZ);
    for (let l = 0; l < partCount; l++) {
      const d = drag[l] as number;
      addLoad(loads, l, edge.x + edge.chord / 4, edge.y, edge.z, d, -d * perWidth * acrossY, -d * perWidth * acrossZ);
    }
    const strength = strengths.subarray(i * partCount, (i + 1) * partCount);
    collect(sums, loads, strength, symmetric && surface !== "fin");
  }
}
