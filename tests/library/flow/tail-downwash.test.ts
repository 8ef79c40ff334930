import { describe, expect, test } from "vitest";
import { flowState } from "../../../src/library/flow/flow-state.ts";
import { tailUpwash } from "../../../src/library/flow/tail-downwash.ts";
import { buildTailplane } from "../../../src/library/shape/tailplane.ts";
import { plainWing, solved } from "./sample-flows.ts";

const slope = (z: number) => {
  const tailplane = buildTailplane({
    span: 0.3,
    root_chord: 0.075,
    tip_chord: 0.075,
    x: 0.5125,
    thickness: 1e-6,
    sweep: 0,
    z,
    incidence: 0,
  });
  return -(tailUpwash(solved({ ...plainWing(8), tailplane }))?.[flowState.w] ?? Number.NaN);
};

describe("the downwash at the tail", () => {
  test("half a span behind a rectangle of aspect ratio 8 is 0.300, and 0.315 in its wake (another hand's lattice)", () => {
    // It is not told over which points of the tail that is a mean; along its chord the downwash falls by 0.01.
    expect(Math.abs(slope(0.05) - 0.3)).toBeLessThan(0.008);
    expect(Math.abs(slope(0) - 0.315)).toBeLessThan(0.008);
  });
  test("is the same above and below the wake", () => {
    expect(slope(0.03)).toBeCloseTo(slope(-0.03), 5);
  });
  test("is not told without a tailplane", () => {
    expect(tailUpwash(solved(plainWing(8)))).toBe(null);
  });
});
