import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { balance } from "../../../src/library/mass/balance.ts";
import { ballast } from "../../../src/library/mass/ballast.ts";
import type { Part } from "../../../src/library/mass/part-record.ts";
import { call } from "../call.ts";
import { runs } from "../panel-arbitraries.ts";

const before = call(balance, {
  items: { mass: [0.008, 0.003, 0.001], x: [0.03, 0.08, 0.26], y: [0.001, 0, 0], z: [0.018, 0, 0.004] },
}) as Part;
const add = (change: Record<string, unknown>) =>
  call(ballast, { before, wanted_x: 0.03, ballast_x: -0.08, ...change }) as { mass: number; balance: Part };

describe("ballast", () => {
  test("brings the balance point to where it is wanted, from either side", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        fc.double({ min: -0.4, max: 0.6, noNaN: true }).filter((x) => Math.abs(x - before.x) > 0.01),
        (share, ballast_x) => {
          const wanted_x = before.x + (ballast_x - before.x) * share;
          const after = add({ wanted_x, ballast_x });
          expect(after.mass).toBeGreaterThan(0);
          expect(after.balance.x).toBeCloseTo(wanted_x, 12);
          expect(after.balance.mass).toBeCloseTo(before.mass + after.mass, 12);
        },
      ),
      runs,
    );
  });
  test("weighs like one more part of the table", () => {
    const { mass, balance: after } = add({ ballast_y: 0.002, ballast_z: 0.001 });
    const table = {
      mass: [0.008, 0.003, 0.001, mass],
      x: [0.03, 0.08, 0.26, -0.08],
      y: [0.001, 0, 0, 0.002],
      z: [0.018, 0, 0.004, 0.001],
    };
    for (const [field, value] of Object.entries(call(balance, { items: table }) as Part)) {
      expect(after[field as keyof Part], field).toBeCloseTo(value, 14);
    }
  });
  test("left without y and z sits level and in line with the balance point", () => {
    const after = add({}).balance;
    expect(after.y).toBeCloseTo(before.y, 14);
    expect(after.z).toBeCloseTo(before.z, 14);
    expect(after.ixx).toBeCloseTo(before.ixx, 14);
  });
  test("is nothing where the balance point already is where it is wanted, even right there", () => {
    expect(add({ wanted_x: before.x })).toEqual({ mass: 0, balance: before });
    expect(add({ wanted_x: before.x, ballast_x: before.x }).mass).toBe(0);
  });
  test("is refused where it can never do: beyond the ballast, on the wrong side, or at the ballast itself", () => {
    expect(() => add({ wanted_x: -0.09 })).toThrow(/only between 61\.8 mm|only between/);
    expect(() => add({ wanted_x: 0.1 })).toThrow(/not to 100 mm/);
    expect(() => add({ wanted_x: -0.08 })).toThrow(/only between/);
  });
});
