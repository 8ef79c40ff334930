import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { finMass } from "../../../src/library/mass/fin-mass.ts";
import { gather } from "../../../src/library/mass/gather.ts";
import type { Part } from "../../../src/library/mass/part-record.ts";
import { stickMass } from "../../../src/library/mass/stick-mass.ts";
import { tailplaneMass } from "../../../src/library/mass/tailplane-mass.ts";
import { buildFin } from "../../../src/library/shape/fin.ts";
import { buildTailplane } from "../../../src/library/shape/tailplane.ts";
import { call, Refusal } from "../call.ts";
import { expectClose } from "../compare.ts";
import { runs } from "../panel-arbitraries.ts";
import { ploverFin, ploverStick, ploverTailplane } from "../plover.ts";

const stick = (given: Record<string, unknown> = {}) => call(stickMass, { ...ploverStick, ...given }) as Part;
const size = fc.double({ min: 0.002, max: 0.05, noNaN: true });

describe("a stick", () => {
  test("weighs and turns like its many short boxes", () => {
    const count = 4000;
    const boxes = Array.from({ length: count }, (_, i) => {
      const at = (i + 0.5) / count;
      const [wide, high, long] = [0.006 - 0.002 * at, 0.009 - 0.004 * at, 0.38 / count];
      const mass = 190 * wide * high * long;
      return {
        mass,
        x: -0.085 + 0.38 * at,
        y: 0,
        z: 0,
        ixx: (mass * (wide ** 2 + high ** 2)) / 12,
        iyy: (mass * (long ** 2 + high ** 2)) / 12,
        izz: (mass * (long ** 2 + wide ** 2)) / 12,
      };
    });
    const pieces = gather(boxes);
    const whole = stick();
    for (const field of ["mass", "x", "ixx", "iyy", "izz"] as const)
      expectClose(whole[field], pieces[field], 1e-6, field);
  });
  test("cut in two anywhere is the same stick", () => {
    fc.assert(
      fc.property(size, size, size, size, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (a, b, c, d, share) => {
        const [front_x, rear_x, density] = [-0.1, 0.3, 200];
        const ends = { width: a, height: b, end_width: c, end_height: d };
        const cut = { width: a + (c - a) * share, height: b + (d - b) * share };
        const at = front_x + (rear_x - front_x) * share;
        const whole = stick({ density, front_x, rear_x, ...ends });
        const halves = gather([
          stick({ density, front_x, rear_x: at, ...ends, end_width: cut.width, end_height: cut.height }),
          stick({ density, front_x: at, rear_x, ...ends, ...cut }),
        ]);
        for (const field of ["mass", "ixx", "iyy", "izz"] as const)
          expectClose(halves[field], whole[field], 1e-10, field);
        expect(halves.x).toBeCloseTo(whole.x, 12);
      }),
      runs,
    );
  });
  test("keeps its section where no rear one is said", () => {
    const even = call(stickMass, { density: 200, front_x: 0, rear_x: 0.3, width: 0.006, height: 0.01 }) as Part;
    expectClose([even.mass, even.x], [200 * 0.3 * 6e-5, 0.15], 1e-12);
  });
  test("is refused back to front", () => {
    expect(() => stick({ front_x: 0.3, rear_x: -0.1 })).toThrow(/must lie behind/);
    expect(() => stick({ rear_x: ploverStick.front_x })).toThrow(Refusal);
  });
});

describe("a tail", () => {
  test("of even chord has the moments of a box: m·(b² + t²)/12 and its like", () => {
    const even = buildTailplane({ ...ploverTailplane, root_chord: 0.04, tip_chord: 0.04, sweep: 0, incidence: 0 });
    const { mass, ixx, iyy, izz } = call(tailplaneMass, { tailplane: even, density: 90 }) as Part;
    expectClose(
      [mass, ixx, iyy, izz],
      [
        90 * 9e-6,
        (mass * (0.15 ** 2 + 0.0015 ** 2)) / 12,
        (mass * (0.04 ** 2 + 0.0015 ** 2)) / 12,
        (mass * (0.15 ** 2 + 0.04 ** 2)) / 12,
      ],
      1e-10,
    );
  });
  test("of a pointed fin is a right triangle's: a third up, a third ahead of the upright edge, m·h²/18", () => {
    const pointed = buildFin({
      height: 0.06,
      root_chord: 0.09,
      tip_chord: 1e-9,
      x: 0,
      thickness: 1e-6,
      sweep: 0.09,
      z: 0,
    });
    const { mass, x, z, ixx, izz, ixz } = call(finMass, { fin: pointed, density: 100 }) as Part;
    expectClose([x, z], [0.06, 0.02], 1e-6);
    expectClose([ixx, izz, ixz], [(mass * 0.06 ** 2) / 18, (mass * 0.09 ** 2) / 18, (mass * 0.06 * 0.09) / 36], 1e-6);
  });
  test("at an incidence turns nose-up about its root's leading edge", () => {
    const level = call(tailplaneMass, { tailplane: buildTailplane({ ...ploverTailplane, incidence: 0 }), density: 90 });
    const raised = call(tailplaneMass, {
      tailplane: buildTailplane({ ...ploverTailplane, incidence: 0.1 }),
      density: 90,
    });
    const [flat, up] = [level as Part, raised as Part];
    expect(up.mass).toBeCloseTo(flat.mass, 15);
    const [along, above] = [flat.x - ploverTailplane.x, flat.z - ploverTailplane.z];
    expect(up.x - ploverTailplane.x).toBeCloseTo(along * Math.cos(0.1) + above * Math.sin(0.1), 12);
    expect(up.z - ploverTailplane.z).toBeCloseTo(above * Math.cos(0.1) - along * Math.sin(0.1), 12);
    expect(up.iyy).toBeCloseTo(flat.iyy, 15);
    expect(up.ixz).toBeLessThan(0);
  });
  test("sanded to a share keeps its balance point", () => {
    const fin = buildFin(ploverFin);
    const full = call(finMass, { fin, density: 90 }) as Part;
    const thin = call(finMass, { fin, density: 90, sanded: 0.8 }) as Part;
    expectClose([thin.mass, thin.ixx], [0.8 * full.mass, 0.8 * full.ixx], 1e-12);
    expect([thin.x, thin.z]).toEqual([expect.closeTo(full.x, 12), expect.closeTo(full.z, 12)]);
  });
});
