import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buildTailplane } from "../../../src/library/shape/tailplane.ts";
import { neutralPoint, neutralPointOf } from "../../../src/library/stability/neutral-point.ts";
import { neutralPointRecord } from "../../../src/library/stability/neutral-point-record.ts";
import { call, faultOf, Refusal } from "../call.ts";
import { runs } from "../panel-arbitraries.ts";
import { ploverTailplane, ploverWing } from "../plover.ts";

const tail = (change: Partial<typeof ploverTailplane> = {}) => buildTailplane({ ...ploverTailplane, ...change });
const point = (change: Partial<typeof ploverTailplane> = {}, slope = 5.7) =>
  neutralPointOf(ploverWing, tail(change), 0.012, slope);

describe("the neutral point", () => {
  test("moves back with a larger or a farther tailplane", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.3, noNaN: true }),
        fc.double({ min: 0.12, max: 0.6, noNaN: true }),
        (span, x) => {
          expect(point({ span: span * 1.05, x }).x).toBeGreaterThan(point({ span, x }).x);
          expect(point({ span, x: x + 0.01 }).x).toBeGreaterThan(point({ span, x }).x);
        },
      ),
      runs,
    );
  });
  test("of a tailplane that is next to nothing is a quarter of the wing's mean aerodynamic chord", () => {
    expect(point({ span: 1e-7 }).share).toBeCloseTo(0.25, 6);
  });
  test("balances the moments of both lifts: the whole slope at it is the sum of the two where they act", () => {
    const { x, lift_slope, wing_slope, tail_slope, downwash } = point();
    const tailLift = (tail_slope * (1 - downwash) * tail().area) / ploverWing.area;
    const quarter = ploverWing.mac_x + ploverWing.mac / 4;
    expect(lift_slope).toBeCloseTo(wing_slope + tailLift, 12);
    expect(lift_slope * x).toBeCloseTo(wing_slope * quarter + tailLift * tail().quarter_x, 12);
  });
  test("moves by less than 4 % of the chord from the flattest section to that of the theory", () => {
    expect(Math.abs(point({}, 5.2).share - point({}, 6.28).share)).toBeLessThan(0.04);
  });
  // Any stable glider of this layout has it behind its balance point, at 44 % of the chord by its sheet.
  test("of Plover lies 10 % to 20 % of the chord behind its balance point", () => {
    const found = call(neutralPoint, { wing: ploverWing, tailplane: tail(), seat_height: 0.012 });
    expect(faultOf(neutralPointRecord, found, "point")).toBe(null);
    const margin = (found as { share: number }).share - 0.44;
    expect(margin).toBeGreaterThan(0.1);
    expect(margin).toBeLessThan(0.2);
  });
  test("is refused for a tailplane that is not behind the wing", () => {
    expect(() => call(neutralPoint, { wing: ploverWing, tailplane: tail({ x: -0.2 }) })).toThrow(Refusal);
  });
});
