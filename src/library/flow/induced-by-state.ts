import { askewParts, evenStates, type Four, oddStates } from "./flow-state.ts";
import { lookFrom, type Sight, sightFor, velocitiesAt } from "./induced-velocity.ts";
import { hasCore, type Lattice, type Range, type Surface } from "./lattice.ts";

/** A surface seen from a line along x, and, where the lattice holds one half, from the mirror image of that line. */
export interface Outlook {
  readonly surface: Surface;
  readonly own: Sight;
  readonly mirrored: Sight;
  /** Whether that line is its own mirror image. */
  isMiddle: boolean;
  /** Room for the velocities of panels and of their mirror images. */
  readonly here: Float64Array;
  readonly there: Float64Array;
}

/** Room for the outlook on a surface; it looks nowhere yet. */
export const outlookFor = (lattice: Lattice, surface: Surface): Outlook => ({
  surface,
  own: sightFor(lattice),
  mirrored: sightFor(lattice),
  isMiddle: false,
  here: new Float64Array(3 * lattice.count),
  there: new Float64Array(3 * lattice.count),
});

/** Turns an outlook to the line at y z, which lies on another surface. */
export function lookOut(lattice: Lattice, outlook: Outlook, from: Surface, y: number, z: number): void {
  const { surface, own, mirrored } = outlook;
  const runs = lattice.runsOf[surface];
  const cored = hasCore(lattice, surface, from);
  outlook.isMiddle = y === 0;
  lookFrom(lattice, runs, cored, y, z, 0, 1, own);
  if (lattice.symmetric && y !== 0) lookFrom(lattice, runs, cored, -y, z, 0, 1, mirrored);
}

/**
 * Adds to `into`, three numbers for each part of the flow, the velocity that a surface's vortices of these
 * circulations (`partCount` lists of panels), and their mirror images, induce at the place x of the line looked from.
 */
export function addInduced(
  lattice: Lattice,
  { surface, own, mirrored, isMiddle, here, there }: Outlook,
  circulation: Float64Array,
  x: number,
  into: Float64Array,
): void {
  const range = lattice[surface];
  const runs = lattice.runsOf[surface];
  velocitiesAt(lattice, runs, own, x, here);
  let odd = here;
  if (lattice.symmetric && surface !== "fin") {
    // On the plane of symmetry both are each other's mirror image.
    if (!isMiddle) velocitiesAt(lattice, runs, mirrored, x, there);
    takeApart(here, isMiddle ? here : there, there, range);
    odd = there;
  }
  // With equal halves, a fin has no circulation in a flow with equal halves.
  if (!lattice.symmetric || surface !== "fin") gatherFour(here, circulation, lattice, range, evenStates, into);
  gatherFour(odd, circulation, lattice, range, oddStates, into);
  gatherFour(odd, circulation, lattice, range, askewParts, into);
}

/** In place: what equal halves induce, in `here`, and what opposite ones do, in `odd`; `image` was seen in the mirror. */
function takeApart(here: Float64Array, image: Float64Array, odd: Float64Array, { start, end }: Range): void {
  for (let i = 3 * start; i < 3 * end; i += 3) {
    const x = here[i] as number;
    const y = here[i + 1] as number;
    const z = here[i + 2] as number;
    const imageX = image[i] as number;
    const imageY = image[i + 1] as number;
    const imageZ = image[i + 2] as number;
    here[i] = x + imageX;
    here[i + 1] = y - imageY;
    here[i + 2] = z + imageZ;
    odd[i] = x - imageX;
    odd[i + 1] = y + imageY;
    odd[i + 2] = z - imageZ;
  }
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
