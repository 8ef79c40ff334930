import { type Factors, factorise, solveFactored } from "../numerics/lu.ts";
import { airStates, airVelocities, askewParts, evenStates, flowState, oddStates, partCount } from "./flow-state.ts";
import { flowsAlong, lookAt, type Vortices } from "./induced-velocity.ts";
import type { Lattice } from "./lattice.ts";
import { skewedWake } from "./skewed-wake.ts";

/**
 * Circulation of each panel for each part of the flow (`partCount` lists of panels): first for each number of the state
 * alone being 1, then for the wake that leaves askew. Where only the right half is held, the left half has the same for
 * even and the opposite for odd parts. Null where the equations cannot be solved.
 *
 * The flow follows the surface at each control point: V·n + Σ a·Γ = 0. With equal halves, even and odd flows are
 * solved apart, each with half the unknowns; the fin stands only among the odd ones.
 */
export function circulations(lattice: Lattice, vortices: Vortices): Float64Array | null {
  const { symmetric, count, fin } = lattice;
  const result = new Float64Array(count * partCount);
  const { even, odd } = influence(lattice, vortices);
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
function influence(lattice: Lattice, vortices: Vortices): { even: Float64Array; odd: Float64Array } {
  const { symmetric, count, wing, fin, control, normal } = lattice;
  const evenCount = symmetric ? fin.start : 0;
  const even = new Float64Array(evenCount * evenCount);
  const odd = new Float64Array(count * count);
  const here = new Float64Array(count);
  const there = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const x = control[3 * i] as number;
    const y = control[3 * i + 1] as number;
    const z = control[3 * i + 2] as number;
    const ny = normal[2 * i] as number;
    const nz = normal[2 * i + 1] as number;
    throughPanel(lattice, vortices, i >= wing.end, x, y, z, ny, nz, here);
    // The mirror image of a horseshoe induces the mirror image of its velocity at the mirrored place.
    if (symmetric) throughPanel(lattice, vortices, i >= wing.end, x, -y, z, -ny, nz, there);
    const row = i * count;
    for (let j = 0; j < evenCount; j++) odd[row + j] = (here[j] as number) - (there[j] as number);
    for (let j = evenCount; j < count; j++) odd[row + j] = here[j] as number;
    if (i >= evenCount) continue;
    const evenRow = i * evenCount;
    for (let j = 0; j < evenCount; j++) even[evenRow + j] = (here[j] as number) + (there[j] as number);
  }
  return { even, odd };
}

/** Flow along (0, ny, nz) at a place that each horseshoe induces; on the tail, the wing's legs have their cores. */
function throughPanel(
  { wing, tailplane, fin, nodesOf }: Lattice,
  vortices: Vortices,
  onTail: boolean,
  x: number,
  y: number,
  z: number,
  ny: number,
  nz: number,
  into: Float64Array,
): void {
  lookAt(vortices, nodesOf.wing, x, y, z, onTail);
  flowsAlong(vortices, wing, nodesOf.wing, ny, nz, into);
  const nodesOfTail = { start: nodesOf.tailplane.start, end: nodesOf.fin.end };
  lookAt(vortices, nodesOfTail, x, y, z, false);
  flowsAlong(vortices, { start: tailplane.start, end: fin.end }, nodesOfTail, ny, nz, into);
}

/**
 * A section of less lift slope a than 2π: the flow at a strip turns down by cl·(1/a − 1/2π) more, so that a strip by
 * itself lifts with the slope a about the same quarter chord (derived).
 */
function slackened({ strips, stripOf, sectionSlope }: Lattice, matrix: Float64Array, size: number): Float64Array {
  const lost = 2 * (1 / sectionSlope - 1 / (2 * Math.PI));
  for (let i = 0; i < size; i++) {
    const strip = strips[stripOf[i] as number];
    if (!strip) continue;
    const { first, rows, edge } = strip;
    for (let j = first; j < first + rows; j++)
      matrix[i * size + j] = (matrix[i * size + j] as number) - lost / edge.chord;
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
