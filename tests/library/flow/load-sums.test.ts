import { describe, expect, test } from "vitest";
import { parity, partCount, partsOf, stateCount } from "../../../src/library/flow/flow-state.ts";
import {
  addForms,
  type Carriers,
  carriersFor,
  formsFrom,
  order,
  sumsOfForms,
} from "../../../src/library/flow/load-sums.ts";
import { loadCount, loadsAt } from "../../../src/library/flow/quadratic-loads.ts";

/** Carriers with numbers like those of a lattice; the last one stands in the middle and has only odd circulation. */
function someCarriers(): Carriers {
  const carriers = carriersFor(5);
  carriers.strengths.forEach((_, i) => {
    const isEven = parity[order[i % partCount] ?? 0] === 1;
    carriers.strengths[i] = i >= 4 * partCount && isEven ? 0 : Math.sin(3 * i + 1);
  });
  carriers.loads.forEach((_, i) => {
    carriers.loads[i] = Math.cos(5 * i + 2);
  });
  return carriers;
}

/** The same carriers, and behind them the mirror images of the first four. */
function withImages({ strengths, loads }: Carriers): Carriers {
  const all = carriersFor(9);
  all.strengths.set(strengths);
  all.loads.set(loads);
  for (let i = 0; i < 4; i++) {
    for (let l = 0; l < partCount; l++) {
      const sign = parity[order[l] ?? 0] ?? 0;
      all.strengths[(5 + i) * partCount + l] = sign * (strengths[i * partCount + l] ?? 0);
      for (let c = 0; c < loadCount; c++) {
        // Seen in a mirror Y, L and N turn round.
        const at = (i * loadCount + c) * partCount + l;
        all.loads[at + 5 * loadCount * partCount] = (c % 2 === 0 ? 1 : -1) * sign * (loads[at] ?? 0);
      }
    }
  }
  return all;
}

describe("sums of loads by parts of the flow", () => {
  test("are the same for one half and for both halves held", () => {
    const carriers = someCarriers();
    const [half, whole] = [sumsOfForms(), sumsOfForms()];
    addForms(half, { symmetric: true }, carriers, 4);
    addForms(whole, { symmetric: false }, withImages(carriers), 0);
    half.forEach((value, i) => {
      expect(value).toBeCloseTo(whole[i] ?? Number.NaN, 12);
    });
  });

  test("give forms whose value at a state is the sum over carriers of circulation times load", () => {
    const carriers = someCarriers();
    const sums = sumsOfForms();
    addForms(sums, { symmetric: false }, carriers, 0);
    const loads = new Float64Array(loadCount);
    // Without sideslip no part of a wake that leaves askew.
    const state = Float64Array.from([1, 0, 0.2, 0.3, 0.1, -0.4, 0.05, 0.02]);
    loadsAt({ ...formsFrom(sums), point: [0, 0, 0] }, state, loads);
    const parts = partsOf(state);
    for (let c = 0; c < loadCount; c++) {
      let wanted = 0;
      for (let i = 0; i < 5; i++) {
        let [circulation, load] = [0, 0];
        for (let l = 0; l < partCount; l++) {
          if ((order[l] ?? 0) >= stateCount) continue;
          const part = parts[order[l] ?? 0] ?? 0;
          circulation += (carriers.strengths[i * partCount + l] ?? 0) * part;
          load += (carriers.loads[(i * loadCount + c) * partCount + l] ?? 0) * part;
        }
        wanted += circulation * load;
      }
      expect(loads[c]).toBeCloseTo(wanted, 12);
    }
  });
});
