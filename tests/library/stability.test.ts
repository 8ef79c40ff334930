import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { finVolume } from "../../src/library/stability/fin-volume.ts";
import { spiralParameter } from "../../src/library/stability/spiral-parameter.ts";
import { tailVolume } from "../../src/library/stability/tail-volume.ts";
import { call, Refusal } from "./call.ts";
import { runs } from "./panel-arbitraries.ts";

const size = fc.double({ min: 0.01, max: 1, noNaN: true });

describe("sizing rules", () => {
  test("stay as they are where the whole glider grows ten times", () => {
    fc.assert(
      fc.property(size, size, size, size, (a, b, c, d) => {
        const tail = (k: number) =>
          call(tailVolume, {
            tail_area: a * k * k,
            tail_arm: b * k,
            wing_area: c * k * k,
            mean_chord: d * k,
          }) as number;
        const fin = (k: number) =>
          call(finVolume, { fin_area: a * k * k, fin_arm: b * k, wing_area: c * k * k, span: d * k }) as number;
        const spiral = (k: number) =>
          call(spiralParameter, { arm: a * k, span: b * k, dihedral: c, lift_coefficient: d }) as number;
        for (const rule of [tail, fin, spiral]) expect(rule(10) / rule(1)).toBeCloseTo(1, 12);
      }),
      runs,
    );
  });
  test("grow in step with area, arm and dihedral", () => {
    const base = { tail_area: 0.006, tail_arm: 0.225, wing_area: 0.03, mean_chord: 0.064 };
    const volume = call(tailVolume, base) as number;
    expect(call(tailVolume, { ...base, tail_area: 0.012 })).toBeCloseTo(2 * volume, 12);
    expect(call(tailVolume, { ...base, tail_arm: -0.225 })).toBeCloseTo(-volume, 12);
  });
  test("refuse a wing without area and a glide without lift", () => {
    expect(() => call(tailVolume, { tail_area: 1, tail_arm: 1, wing_area: 0, mean_chord: 1 })).toThrow(Refusal);
    expect(() => call(finVolume, { fin_area: 1, fin_arm: 1, wing_area: 1, span: -1 })).toThrow(Refusal);
    expect(() => call(spiralParameter, { arm: 1, span: 1, dihedral: 1, lift_coefficient: 0 })).toThrow(Refusal);
  });
});
