import { addBlockProduct } from "../numerics/block-product.ts";
import { askewParts, evenStates, oddStates, partCount, stateCount, stateOf } from "./flow-state.ts";
import type { Lattice } from "./lattice.ts";
import { loadCount, type QuadraticLoads } from "./quadratic-loads.ts";

/** Parts of the flow, the even ones first. */
export const order: readonly number[] = [...evenStates, ...oddStates, ...askewParts];
export const evenCount = evenStates.length;

/**
 * What carries loads, panels or strips, by parts of the flow in `order`: their circulations, `partCount` numbers each, and
 * the loads on them for unit circulation, `loadCount` times as many.
 */
export interface Carriers {
  readonly strengths: Float64Array;
  readonly loads: Float64Array;
}

const loadSize = loadCount * partCount;

export const carriersFor = (count: number): Carriers => ({
  strengths: new Float64Array(count * partCount),
  loads: new Float64Array(count * loadSize),
});

/** For each load the sum of load times circulation, by the parts of the flow of both. */
export const sumsOfForms = (): Float64Array => new Float64Array(loadSize * partCount);

/**
 * Adds the loads of carriers and of their mirror images to the sums; those before the number `mirrored` have one where the
 * lattice holds one half. Of X, Z and M the image's share is the same where both parts are even or both odd, else the
 * opposite; of Y, L and N it is the other way round.
 */
export function addForms(
  sums: Float64Array,
  { symmetric }: Pick<Lattice, "symmetric">,
  carriers: Carriers,
  mirrored: number,
): void {
  const count = carriers.strengths.length / partCount;
  const alone = symmetric ? mirrored : 0;
  for (let load = 0; load < loadCount; load++) {
    for (const [k, l] of blocks) {
      if (alone > 0 && ((k === 0) === (l === 0)) === (load % 2 === 0))
        addBlock(sums, load, k, l, carriers, 0, alone, 2);
      if (alone < count) addBlock(sums, load, k, l, carriers, alone, count, 1);
    }
  }
}

/** Blocks of four by four parts of the flow; what is of second order in sideslip is left out. */
const blocks: readonly (readonly [number, number])[] = [
  [0, 0],
  [0, 4],
  [0, 8],
  [4, 0],
  [4, 4],
  [4, 8],
  [8, 0],
  [8, 4],
];

function addBlock(
  sums: Float64Array,
  load: number,
  k: number,
  l: number,
  { strengths, loads }: Carriers,
  start: number,
  end: number,
  weight: number,
): void {
  const circulations = { numbers: strengths, start: start * partCount + k, stride: partCount };
  const perUnit = { numbers: loads, start: start * loadSize + load * partCount + l, stride: loadSize };
  const into = { numbers: sums, start: (load * partCount + k) * partCount + l, stride: partCount };
  addBlockProduct(circulations, perUnit, end - start, weight, into);
}

const formSize = stateCount * stateCount;

/** The forms of the state from sums by parts. */
export function formsFrom(sums: Float64Array): Pick<QuadraticLoads, "form" | "skew"> {
  const form = new Float64Array(loadCount * formSize);
  const skew = new Float64Array(loadCount * formSize);
  for (let c = 0; c < loadCount; c++) {
    for (let k = 0; k < partCount; k++) {
      const one = order[k] as number;
      const m = stateOf[one] as number;
      for (let l = 0; l < partCount; l++) {
        const other = order[l] as number;
        const n = stateOf[other] as number;
        const into = one >= stateCount || other >= stateCount ? skew : form;
        const half = (sums[(c * partCount + k) * partCount + l] as number) / 2;
        // Both ways round: forms are symmetric.
        const there = c * formSize + m * stateCount + n;
        const back = c * formSize + n * stateCount + m;
        into[there] = (into[there] as number) + half;
        into[back] = (into[back] as number) + half;
      }
    }
  }
  return { form, skew };
}
