import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { jointMass } from "../../../src/library/mass/joint-mass.ts";
import type { Part } from "../../../src/library/mass/part-record.ts";
import { stripMass } from "../../../src/library/mass/strip-mass.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import type { Wing } from "../../../src/library/shape/wing-record.ts";
import { call, refuse } from "../call.ts";
import { expectClose } from "../compare.ts";
import { anyPanels, laidFlat, runs, withColumns } from "../panel-arbitraries.ts";
import { ploverPanels, ploverSeat, ploverWing } from "../plover.ts";

const joints = (wing: Wing, given: Record<string, unknown> = {}) =>
  call(jointMass, { wing, cloth: 0.025, ...given }) as Part;
const build = (panels: typeof ploverPanels, left?: typeof ploverPanels) => buildWing(panels, left, refuse);

describe("the joints of a wing", () => {
  test("weigh glue and strips at each: five of them for three panels a side", () => {
    const glue = joints(ploverWing, { cloth: 0, glue: 0.001 });
    expect(glue.mass).toBeCloseTo(0.005, 12);
    const strips = joints(ploverWing, { glue: 0, width: 0.02, root_width: 0.04 });
    expect(strips.mass).toBeCloseTo(2 * 0.05 * (0.04 * 0.074 + 2 * 0.02 * (0.07 + 0.06)), 12);
    expectClose(
      joints(ploverWing, { glue: 0, width: 0.02, faces: 1 }).mass * 2,
      joints(ploverWing, { glue: 0 }).mass,
      1e-12,
    );
  });
  test("have none at the root of a continuous centre panel", () => {
    const flat = build(withColumns(ploverPanels, { break: [0, degrees(10), degrees(11)] }));
    expect(joints(flat, { cloth: 0, glue: 0.001 }).mass).toBeCloseTo(0.004, 12);
  });
  test("weigh like flat strips laid where the joints are, where the wing is flat", () => {
    const flat = build(laidFlat(withColumns(ploverPanels, { washout: [0, 0, 0] })));
    const { x, y, chord } = flat.stations;
    const found = joints(flat, { glue: 0, width: 0.02 });
    const strips = [1, 2].flatMap((k) =>
      [1, -1].map(
        (side) =>
          call(stripMass, {
            length: chord[k],
            width: 0.02,
            cloth: 0.025,
            x: (x[k] ?? 0) + (chord[k] ?? 0) / 2,
            y: side * (y[k] ?? 0),
          }) as Part,
      ),
    );
    const mass = strips.reduce((sum, strip) => sum + strip.mass, 0);
    expect(found.mass).toBeCloseTo(mass, 12);
    const roll = strips.reduce((sum, strip) => sum + strip.ixx + strip.mass * strip.y ** 2, 0);
    expectClose(found.ixx, roll, 0.02);
    expect(found.x).toBeCloseTo(strips.reduce((sum, strip) => sum + strip.mass * strip.x, 0) / mass, 12);
  });
  test("lie in the middle where the wing is symmetric, and move with its seat", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const wing = build(
          withColumns(panels, { break: panels.break.map((angle, i) => (i === 0 ? angle + 0.3 : angle)) }),
        );
        const low = joints(wing);
        const high = joints(wing, { z: 0.02 });
        expect(Math.abs(low.y)).toBeLessThan(1e-12);
        expect(high.z - low.z).toBeCloseTo(0.02, 12);
        expect(high.ixx).toBeCloseTo(low.ixx, 12);
      }),
      runs,
    );
  });
  test("come down with the chord where the seat is nose-up", () => {
    const level = joints(ploverWing, { z: ploverSeat.z });
    expect(joints(ploverWing, ploverSeat).z).toBeLessThan(level.z);
  });
  test("are refused where there is none, where they weigh nothing, and where faces are no whole number", () => {
    const single = build({
      length: [0.2],
      root_chord: [0.08],
      tip_chord: [0.06],
      sweep: [0],
      break: [0],
      washout: [0],
      thickness: [0.003],
    });
    expect(() => joints(single)).toThrow(/no joint/);
    expect(() => joints(ploverWing, { cloth: 0, glue: 0 })).toThrow(/weigh nothing/);
    expect(() => joints(ploverWing, { faces: 1.5 })).toThrow(/whole number/);
  });
});
