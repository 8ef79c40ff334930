import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { balance } from "../../../src/library/mass/balance.ts";
import { combine } from "../../../src/library/mass/combine.ts";
import { type Body, gather } from "../../../src/library/mass/gather.ts";
import type { Part } from "../../../src/library/mass/part-record.ts";
import { partRecord } from "../../../src/library/mass/part-record.ts";
import { call, Refusal } from "../call.ts";
import { runs } from "../panel-arbitraries.ts";

const place = fc.double({ min: -0.5, max: 0.5, noNaN: true });
const body = fc.record({ mass: fc.double({ min: 1e-4, max: 0.05, noNaN: true }), x: place, y: place, z: place });
const bodies = fc.array(body, { minLength: 1, maxLength: 8 });
const inertias = ["ixx", "iyy", "izz", "ixy", "ixz", "iyz"] as const;

const weighed = (list: readonly Body[]) =>
  call(balance, {
    items: {
      mass: list.map((each) => each.mass),
      x: list.map((each) => each.x),
      y: list.map((each) => each.y),
      z: list.map((each) => each.z),
    },
  }) as Part;

describe("the balance of any parts", () => {
  test("adds up the same in whatever order and groups the parts are taken", () => {
    fc.assert(
      fc.property(bodies, bodies, (some, others) => {
        const once = weighed([...some, ...others]);
        const grouped = gather([weighed(others), weighed(some)]);
        for (const [field, value] of Object.entries(once)) {
          expect(grouped[field as keyof Part], field).toBeCloseTo(value, 12);
        }
      }),
      runs,
    );
  });
  test("moves with the parts and keeps its inertia", () => {
    fc.assert(
      fc.property(bodies, place, place, place, (parts, dx, dy, dz) => {
        const here = weighed(parts);
        const there = weighed(parts.map((each) => ({ ...each, x: each.x + dx, y: each.y + dy, z: each.z + dz })));
        expect(there.x - dx).toBeCloseTo(here.x, 12);
        expect(there.y - dy).toBeCloseTo(here.y, 12);
        expect(there.z - dz).toBeCloseTo(here.z, 12);
        for (const field of inertias) expect(there[field]).toBeCloseTo(here[field], 12);
      }),
      runs,
    );
  });
  test("turns y and the products with y where everything is mirrored", () => {
    fc.assert(
      fc.property(bodies, (parts) => {
        const here = weighed(parts);
        const mirror = weighed(parts.map((each) => ({ ...each, y: -each.y })));
        expect(mirror.y).toBeCloseTo(-here.y, 12);
        expect(mirror.ixy).toBeCloseTo(-here.ixy, 12);
        expect(mirror.iyz).toBeCloseTo(-here.iyz, 12);
        expect(mirror.ixz).toBeCloseTo(here.ixz, 12);
        expect(mirror.izz).toBeCloseTo(here.izz, 12);
      }),
      runs,
    );
  });
  test("has moments of inertia that no body breaks: none above the sum of the other two", () => {
    fc.assert(
      fc.property(bodies, (parts) => {
        const { ixx, iyy, izz } = weighed(parts);
        expect(ixx).toBeLessThanOrEqual(iyy + izz + 1e-15);
        expect(iyy).toBeLessThanOrEqual(ixx + izz + 1e-15);
        expect(izz).toBeLessThanOrEqual(ixx + iyy + 1e-15);
      }),
      runs,
    );
  });
  test("of a rod cut into many points comes to m·L²/12", () => {
    const count = 2000;
    const rod = weighed(
      Array.from({ length: count }, (_, i) => ({ mass: 0.006 / count, x: (0.3 * (i + 0.5)) / count, y: 0, z: 0 })),
    );
    expect(rod.iyy / ((0.006 * 0.3 ** 2) / 12)).toBeCloseTo(1, 6);
    expect(rod.ixx).toBe(0);
  });
  test("keeps a part's own inertia", () => {
    const own = { mass: [0.01], x: [0.2], y: [-0.1], z: [0.05], ixx: [1e-5], iyy: [2e-5], izz: [2.5e-5], ixz: [-3e-6] };
    const one = call(balance, { items: own }) as Part;
    expect(one).toEqual({
      mass: 0.01,
      x: 0.2,
      y: -0.1,
      z: 0.05,
      ixx: 1e-5,
      iyy: 2e-5,
      izz: 2.5e-5,
      ixy: 0,
      ixz: -3e-6,
      iyz: 0,
    });
  });
  test("takes parts with their own inertia as it would their rows", () => {
    fc.assert(
      fc.property(bodies, body, body, (rows, one, other) => {
        const items = { mass: [0.01], x: [0.2], y: [-0.1], z: [0.05], ixx: [1e-5], iyy: [2e-5], izz: [2.5e-5] };
        const own = call(balance, { items }) as Part;
        const parts = { part_1: weighed([one, other]), part_3: own };
        const table = { mass: rows.map((row) => row.mass), x: rows.map((row) => row.x), y: rows.map((row) => row.y) };
        const all = call(balance, { items: { ...table, z: rows.map((row) => row.z) }, ...parts }) as Part;
        const expected = gather([...rows, one, other, own]);
        for (const [field, value] of Object.entries(expected)) {
          expect(all[field as keyof Part], field).toBeCloseTo(value, 12);
        }
      }),
      runs,
    );
  });
  test("takes an empty table where parts follow", () => {
    const part_1 = weighed([{ mass: 0.002, x: 0.1, y: 0, z: 0 }]);
    expect(call(balance, { items: { mass: [], x: [], y: [], z: [] }, part_1 })).toEqual(part_1);
    expect(call(combine, { part_4: part_1 })).toEqual(part_1);
    expect(() => call(combine, {})).toThrow(/no mass together/);
  });
  test("takes parts without mass, as long as one has some", () => {
    expect(
      weighed([
        { mass: 0, x: 9, y: 9, z: 9 },
        { mass: 0.002, x: 0.1, y: 0, z: 0 },
      ]).x,
    ).toBe(0.1);
  });
  test("is refused without parts, without mass, with a negative mass or uneven columns", () => {
    expect(() => weighed([])).toThrow(/no mass together/);
    expect(() => weighed([{ mass: 0, x: 0, y: 0, z: 0 }])).toThrow(/no mass together/);
    expect(() => weighed([{ mass: -0.001, x: 0, y: 0, z: 0 }])).toThrow(Refusal);
    expect(() => call(balance, { items: { mass: [1, 2], x: [0], y: [0, 0], z: [0, 0] } })).toThrow(/x has 1 entries/);
  });
  test("tells itself in one line", () => {
    const line = (partRecord.text as (value: unknown) => string)(weighed([{ mass: 0.0169, x: -0.0312, y: 0, z: 0 }]));
    expect(line).toBe("16.9 g, balances at x −31.2 mm");
  });
});
