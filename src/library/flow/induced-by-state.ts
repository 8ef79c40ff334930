import { parity, partCount } from "./flow-state.ts";
import { lookAt, type Vortices, velocities } from "./induced-velocity.ts";
import type { Lattice, Surface } from "./lattice.ts";

/** Room for the velocities of panels and of their mirror images. */
export interface Room {
  readonly here: Float64Array;
  readonly there: Float64Array;
}
export const roomFor = ({ count }: Lattice): Room => ({
  here: new Float64Array(3 * count),
  there: new Float64Array(3 * count),
});

/**
 * Adds to `into`, three numbers for each part of the flow, the velocity that a surface's vortices of these
 * circulations (`partCount` lists of panels), and their mirror images, induce at a place of another surface.
 */
export function addInduced(
  lattice: Lattice,
  vortices: Vortices,
  surface: Surface,
  circulation: Float64Array,
  x: number,
  y: number,
  z: number,
  room: Room,
  into: Float64Array,
): void {
  const range = lattice[surface];
  if (range.start === range.end) return;
  const nodes = lattice.nodesOf[surface];
  const cored = surface === "wing";
  const { here, there } = room;
  lookAt(vortices, nodes, x, y, z, cored);
  velocities(vortices, range, here);
  if (lattice.symmetric && surface !== "fin") {
    lookAt(vortices, nodes, x, -y, z, cored);
    velocities(vortices, range, there);
    // In place: what equal halves induce, and what opposite ones do.
    for (let i = 3 * range.start; i < 3 * range.end; i++) {
      const own = here[i] as number;
      const image = i % 3 === 1 ? -(there[i] as number) : (there[i] as number);
      here[i] = own + image;
      there[i] = own - image;
    }
    for (let l = 0; l < partCount; l++) gather(parity[l] === 1 ? here : there, circulation, lattice, range, l, into);
  } else {
    for (let l = 0; l < partCount; l++) gather(here, circulation, lattice, range, l, into);
  }
}

function gather(
  flow: Float64Array,
  circulation: Float64Array,
  { count }: Lattice,
  { start, end }: { start: number; end: number },
  l: number,
  into: Float64Array,
): void {
  const row = l * count;
  let vx = 0;
  let vy = 0;
  let vz = 0;
  for (let j = start; j < end; j++) {
    const strength = circulation[row + j] as number;
    vx += strength * (flow[3 * j] as number);
    vy += strength * (flow[3 * j + 1] as number);
    vz += strength * (flow[3 * j + 2] as number);
  }
  into[3 * l] = (into[3 * l] as number) + vx;
  into[3 * l + 1] = (into[3 * l + 1] as number) + vy;
  into[3 * l + 2] = (into[3 * l + 2] as number) + vz;
}
