import { airStates, airVelocities, parity, stateCount } from "./flow-state.ts";
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
  const form = new Float64Array(loadCount * formSize);
  const flow = new Float64Array(3 * stateCount);
  const loads = new Float64Array(loadCount * stateCount);
  const strength = new Float64Array(stateCount);
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
    for (let l = 0; l < stateCount; l++) {
      const vx = flow[3 * l] as number;
      const vy = flow[3 * l + 1] as number;
      const vz = flow[3 * l + 2] as number;
      addLoad(loads, l, x, y, z, vy * lz - vz * ly, vz * lx - vx * lz, vx * ly - vy * lx);
    }
    const ny = normal[2 * i] as number;
    const nz = normal[2 * i + 1] as number;
    addLeg(loads, nodes, a, legs[2 * i] as number, 1, ny, nz, flow);
    addLeg(loads, nodes, b, legs[2 * i + 1] as number, -1, ny, nz, flow);
    for (let k = 0; k < stateCount; k++) strength[k] = circulation[k * count + i] as number;
    for (let c = 0; c < loadCount; c++) collect(form, c, loads, strength, symmetric && surface !== "fin");
  }
  addOwnDrag(form, lattice, circulation, trace);
  for (let c = 0; c < loadCount; c++) symmetrise(form, c);
  return { form, point: [0, 0, 0] };
}

const formSize = stateCount * stateCount;

/** Adds the load of a force at a place, both in the axes of the lattice, as load for the state number l, body axes. */
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
  const n = stateCount;
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
  for (let l = 0; l < airStates; l++) {
    // Along the span: (0, nz, −ny) · V.
    const force = sign * length * (nz * (air[3 * l + 1] as number) - ny * (air[3 * l + 2] as number));
    if (force !== 0) addLoad(into, l, x, y, z, 0, ny * force, nz * force);
  }
}

/** Adds to the form number c a load per circulation times circulations, of a panel and of its mirror image if it has one. */
function collect(form: Float64Array, c: number, loads: Float64Array, strength: Float64Array, hasImage: boolean): void {
  // Of X, Z and M the image's part is the same where both numbers of the state are even or both odd, else the opposite;
  // of Y, L and N it is the other way round.
  const same = c % 2 === 0 ? 1 : -1;
  for (let k = 0; k < stateCount; k++) {
    const own = strength[k] as number;
    if (own === 0) continue;
    const wanted = same * (parity[k] as number);
    const at = c * formSize + k * stateCount;
    for (let l = 0; l < stateCount; l++) {
      if (!hasImage) form[at + l] = (form[at + l] as number) + own * (loads[c * stateCount + l] as number);
      else if (parity[l] === wanted) {
        form[at + l] = (form[at + l] as number) + 2 * own * (loads[c * stateCount + l] as number);
      }
    }
  }
}

/**
 * Adds the drag that each surface makes for itself: −½·Γ·(flow through its wake's trace), at the strip. It is part of a
 * force square to the bound vortices, so that where these are swept it also pulls along the span.
 */
function addOwnDrag(form: Float64Array, lattice: Lattice, circulation: Float64Array, trace: WakeTrace): void {
  const { strips, symmetric, count } = lattice;
  const total = strips.length;
  const strengths = new Float64Array(total * stateCount);
  for (let s = 0; s < total; s++) {
    const { first, rows } = strips[s] as Strip;
    for (let k = 0; k < stateCount; k++) {
      for (let i = first; i < first + rows; i++) {
        strengths[s * stateCount + k] =
          (strengths[s * stateCount + k] as number) + (circulation[k * count + i] as number);
      }
    }
  }
  const drag = new Float64Array(stateCount);
  const loads = new Float64Array(loadCount * stateCount);
  for (let i = 0; i < total; i++) {
    const { surface, edge, acrossY, acrossZ, sweep } = strips[i] as Strip;
    drag.fill(0);
    for (let j = 0; j < total; j++) {
      if ((strips[j] as Strip).surface !== surface) continue;
      const even = (trace.even[i * total + j] as number) / 2;
      const odd = (trace.odd[i * total + j] as number) / 2;
      for (let l = 0; l < stateCount; l++) {
        drag[l] = (drag[l] as number) - (parity[l] === 1 ? even : odd) * (strengths[j * stateCount + l] as number);
      }
    }
    loads.fill(0);
    const perWidth = sweep / Math.hypot(acrossY, acrossZ);
    for (let l = 0; l < stateCount; l++) {
      const d = drag[l] as number;
      addLoad(loads, l, edge.x + edge.chord / 4, edge.y, edge.z, d, -d * perWidth * acrossY, -d * perWidth * acrossZ);
    }
    const strength = strengths.subarray(i * stateCount, (i + 1) * stateCount);
    for (let c = 0; c < loadCount; c++) collect(form, c, loads, strength, symmetric && surface !== "fin");
  }
}

function symmetrise(form: Float64Array, c: number): void {
  for (let k = 0; k < stateCount; k++) {
    for (let l = 0; l < k; l++) {
      const a = c * formSize + k * stateCount + l;
      const b = c * formSize + l * stateCount + k;
      form[a] = form[b] = ((form[a] as number) + (form[b] as number)) / 2;
    }
  }
}
