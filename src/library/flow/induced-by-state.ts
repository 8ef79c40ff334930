import { askewParts, evenStates, type Four, oddStates } from "./flow-state.ts";
import { lookAt, type Vortices, velocities } from "./induced-velocity.ts";
import type { Lattice, Range, Surface } from "./lattice.ts";

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
  }
  const odd = lattice.symmetric && surface !== "fin" ? there : here;
  gatherFour(here, circulation, lattice, range, evenStates, into);
  gatherFour(odd, circulation, lattice, range, oddStates, into);
  gatherFour(odd, circulation, lattice, range, askewParts, into);
}

/** Adds what the panels of a range induce by four parts of the flow at once, so that each velocity is fetched once. */
function gatherFour(
  flow: Float64Array,
  circulation: Float64Array,
  { count }: Lattice,
  { start, end }: Range,
  [a, b, c, d]: Four,
  into: Float64Array,
): void {
  const rowA = a * count;
  const rowB = b * count;
  const rowC = c * count;
  const rowD = d * count;
  let ax = into[3 * a] as number;
  let ay = into[3 * a + 1] as number;
  let az = into[3 * a + 2] as number;
  let bx = into[3 * b] as number;
  let by = into[3 * b + 1] as number;
  let bz = into[3 * b + 2] as number;
  let cx = into[3 * c] as number;
  let cy = into[3 * c + 1] as number;
  let cz = into[3 * c + 2] as number;
  let dx = into[3 * d] as number;
  let dy = into[3 * d + 1] as number;
  let dz = into[3 * d + 2] as number;
  for (let j = start; j < end; j++) {
    const vx = flow[3 * j] as number;
    const vy = flow[3 * j + 1] as number;
    const vz = flow[3 * j + 2] as number;
    const strengthA = circulation[rowA + j] as number;
    const strengthB = circulation[rowB + j] as number;
    const strengthC = circulation[rowC + j] as number;
    const strengthD = circulation[rowD + j] as number;
    ax += strengthA * vx;
    ay += strengthA * vy;
    az += strengthA * vz;
    bx += strengthB * vx;
    by += strengthB * vy;
    bz += strengthB * vz;
    cx += strengthC * vx;
    cy += strengthC * vy;
    cz += strengthC * vz;
    dx += strengthD * vx;
    dy += strengthD * vy;
    dz += strengthD * vz;
  }
  into[3 * a] = ax;
  into[3 * a + 1] = ay;
  into[3 * a + 2] = az;
  into[3 * b] = bx;
  into[3 * b + 1] = by;
  into[3 * b + 2] = bz;
  into[3 * c] = cx;
  into[3 * c + 1] = cy;
  into[3 * c + 2] = cz;
  into[3 * d] = dx;
  into[3 * d + 1] = dy;
  into[3 * d + 2] = dz;
}
