import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { slopeOfFlat, slopeOfWing } from "../../../src/library/flow/finite-wing.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { refuse } from "../call.ts";
import { expectClose } from "../compare.ts";
import { anyPanels, laidFlat, runs, scaled, split } from "../panel-arbitraries.ts";

const build = (panels: Parameters<typeof buildWing>[0]) => buildWing(panels, undefined, refuse);

describe("the lift slope of any wing", () => {
  test("stays where all of it grows, and where a panel is cut in two", () => {
    fc.assert(
      fc.property(anyPanels, fc.nat(), fc.double({ min: 0.1, max: 0.9, noNaN: true }), (panels, pick, share) => {
        const slope = slopeOfWing(build(panels), 5.7);
        expectClose(slopeOfWing(build(scaled(panels, 10)), 5.7), slope, 1e-11);
        expectClose(slopeOfWing(build(split(panels, pick % panels.length.length, share)), 5.7), slope, 1e-10);
      }),
      runs,
    );
  });
  test("times its area is never more than that of its panels laid flat", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const [bent, flat] = [build(panels), build(laidFlat(panels))];
        expect(slopeOfWing(bent, 6) * bent.area).toBeLessThanOrEqual(slopeOfWing(flat, 6) * flat.area * (1 + 1e-12));
      }),
      runs,
    );
  });
  test("is below the section's, and grows with aspect ratio and the section's slope", () => {
    const positive = fc.double({ min: 0.5, max: 30, noNaN: true });
    fc.assert(
      fc.property(positive, fc.double({ min: 0, max: 1, noNaN: true }), (aspect, sweep) => {
        const slope = slopeOfFlat(aspect, sweep, 5.7);
        expect(slope).toBeLessThan(5.7);
        expect(slopeOfFlat(aspect * 1.1, sweep, 5.7)).toBeGreaterThan(slope);
        expect(slopeOfFlat(aspect, sweep, 6)).toBeGreaterThan(slope);
        expect(slopeOfFlat(aspect, sweep + 0.1, 5.7)).toBeLessThan(slope);
      }),
      runs,
    );
  });
});
