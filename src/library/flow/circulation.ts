import { type Factors, factorise, solveFactored } from "../numerics/lu.ts";
import { airStates, airVelocities, askewParts, evenStates, flowState, oddStates, partCount } from "./flow-state.ts";
import { flowsAt, lookFrom, type Sight, sightFor } from "./induced-velocity.ts";
import { hasCore, type Lattice, type Surface, surfaces } from "./lattice.ts";
import { skewedWake } from "./skewed-wake.ts";

/**
 * Circulation of each panel for each part of the flow (`partCount` lists of panels): first for each number of the state
 * alone being 1, then for the wake that leaves askew. Where only the right half is held, the left half has the same for
 * even and the opposite for odd parts. Null where the equations cannot be solved.
 *
 * The flow follows the surface at each control point: V·n + Σ a·Γ = 0. With equal halves, even and odd flows are
 * solved apart, each with half the unknowns; the fin stands only among the odd ones.
 */
export function circulations(lattice: Lattice): Float64Array | null {
  const { symmetric, count, fin } = lattice;
  const result = new Float64Array(count * partCount);
  const { even, odd } = influence(lattice);
  const size = symmetric ? fin.start : count;
  const evenFactors = factorise(slackened(lattice, symmetric ? even : odd, size), size);
  if (!evenFactors) return null;
  const oddFactors = symmetric ? factorise(slackened(lattice, odd, count), count) : evenFactors;
  if (!oddFactors) return null;
  const solve = (factors: Factors, sides: Float64Array, parts: readonly number[]): void => {
    const solved = solveFactored(factors, sides, parts.length);
    for (let i = 0; i < factors.size; i++) {
      for (let c = 0; c < parts.length; c++) {
        result[(parts[c] as number) * count + i] = solved[i * parts.length + c] as number;
      }
    }
  };
  solve(evenFactors, rightSides(lattice, size, evenStates), evenStates);
  solve(oddFactors, rightSides(lattice, count, oddStates), oddStates);
  const askew = skewedWake(lattice, result).map((flow) => -flow);
  solve(oddFactors, askew, askewParts);
  return result;
}

/** Velocity along the normal of each control point for each panel's unit circulation, with that of its mirror image. */
function influence(lattice: Lattice): { even: Float64Array; odd: Float64Array } {
  const { symmetric, count, fin, control, normal, strips } = lattice;
  const evenCount = symmetric ? fin.start : 0;
  const even = new Float64Array(evenCount * evenCount);
  const odd = new Float64Array(count * count);
  const there = new Float64Array(count);
  const own = sightsFor(lattice);
  const mirrored = sightsFor(lattice);
  for (const { surface, first, rows, edge } of strips) {
    const ny = normal[2 * first] as number;
    const nz = normal[2 * first + 1] as number;
    // The mirror image of a horseshoe induces the mirror image of its velocity at the mirrored place: on the fin, which is
    // its own mirror image, the opposite of what the horseshoe itself does.
    const isMiddle = surface === "fin";
    look(lattice, surface, edge.y, edge.z, ny, nz, own);
    if (symmetric && !isMiddle) look(lattice, surface, -edge.y, edge.z, -ny, nz, mirrored);
    for (let i = first; i < first + rows; i++) {
      const x = control[3 * i] as number;
      const row = i * count;
      flows(lattice, own, x, odd, row);
      if (!symmetric) continue;
      if (isMiddle) {
        for (let j = row; j < row + evenCount; j++) odd[j] = 2 * (odd[j] as number);
        continue;
      }
      flows(lattice, mirrored, x, there, 0);
      const evenRow = i * evenCount;
      for (let j = 0; j < evenCount; j++) {
        const here = odd[row + j] as number;
        const image = there[j] as number;
        odd[row + j] = here - image;
        even[evenRow + j] = here + image;
      }
    }
  }
  return { even, odd };
}

type Sights = Readonly<Record<Surface, Sight>>;

const sightsFor = (lattice: Lattice): Sights => ({
  wing: sightFor(lattice),
  tailplane: sightFor(lattice),
  fin: sightFor(lattice),
});

/** Looks at all surfaces from a line on one of them. */
function look(lattice: Lattice, from: Surface, y: number, z: number, ny: number, nz: number, into: Sights): void {
  for (const of of surfaces) {
    lookFrom(lattice, lattice.runsOf[of], hasCore(lattice, of, from), y, z, ny, nz, into[of]);
  }
}

/** Flow along the normal that each horseshoe induces at a place that is looked from. */
function flows(
  lattice: Lattice,
  { wing, tailplane, fin }: Sights,
  x: number,
  into: Float64Array,
  offset: number,
): void {
  flowsAt(lattice, lattice.runsOf.wing, wing, x, into, offset);
  flowsAt(lattice, lattice.runsOf.tailplane, tailplane, x, into, offset);
  flowsAt(lattice, lattice.runsOf.fin, fin, x, into, offset);
}

/**
 * A section of less lift slope a than 2π: the flow at a strip turns down by cl·(1/a − 1/2π) more, so that a strip by
 * itself lifts with the slope a about the same quarter chord (derived).
 */
function slackened({ strips, sectionSlope }: Lattice, matrix: Float64Array, size: number): Float64Array {
  const lost = 2 * (1 / sectionSlope - 1 / (2 * Math.PI));
  for (const { first, rows, edge } of strips) {
    const end = Math.min(first + rows, size);
    for (let i = first; i < end; i++) {
      for (let j = first; j < end; j++) matrix[i * size + j] = (matrix[i * size + j] as number) - lost / edge.chord;
    }
  }
  return matrix;
}

/** −V·n at each control point, a column for each of the states. */
function rightSides(
  { control, tilted, tailplane, fin }: Lattice,
  size: number,
  states: readonly number[],
): Float64Array {
  const columns = states.length;
  const sides = new Float64Array(size * columns);
  const air = new Float64Array(3 * airStates);
  for (let i = 0; i < size; i++) {
    airVelocities(control[3 * i] as number, control[3 * i + 1] as number, control[3 * i + 2] as number, air);
    for (let c = 0; c < columns; c++) {
      const state = states[c] as number;
      let flow = 0;
      if (state < airStates) {
        for (let axis = 0; axis < 3; axis++)
          flow += (tilted[3 * i + axis] as number) * (air[3 * state + axis] as number);
      } else {
        // A surface turned by an angle meets the speed u by so much more.
        const turned = state === flowState.tailplane ? tailplane : fin;
        if (i >= turned.start && i < turned.end) flow = 1;
      }
      sides[i * columns + c] = -flow;
    }
  }
  return sides;
}
