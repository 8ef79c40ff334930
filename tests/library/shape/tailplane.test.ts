import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fin } from "../../../src/library/shape/fin.ts";
import { type Fin, finRecord } from "../../../src/library/shape/fin-record.ts";
import { tailplane } from "../../../src/library/shape/tailplane.ts";
import { type Tailplane, tailplaneRecord } from "../../../src/library/shape/tailplane-record.ts";
import { wing } from "../../../src/library/shape/wing.ts";
import type { Wing } from "../../../src/library/shape/wing-record.ts";
import { call, Refusal } from "../call.ts";
import { expectClose } from "../compare.ts";
import { runs } from "../panel-arbitraries.ts";

const size = fc.double({ min: 0.01, max: 0.3, noNaN: true });
const place = fc.double({ min: -0.3, max: 0.5, noNaN: true });
const sweep = fc.double({ min: -0.05, max: 0.05, noNaN: true });
const tail = { span: 0.15, root_chord: 0.046, tip_chord: 0.034, x: 0.245, thickness: 0.0015, sweep: 0.005, z: 0.003 };

describe("a tailplane", () => {
  test("has the means of a flat wing of one panel a side, moved to where it stands", () => {
    fc.assert(
      fc.property(size, size, size, sweep, place, (span, root_chord, tip_chord, back, x) => {
        const plane = call(tailplane, { span, root_chord, tip_chord, x, thickness: 0.002, sweep: back }) as Tailplane;
        const flat = call(wing, {
          panels: {
            length: [span / 2],
            root_chord: [root_chord],
            tip_chord: [tip_chord],
            sweep: [back],
            break: [0],
            washout: [0],
            thickness: [0.002],
          },
        }) as Wing;
        for (const field of ["span", "area", "mean_chord", "mac", "mac_y", "aspect_ratio"] as const) {
          expect(plane[field] / flat[field], field).toBeCloseTo(1, 12);
        }
        expect(plane.mac_x - x).toBeCloseTo(flat.mac_x, 12);
        expect(plane.quarter_x).toBeCloseTo(plane.mac_x + plane.mac / 4, 14);
      }),
      runs,
    );
  });
  test("has its outline in its stations: root and tip of the right half", () => {
    const { stations } = call(tailplane, tail) as Tailplane;
    expect(stations.x).toEqual([0.245, 0.25]);
    expect(stations.y).toEqual([0, 0.075]);
    expect(stations.z).toEqual([0.003, 0.003]);
    expect(stations.chord).toEqual([0.046, 0.034]);
  });
  test("stands level at height 0 where nothing else is said", () => {
    const { span, root_chord, tip_chord, x, thickness } = tail;
    const plain = call(tailplane, { span, root_chord, tip_chord, x, thickness }) as Tailplane;
    expect([plain.sweep, plain.z, plain.incidence]).toEqual([0, 0, 0]);
  });
  test("is refused without span or chord, or set steeper than 45 deg", () => {
    for (const field of ["span", "root_chord", "tip_chord", "thickness"]) {
      expect(() => call(tailplane, { ...tail, [field]: 0 })).toThrow(Refusal);
    }
    expect(() => call(tailplane, { ...tail, incidence: 0.8 })).toThrow(Refusal);
  });
  test("tells itself in one line", () => {
    expect((tailplaneRecord.text as (value: unknown) => string)(call(tailplane, tail))).toBe("150 mm span, 60 cm^2");
  });
});

describe("a fin", () => {
  const upright = { height: 0.05, root_chord: 0.046, tip_chord: 0.032, x: 0.248, thickness: 0.0015, sweep: 0.012 };
  test("has the means of one half of a tailplane stood on end", () => {
    fc.assert(
      fc.property(size, size, size, sweep, place, place, (height, root_chord, tip_chord, back, x, z) => {
        const shape = { root_chord, tip_chord, x, thickness: 0.002, sweep: back };
        const upright = call(fin, { ...shape, height, z }) as Fin;
        const lying = call(tailplane, { ...shape, span: 2 * height }) as Tailplane;
        expect(upright.area * 2).toBeCloseTo(lying.area, 14);
        for (const field of ["mac", "mac_x", "quarter_x"] as const)
          expect(upright[field]).toBeCloseTo(lying[field], 14);
        expect(upright.mac_z - z).toBeCloseTo(lying.mac_y, 12);
        expect(upright.aspect_ratio).toBeCloseTo(lying.aspect_ratio / 2, 12);
      }),
      runs,
    );
  });
  test("has its outline in its stations: foot and tip", () => {
    const { stations } = call(fin, { ...upright, z: 0.004 }) as Fin;
    expectClose(stations.x, [0.248, 0.26], 1e-12);
    expectClose(stations.z, [0.004, 0.054], 1e-12);
    expect(stations.chord).toEqual([0.046, 0.032]);
  });
  test("is refused without height", () => {
    expect(() => call(fin, { ...upright, height: 0 })).toThrow(Refusal);
  });
  test("tells itself in one line", () => {
    expect((finRecord.text as (value: unknown) => string)(call(fin, upright))).toBe("50 mm high, 19.5 cm^2");
  });
});
