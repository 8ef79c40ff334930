import { factorise, solveFactored } from "../numerics/lu.ts";
import { airStates, airVelocities, evenStates, oddStates, stateCount } from "./flow-state.ts";
import { components, type InducedVelocity } from "./induced-velocity.ts";
import type { Lattice, Range } from "./lattice.ts";

/**
 * Circulation of each panel for each number of the state alone being 1: `stateCount` lists of panels. Where only the
 * right half is held, the left half has the same for even and the opposite for odd numbers of the state. Null where the
 * equations cannot be solved.
 *
 * The flow follows the surface at each control point: V·n + Σ a·Γ = 0. With equal halves, even and odd flows are
 * solved apart, each with half the unknowns; the fin stands only among the odd ones.
 */
export function circulations(lattice: Lattice, induced: InducedVelocity): Float64Array | null {
  const { symmetric, count, fin } = lattice;
  const result = new Float64Array(count * stateCount);
  const matrices = influence(lattice, induced);
  const solve = (matrix: Float64Array, size: number, states: readonly number[]): boolean => {
    slacken(lattice, matrix, size);
    const factors = factorise(matrix, size);
    if (!factors) return false;
    const solved = solveFactored(factors, rightSides(lattice, size, states), states.length);
    for (let i = 0; i < size; i++) {
      states.forEach((state, c) => {
        result[state * count + i] = solved[i * states.length + c] as number;
      });
    }
    return true;
  };
  if (!symmetric) return solve(matrices.odd, count, [...evenStates, ...oddStates]) ? result : null;
  return solve(matrices.even, fin.start, evenStates) && solve(matrices.odd, count, oddStates) ? result : null;
}

/** Velocity along the normal of each control point for each panel's unit circulation, with that of its mirror image. */
function influence(lattice: Lattice, induced: InducedVelocity): { even: Float64Array; odd: Float64Array } {
  const { symmetric, count, wing, fin, control, normal } = lattice;
  const evenCount = symmetric ? fin.start : 0;
  const even = new Float64Array(evenCount * evenCount);
  const odd = new Float64Array(count * count);
  const here = components(count);
  const there = components(count);
  const [, y, z] = here;
  const [, otherY, otherZ] = there;
  for (let i = 0; i < count; i++) {
    const [px, py, pz] = [control[3 * i] as number, control[3 * i + 1] as number, control[3 * i + 2] as number];
    const [ny, nz] = [normal[2 * i] as number, normal[2 * i + 1] as number];
    const behindWing = i >= wing.end;
    induced([px, py, pz], behindWing, -1, here);
    const mirrorImages = symmetric ? fin.start : 0;
    if (symmetric) induced([px, -py, pz], behindWing, -1, there);
    const row = i * count;
    for (let j = 0; j < mirrorImages; j++) {
      // The mirror image of a horseshoe induces the mirror image of its velocity at the mirrored place.
      odd[row + j] = ny * ((y[j] as number) + (otherY[j] as number)) + nz * ((z[j] as number) - (otherZ[j] as number));
    }
    for (let j = mirrorImages; j < count; j++) odd[row + j] = ny * (y[j] as number) + nz * (z[j] as number);
    if (i >= evenCount) continue;
    for (let j = 0; j < evenCount; j++) {
      even[i * evenCount + j] =
        ny * ((y[j] as number) - (otherY[j] as number)) + nz * ((z[j] as number) + (otherZ[j] as number));
    }
  }
  return { even, odd };
}

/**
 * A section of less lift slope a than 2π: the flow at a strip turns down by cl·(1/a − 1/2π) more, so that a strip by
 * itself lifts with the slope a about the same quarter chord (derived).
 */
function slacken({ strips, stripOf, sectionSlope }: Lattice, matrix: Float64Array, size: number): void {
  const lost = 2 * (1 / sectionSlope - 1 / (2 * Math.PI));
  for (let i = 0; i < size; i++) {
    const strip = strips[stripOf[i] as number];
    if (!strip) continue;
    const { first, rows, edge } = strip;
    for (let j = first; j < first + rows; j++)
      matrix[i * size + j] = (matrix[i * size + j] as number) - lost / edge.chord;
  }
}

/** −V·n at each control point, a column for each of the states. */
function rightSides(
  { control, tilted, tailplane, fin }: Lattice,
  size: number,
  states: readonly number[],
): Float64Array {
  const sides = new Float64Array(size * states.length);
  const air = new Float64Array(3 * airStates);
  const within = (i: number, { start, end }: Range) => i >= start && i < end;
  for (let i = 0; i < size; i++) {
    airVelocities(control[3 * i] as number, control[3 * i + 1] as number, control[3 * i + 2] as number, air);
    const [nx, ny, nz] = [tilted[3 * i] as number, tilted[3 * i + 1] as number, tilted[3 * i + 2] as number];
    states.forEach((state, c) => {
      const at = 3 * state;
      sides[i * states.length + c] =
        state < airStates
          ? -(nx * (air[at] as number) + ny * (air[at + 1] as number) + nz * (air[at + 2] as number))
          : // A surface turned by an angle meets the speed u by so much more.
            within(i, state === 6 ? tailplane : fin)
            ? -1
            : 0;
    });
  }
  return sides;
}
