import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stripForces } from "../../../src/library/air/polar.ts";
import { dragSpread, type Section, sectionDrag, thinPolar } from "../../../src/library/air/section.ts";
import { runs } from "../panel-arbitraries.ts";

const sections: readonly Section[] = [
  { thickness: 0.03, camber: 0, suction: 0.25 },
  { thickness: 0.043, camber: 0.0215, suction: 0.6 },
  { thickness: 0.03, camber: 0.05, suction: 0.25 },
];
const section = fc.constantFrom(...sections);
const straight = fc.double({ min: -2, max: 2.5, noNaN: true });
const reynolds = fc.double({ min: 6000, max: 120_000, noNaN: true });

describe("the forces of a strip", () => {
  test("are those of the section before the stall", () => {
    for (const each of sections) {
      const forces = stripForces(thinPolar(each), 0.5, 13_000);
      expect(forces).toEqual({ lift: 0.5, drag: sectionDrag(each, 0.5, 13_000), stalled: 0 });
    }
  });
  test("are smooth to their slopes in lift and in Reynolds number, through the stall", () => {
    const slopes = (of: (at: number) => number, at: number, step: number) => [
      (of(at + step) - of(at)) / step,
      (of(at) - of(at - step)) / step,
    ];
    fc.assert(
      fc.property(section, straight, reynolds, (each, lift, re) => {
        const polar = thinPolar(each);
        for (const what of ["lift", "drag", "stalled"] as const) {
          const [after = 0, before = 0] = slopes((at) => stripForces(polar, at, re)[what], lift, 1e-5);
          expect(Math.abs(after - before)).toBeLessThan(2e-3);
          const [more = 0, less = 0] = slopes((at) => stripForces(polar, lift, Math.exp(at))[what], Math.log(re), 1e-5);
          expect(Math.abs(more - less)).toBeLessThan(2e-3);
        }
      }),
      runs,
    );
  });
  test("stay below the largest lift, and past the stall the drag is more than it would have been", () => {
    fc.assert(
      fc.property(section, straight, reynolds, (each, lift, re) => {
        const polar = thinPolar(each);
        const forces = stripForces(polar, lift, re);
        expect(forces.lift).toBeLessThanOrEqual(polar.maxLift(re) + 1e-12);
        expect(forces.lift).toBeGreaterThanOrEqual(polar.minLift(re) - 1e-12);
        expect(forces.drag).toBeGreaterThanOrEqual(polar.drag(forces.lift, re) - 1e-12);
      }),
      runs,
    );
  });
  test("of a flat plate at 15 deg stand square on it: its drag is friction and lift times the tangent", () => {
    const [plate] = sections;
    if (!plate) throw new Error("no plate");
    const polar = thinPolar(plate);
    const angle = (15 * Math.PI) / 180;
    const { lift, drag, stalled } = stripForces(polar, 5.7 * angle, 60_000);
    expect(stalled).toBe(1);
    expect(lift).toBeCloseTo(0.85 * 0.7, 12);
    expect(drag).toBeCloseTo(polar.leastDrag(60_000) + lift * Math.tan(angle), 12);
  });
  test("are finite in still air", () => {
    for (const each of sections) {
      for (const lift of [0, 3, -3]) {
        for (const value of Object.values(stripForces(thinPolar(each), lift, 0))) expect(value).toBeTypeOf("number");
        expect(Number.isFinite(stripForces(thinPolar(each), lift, 0).drag)).toBe(true);
      }
    }
  });
});

describe("the spread of the drag", () => {
  test("is 20 % where sections were tested, and a tenth more for each halving or doubling beyond, up to 40 %", () => {
    expect([15_000, 40_000, 100_000].map(dragSpread)).toEqual([0.2, 0.2, 0.2]);
    expect(dragSpread(7500)).toBeCloseTo(0.3, 12);
    expect(dragSpread(200_000)).toBeCloseTo(0.3, 12);
    expect(dragSpread(500)).toBeCloseTo(0.4, 12);
  });
});
