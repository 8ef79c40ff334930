import { airVelocities, partCount, stateCount } from "./flow-state.ts";
import { addInduced, lookOut, outlookFor } from "./induced-by-state.ts";
import { type Lattice, type Strip, surfaces } from "./lattice.ts";
import { addForms, type Carriers, carriersFor, evenCount, formsFrom, order, sumsOfForms } from "./load-sums.ts";
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
export function forcesOn(lattice: Lattice, circulation: Float64Array, trace: WakeTrace): QuadraticLoads {
  const sums = sumsOfForms();
  addForms(sums, lattice, onPanels(lattice, circulation), lattice.fin.start);
  const strips = onStrips(lattice, circulation, trace);
  addForms(sums, lattice, strips, lattice.strips.filter(({ surface }) => surface !== "fin").length);
  return { ...formsFrom(sums), point: [0, 0, 0] };
}

/** Loads by the air and by what other surfaces induce, on each panel's bound vortex and its legs. */
function onPanels(lattice: Lattice, circulation: Float64Array): Carriers {
  const { count, bound, nodes, from, to, normal, legs, strips } = lattice;
  const carriers = carriersFor(count);
  const { strengths, loads } = carriers;
  const flow = new Float64Array(3 * partCount);
  const air = new Float64Array(3 * stateCount);
  const outlooks = surfaces.filter((each) => lattice.runsOf[each].length > 0).map((each) => outlookFor(lattice, each));
  for (const { surface, first, rows } of strips) {
    const others = outlooks.filter((outlook) => outlook.surface !== surface);
    const y = bound[3 * first + 1] as number;
    const z = bound[3 * first + 2] as number;
    const ny = normal[2 * first] as number;
    const nz = normal[2 * first + 1] as number;
    for (const other of others) lookOut(lattice, other, surface, y, z);
    for (let i = first; i < first + rows; i++) {
      const x = bound[3 * i] as number;
      airVelocities(x, y, z, flow);
      for (const other of others) addInduced(lattice, other, circulation, x, flow);
      const a = 3 * (from[i] as number);
      const b = 3 * (to[i] as number);
      const lx = (nodes[b] as number) - (nodes[a] as number);
      const ly = (nodes[b + 1] as number) - (nodes[a + 1] as number);
      const lz = (nodes[b + 2] as number) - (nodes[a + 2] as number);
      const start = i * loadCount * partCount;
      for (let l = 0; l < partCount; l++) {
        strengths[i * partCount + l] = circulation[(order[l] as number) * count + i] as number;
        const part = 3 * (order[l] as number);
        const vx = flow[part] as number;
        const vy = flow[part + 1] as number;
        const vz = flow[part + 2] as number;
        addLoad(loads, start + l, x, y, z, vy * lz - vz * ly, vz * lx - vx * lz, vx * ly - vy * lx);
      }
      addLeg(loads, start, nodes, a, legs[2 * i] as number, 1, ny, nz, air);
      addLeg(loads, start, nodes, b, legs[2 * i + 1] as number, -1, ny, nz, air);
    }
  }
  return carriers;
}

/** Adds at `at` the load of a force at a place, both in the axes of the lattice, as load in body axes. */
function addLoad(
  into: Float64Array,
  at: number,
  x: number,
  y: number,
  z: number,
  fx: number,
  fy: number,
  fz: number,
): void {
  const n = partCount;
  into[at] = (into[at] as number) - fx;
  into[at + n] = (into[at + n] as number) + fy;
  into[at + 2 * n] = (into[at + 2 * n] as number) - fz;
  into[at + 3 * n] = (into[at + 3 * n] as number) + z * fy - y * fz;
  into[at + 4 * n] = (into[at + 4 * n] as number) + z * fx - x * fz;
  into[at + 5 * n] = (into[at + 5 * n] as number) + y * fx - x * fy;
}

/** Adds the load of a leg that lies on the surface from a node on; `air` is room to work in. */
function addLeg(
  into: Float64Array,
  start: number,
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
    if (force !== 0) addLoad(into, start + l, x, y, z, 0, ny * force, nz * force);
  }
}

/**
 * The drag that each surface makes for itself: −½·Γ·(flow through its wake's trace), at the strip. It is part of a force
 * square to the bound vortices, so that where these are swept it also pulls along the span.
 */
function onStrips({ strips, count }: Lattice, circulation: Float64Array, trace: WakeTrace): Carriers {
  const total = strips.length;
  const carriers = carriersFor(total);
  const { strengths, loads } = carriers;
  for (let s = 0; s < total; s++) {
    const { first, rows } = strips[s] as Strip;
    for (let l = 0; l < partCount; l++) {
      const part = (order[l] as number) * count;
      let sum = 0;
      for (let i = first; i < first + rows; i++) sum += circulation[part + i] as number;
      strengths[s * partCount + l] = sum;
    }
  }
  const drag = new Float64Array(partCount);
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
    const perWidth = sweep / Math.hypot(acrossY, acrossZ);
    for (let l = 0; l < partCount; l++) {
      const d = drag[l] as number;
      const at = i * loadCount * partCount + l;
      addLoad(loads, at, edge.x + edge.chord / 4, edge.y, edge.z, d, -d * perWidth * acrossY, -d * perWidth * acrossZ);
    }
  }
  return carriers;
}
