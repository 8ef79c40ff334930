import type { Lattice, Range } from "./lattice.ts";

/**
 * The horseshoes of a lattice, laid out for speed: all in few lists, handed on to plain functions. A node has
 * `nodeSize` numbers in `nodes`: its place x y z, the square of its core, the way x y z from it to the place that is looked
 * at, its distance, and two numbers of its leg. `ends` has the first number of each panel's two nodes.
 */
export interface Vortices {
  readonly nodes: Float64Array;
  readonly ends: Int32Array;
  /** Where a leg passes exactly through a place, its square distance is this. */
  readonly floor: number;
}

const nodeSize = 10;
const perFourPi = 1 / (4 * Math.PI);
const tiny = 1e-300;
/** A bound vortex induces nothing at places on itself, told from others by this share, which rounding does not reach. */
const onLine = 1e-12;

export function vorticesOf({ nodes, cores, from, to }: Lattice): Vortices {
  const packed = new Float64Array(cores.length * nodeSize);
  let widest = 0;
  for (let n = 0; n < cores.length; n++) {
    for (let axis = 0; axis < 3; axis++) packed[n * nodeSize + axis] = nodes[3 * n + axis] as number;
    packed[n * nodeSize + 3] = cores[n] as number;
    widest = Math.max(widest, Math.abs(nodes[3 * n + 1] as number));
  }
  const ends = new Int32Array(2 * from.length);
  for (let j = 0; j < from.length; j++) {
    ends[2 * j] = nodeSize * (from[j] as number);
    ends[2 * j + 1] = nodeSize * (to[j] as number);
  }
  return { nodes: packed, ends, floor: (1e-9 * widest) ** 2 + tiny };
}

/**
 * Goes to a place: from there on `velocities` and `flowsAlong` tell what vortices of these nodes induce there. Where
 * `cored`, their legs have a core: d² becomes d² + core² (as G. H. Vatistas and others 1991, with exponent 1; from memory).
 */
export function lookAt(vortices: Vortices, range: Range, x: number, y: number, z: number, cored: boolean): void {
  const { nodes, floor } = vortices;
  const end = range.end * nodeSize;
  for (let n = range.start * nodeSize; n < end; n += nodeSize) {
    const ax = x - (nodes[n] as number);
    const ay = y - (nodes[n + 1] as number);
    const az = z - (nodes[n + 2] as number);
    const aside = ay * ay + az * az;
    const r = Math.sqrt(ax * ax + aside);
    nodes[n + 4] = ax;
    nodes[n + 5] = ay;
    nodes[n + 6] = az;
    nodes[n + 7] = r;
    // A leg's velocity is this times x̂ × way = (0, −az, ay).
    nodes[n + 8] = (perFourPi * (r + ax)) / ((r + tiny) * (aside + (cored ? (nodes[n + 3] as number) : floor)));
  }
}

/**
 * Sets `into`, three numbers a panel, to the velocity that each horseshoe of a range, of unit circulation, induces: law of
 * Biot and Savart for a bound vortex from node to node, and legs from both to infinity along x.
 */
export function velocities({ nodes, ends }: Vortices, range: Range, into: Float64Array): void {
  for (let j = range.start; j < range.end; j++) {
    const a = ends[2 * j] as number;
    const b = ends[2 * j + 1] as number;
    const ax = nodes[a + 4] as number;
    const ay = nodes[a + 5] as number;
    const az = nodes[a + 6] as number;
    const ra = nodes[a + 7] as number;
    const la = nodes[a + 8] as number;
    const bx = nodes[b + 4] as number;
    const by = nodes[b + 5] as number;
    const bz = nodes[b + 6] as number;
    const rb = nodes[b + 7] as number;
    const lb = nodes[b + 8] as number;
    const product = ra * rb;
    const along = product + ax * bx + ay * by + az * bz;
    const bound = along > onLine * product ? (perFourPi * (ra + rb)) / (product * along) : 0;
    into[3 * j] = bound * (ay * bz - az * by);
    into[3 * j + 1] = bound * (az * bx - ax * bz) + la * az - lb * bz;
    into[3 * j + 2] = bound * (ax * by - ay * bx) - la * ay + lb * by;
  }
}

/** Sets `into`, one number a panel, to the part of those velocities along (0, ny, nz); the nodes' range is given too. */
export function flowsAlong(
  { nodes, ends }: Vortices,
  range: Range,
  nodeRange: Range,
  ny: number,
  nz: number,
  into: Float64Array,
): void {
  const end = nodeRange.end * nodeSize;
  for (let n = nodeRange.start * nodeSize; n < end; n += nodeSize) {
    nodes[n + 9] = (nodes[n + 8] as number) * (nz * (nodes[n + 5] as number) - ny * (nodes[n + 6] as number));
  }
  for (let j = range.start; j < range.end; j++) {
    const a = ends[2 * j] as number;
    const b = ends[2 * j + 1] as number;
    const ax = nodes[a + 4] as number;
    const ay = nodes[a + 5] as number;
    const az = nodes[a + 6] as number;
    const ra = nodes[a + 7] as number;
    const bx = nodes[b + 4] as number;
    const by = nodes[b + 5] as number;
    const bz = nodes[b + 6] as number;
    const rb = nodes[b + 7] as number;
    const product = ra * rb;
    const along = product + ax * bx + ay * by + az * bz;
    const bound = along > onLine * product ? (perFourPi * (ra + rb)) / (product * along) : 0;
    into[j] =
      bound * (ny * (az * bx - ax * bz) + nz * (ax * by - ay * bx)) +
      (nodes[b + 9] as number) -
      (nodes[a + 9] as number);
  }
}
