import type { Lattice, Run } from "./lattice.ts";

const perFourPi = 1 / (4 * Math.PI);
const tiny = 1e-300;
/** A bound vortex induces nothing at places on itself, told from others by this share, which rounding does not reach. */
const onLine = 1e-12;

/**
 * How the edges of runs lie as seen from a line along x. All places of a strip lie on such a line, and all nodes of an edge
 * on another, so that much is the same for every pair of them. `sightSize` numbers an edge, run by run: the way from it to
 * the line, beside and above, in axes that lie like a panel of the normal given; its square; the product of this way and
 * that from the edge before; what one over the squared distance is for its legs.
 */
export type Sight = Float64Array;

const sightSize = 5;

/** Room for the sight of any runs of a lattice. */
export const sightFor = ({ nodes }: Lattice): Sight => new Float64Array((sightSize * nodes.length) / 3);

/**
 * Sets `into` to the sight of runs from the line at y z, with the normal (0, ny, nz). Where `cored`, legs have a core: d²
 * becomes d² + core² (as G. H. Vatistas and others 1991, with exponent 1; from memory).
 */
export function lookFrom(
  { nodes, cores, floor }: Lattice,
  runs: readonly Run[],
  cored: boolean,
  y: number,
  z: number,
  ny: number,
  nz: number,
  into: Sight,
): void {
  let at = 0;
  for (const { node, strips, rows } of runs) {
    let lastBeside = 0;
    let lastAbove = 0;
    for (let edge = 0; edge <= strips; edge++) {
      const place = node + edge * rows;
      const ay = y - (nodes[3 * place + 1] as number);
      const az = z - (nodes[3 * place + 2] as number);
      const beside = nz * ay - ny * az;
      const above = ny * ay + nz * az;
      const square = beside * beside + above * above;
      into[at] = beside;
      into[at + 1] = above;
      into[at + 2] = square;
      into[at + 3] = beside * lastBeside + above * lastAbove;
      into[at + 4] = 1 / (square + (cored ? (cores[place] as number) : floor));
      at += sightSize;
      lastBeside = beside;
      lastAbove = above;
    }
  }
}

/**
 * Sets `into`, three numbers a panel, to the velocity that each horseshoe of these runs, of unit circulation, induces at
 * the place x of the line they are seen from: law of Biot and Savart for a bound vortex from node to node, and legs from
 * both to infinity along x. In the axes of the sight.
 */
export function velocitiesAt(
  { nodes }: Lattice,
  runs: readonly Run[],
  sight: Sight,
  x: number,
  into: Float64Array,
): void {
  let first = 0;
  for (const { node: firstNode, panel: firstPanel, strips, rows } of runs) {
    const step = 3 * rows;
    for (let row = 0; row < rows; row++) {
      let place = 3 * (firstNode + row);
      let at = first;
      let ax = x - (nodes[place] as number);
      let ay = sight[at] as number;
      let az = sight[at + 1] as number;
      let ra = Math.sqrt(ax * ax + (sight[at + 2] as number));
      let la = (1 + ax / (ra + tiny)) * (sight[at + 4] as number);
      const end = 3 * (firstPanel + strips * rows);
      for (let out = 3 * (firstPanel + row); out < end; out += step) {
        place += step;
        at += sightSize;
        const bx = x - (nodes[place] as number);
        const by = sight[at] as number;
        const bz = sight[at + 1] as number;
        const rb = Math.sqrt(bx * bx + (sight[at + 2] as number));
        const product = ra * rb;
        const along = product + ax * bx + (sight[at + 3] as number);
        const bound = along > onLine * product ? (ra + rb) / (product * along) : 0;
        const lb = (1 + bx / (rb + tiny)) * (sight[at + 4] as number);
        into[out] = perFourPi * bound * (ay * bz - az * by);
        // A leg's velocity is its number times x̂ × way = (0, −az, ay).
        into[out + 1] = perFourPi * (bound * (az * bx - ax * bz) + la * az - lb * bz);
        into[out + 2] = perFourPi * (bound * (ax * by - ay * bx) - la * ay + lb * by);
        ax = bx;
        ay = by;
        az = bz;
        ra = rb;
        la = lb;
      }
    }
    first += sightSize * (strips + 1);
  }
}

/**
 * Sets `into`, one number a panel from `offset` on, to the part of those velocities along the normal of the sight. Walks as
 * `velocitiesAt` does, written out: a call for each vortex, or velocities of which two parts in three are not wanted, would
 * cost more than what they share.
 */
export function flowsAt(
  { nodes }: Lattice,
  runs: readonly Run[],
  sight: Sight,
  x: number,
  into: Float64Array,
  offset: number,
): void {
  let first = 0;
  for (const { node: firstNode, panel: firstPanel, strips, rows } of runs) {
    const step = 3 * rows;
    for (let row = 0; row < rows; row++) {
      let place = 3 * (firstNode + row);
      let at = first;
      let ax = x - (nodes[place] as number);
      let ay = sight[at] as number;
      let ra = Math.sqrt(ax * ax + (sight[at + 2] as number));
      let la = (1 + ax / (ra + tiny)) * (sight[at + 4] as number) * ay;
      const end = offset + firstPanel + strips * rows;
      for (let panel = offset + firstPanel + row; panel < end; panel += rows) {
        place += step;
        at += sightSize;
        const bx = x - (nodes[place] as number);
        const by = sight[at] as number;
        const rb = Math.sqrt(bx * bx + (sight[at + 2] as number));
        const product = ra * rb;
        const along = product + ax * bx + (sight[at + 3] as number);
        const bound = along > onLine * product ? (ra + rb) / (product * along) : 0;
        const lb = (1 + bx / (rb + tiny)) * (sight[at + 4] as number) * by;
        into[panel] = perFourPi * (bound * (ax * by - ay * bx) + lb - la);
        ax = bx;
        ay = by;
        ra = rb;
        la = lb;
      }
    }
    first += sightSize * (strips + 1);
  }
}
