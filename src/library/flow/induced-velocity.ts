import type { Lattice } from "./lattice.ts";

/** Three lists of one length: the components of a vector for each panel. */
export type Components = readonly [x: Float64Array, y: Float64Array, z: Float64Array];

/**
 * Sets `into` to the velocity at a place that each panel's horseshoe of unit circulation induces. `own` is the panel on
 * whose bound vortex the place lies, or −1.
 */
export type InducedVelocity = (place: Place, behindWing: boolean, own: number, into: Components) => void;
export type Place = readonly [x: number, y: number, z: number];

/**
 * The law of Biot and Savart for the horseshoes of a lattice: bound vortex from node to node, legs from both nodes to
 * infinity along x. Distances and legs are worked out once a node. At a place `behindWing`, on tailplane or fin, the
 * wing's legs have a core: d² becomes d² + core² (as G. H. Vatistas and others 1991, with exponent 1; from memory).
 * A bound vortex induces nothing on itself.
 */
export function inducedVelocity(lattice: Lattice): InducedVelocity {
  const { count, nodes, cores, wingNodes, from, to } = lattice;
  const nodeCount = cores.length;
  const [dx, dy, dz, distance, leg] = Array.from({ length: 5 }, () => new Float64Array(nodeCount)) as FiveLists;
  const [px, py, pz] = [0, 1, 2].map((axis) => nodes.filter((_, i) => i % 3 === axis)) as ThreeLists;
  // Only against division by 0, where a leg passes exactly through a place.
  const legFloor = (lineFloor * py.reduce((widest, y) => Math.max(widest, Math.abs(y)), 0)) ** 2 + tiny;
  return ([x, y, z], behindWing, own, [outX, outY, outZ]) => {
    for (let n = 0; n < nodeCount; n++) {
      const ax = x - (px[n] as number);
      const ay = y - (py[n] as number);
      const az = z - (pz[n] as number);
      const aside = ay * ay + az * az;
      const r = Math.sqrt(ax * ax + aside);
      const core = behindWing && n < wingNodes ? (cores[n] as number) : legFloor;
      dx[n] = ax;
      dy[n] = ay;
      dz[n] = az;
      distance[n] = r;
      // A leg's velocity is this times x̂ × d = (0, −dz, dy).
      leg[n] = (r + ax) / ((r + tiny) * (aside + core));
    }
    for (let j = 0; j < count; j++) {
      const a = from[j] as number;
      const b = to[j] as number;
      const [ax, ay, az] = [dx[a] as number, dy[a] as number, dz[a] as number];
      const [bx, by, bz] = [dx[b] as number, dy[b] as number, dz[b] as number];
      const ra = distance[a] as number;
      const rb = distance[b] as number;
      const product = ra * rb;
      const bound = j === own ? 0 : (ra + rb) / (product * (product + ax * bx + ay * by + az * bz) + tiny);
      const la = leg[a] as number;
      const lb = leg[b] as number;
      outX[j] = perFourPi * bound * (ay * bz - az * by);
      outY[j] = perFourPi * (bound * (az * bx - ax * bz) + la * az - lb * bz);
      outZ[j] = perFourPi * (bound * (ax * by - ay * bx) - la * ay + lb * by);
    }
  };
}

/** Room for the velocities of a lattice's panels. */
export const components = (count: number): Components => [
  new Float64Array(count),
  new Float64Array(count),
  new Float64Array(count),
];

type ThreeLists = [Float64Array, Float64Array, Float64Array];
type FiveLists = [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];

const perFourPi = 1 / (4 * Math.PI);
const lineFloor = 1e-9;
const tiny = 1e-300;
