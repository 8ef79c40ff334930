import { airStates, airVelocities, parity, stateCount } from "./flow-state.ts";
import { inducedByState } from "./induced-by-state.ts";
import type { InducedVelocity } from "./induced-velocity.ts";
import type { Lattice, Strip } from "./lattice.ts";
import { loadCount, type QuadraticLoads } from "./quadratic-loads.ts";
import type { WakeTrace } from "./wake-trace.ts";

/** Loads about the origin, and the force X alone as the near field has it, for comparison. */
export interface Forces {
  readonly loads: QuadraticLoads;
  /** A quadratic form of the state like one of those of the loads. */
  readonly nearX: Float64Array;
}

/**
 * Loads of a lattice on its bound vortices and on the legs that lie upon the surface, as quadratic forms of the state:
 * with Γ and the local velocity V both linear in it, F = ρ·V × Γ·l (Kutta, Joukowski).
 *
 * A leg on the surface feels only the flow along the panel's span: what crosses the panel is taken up by the surface
 * itself. This force, Γ·(spanwise speed)·length square to the panel, is what gives a flat wing its roll in sideslip.
 * The spanwise speed that the vortices themselves induce there is left out; on a flat wing it is 0.
 *
 * The drag that a surface makes for itself is not taken from the velocities at its bound vortices, which on a swept wing
 * are never fine enough, but strip by strip from the trace of its wake: by Munk's theorem (NACA TR 121, 1921; from memory)
 * the two are the same over the surface as a whole.
 */
export function forcesOn(
  lattice: Lattice,
  induced: InducedVelocity,
  circulation: Float64Array,
  trace: WakeTrace,
): Forces {
  const { symmetric, count, wing, tailplane, fin, bound, nodes, from, to, normal, legs } = lattice;
  const form = new Float64Array(loadCount * formSize);
  const nearX = new Float64Array(formSize);
  const [all, own] = [new Float64Array(3 * stateCount), new Float64Array(3 * stateCount)];
  const loads = new Float64Array(loadCount * stateCount);
  const near = new Float64Array(stateCount);
  const strength = new Float64Array(stateCount);
  const { moveTo, add } = inducedByState(lattice, induced, circulation);
  for (let i = 0; i < count; i++) {
    const surface = i < wing.end ? wing : i < tailplane.end ? tailplane : fin;
    const [x, y, z] = [bound[3 * i] as number, bound[3 * i + 1] as number, bound[3 * i + 2] as number];
    const a = 3 * (from[i] as number);
    const b = 3 * (to[i] as number);
    const lx = (nodes[b] as number) - (nodes[a] as number);
    const ly = (nodes[b + 1] as number) - (nodes[a + 1] as number);
    const lz = (nodes[b + 2] as number) - (nodes[a + 2] as number);
    airVelocities(x, y, z, all);
    moveTo([x, y, z], surface !== wing, i);
    own.fill(0);
    add(surface, own);
    for (const other of [wing, tailplane, fin]) if (other !== surface) add(other, all);
    loads.fill(0);
    for (let l = 0; l < stateCount; l++) {
      const vy = all[3 * l + 1] as number;
      const vz = all[3 * l + 2] as number;
      const ownX = (own[3 * l + 1] as number) * lz - (own[3 * l + 2] as number) * ly;
      const wx = (all[3 * l] as number) + (own[3 * l] as number);
      const fx = vy * lz - vz * ly;
      near[l] = -(fx + ownX);
      addLoad(
        loads,
        l,
        x,
        y,
        z,
        fx,
        (vz + (own[3 * l + 2] as number)) * lx - wx * lz,
        wx * ly - (vy + (own[3 * l + 1] as number)) * lx,
      );
    }
    const ny = normal[2 * i] as number;
    const nz = normal[2 * i + 1] as number;
    addLeg(loads, nodes, a, legs[2 * i] as number, 1, ny, nz, all);
    addLeg(loads, nodes, b, legs[2 * i + 1] as number, -1, ny, nz, all);
    for (let k = 0; k < stateCount; k++) strength[k] = circulation[k * count + i] as number;
    const hasImage = symmetric && surface !== fin;
    for (let c = 0; c < loadCount; c++) collect(form, c, loads, c, strength, hasImage);
    collect(nearX, 0, near, 0, strength, hasImage);
  }
  addOwnDrag(form, lattice, circulation, trace);
  for (let c = 0; c < loadCount; c++) symmetrise(form, c);
  symmetrise(nearX, 0);
  return { loads: { form, point: [0, 0, 0] }, nearX };
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
function collect(
  form: Float64Array,
  c: number,
  loads: Float64Array,
  row: number,
  strength: Float64Array,
  hasImage: boolean,
): void {
  const evenLoad = c % 2 === 0 ? 1 : -1;
  for (let k = 0; k < stateCount; k++) {
    const own = strength[k] as number;
    for (let l = 0; l < stateCount; l++) {
      const weight = hasImage ? 1 + (parity[k] as number) * (parity[l] as number) * evenLoad : 1;
      const at = c * formSize + k * stateCount + l;
      form[at] = (form[at] as number) + weight * own * (loads[row * stateCount + l] as number);
    }
  }
}

/** Adds the drag that each surface makes for itself: −½·Γ·(flow through its wake's trace), at the strip. */
function addOwnDrag(form: Float64Array, lattice: Lattice, circulation: Float64Array, trace: WakeTrace): void {
  const { strips, symmetric, count } = lattice;
  const total = strips.length;
  const strengths = new Float64Array(total * stateCount);
  strips.forEach(({ first, rows }, s) => {
    for (let k = 0; k < stateCount; k++) {
      for (let i = first; i < first + rows; i++) {
        strengths[s * stateCount + k] =
          (strengths[s * stateCount + k] as number) + (circulation[k * count + i] as number);
      }
    }
  });
  const loads = new Float64Array(loadCount * stateCount);
  for (let i = 0; i < total; i++) {
    const { surface, edge } = strips[i] as Strip;
    loads.fill(0);
    for (let j = 0; j < total; j++) {
      if ((strips[j] as Strip).surface !== surface) continue;
      for (let l = 0; l < stateCount; l++) {
        const flow = (parity[l] === 1 ? trace.even : trace.odd)[i * total + j] as number;
        addLoad(loads, l, 0, edge.y, edge.z, (-flow * (strengths[j * stateCount + l] as number)) / 2, 0, 0);
      }
    }
    const strength = strengths.subarray(i * stateCount, (i + 1) * stateCount);
    for (const c of [0, 4, 5]) collect(form, c, loads, c, strength, symmetric && surface !== "fin");
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
