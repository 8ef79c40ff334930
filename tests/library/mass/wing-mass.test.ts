import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Body, gather } from "../../../src/library/mass/gather.ts";
import { panelMasses } from "../../../src/library/mass/panel-masses.ts";
import { type Part, partRecord } from "../../../src/library/mass/part-record.ts";
import { wingMass } from "../../../src/library/mass/wing-mass.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import type { Wing } from "../../../src/library/shape/wing-record.ts";
import { call, faultOf, Refusal, refuse } from "../call.ts";
import { expectClose } from "../compare.ts";
import { anyPanels, runs, scaled, split, withColumns } from "../panel-arbitraries.ts";
import { ploverPanels, ploverSeat, ploverWing } from "../plover.ts";

const weigh = (wing: Wing, given: Record<string, unknown> = {}) => call(wingMass, { wing, ...given }) as Part;
const build = (panels: typeof ploverPanels, left?: typeof ploverPanels) => buildWing(panels, left, refuse);

type Point = readonly [number, number, number];
const aboutY = ([x, y, z]: Point, angle: number): Point => [
  x * Math.cos(angle) + z * Math.sin(angle),
  y,
  z * Math.cos(angle) - x * Math.sin(angle),
];
const aboutX = ([x, y, z]: Point, angle: number): Point => [
  x,
  y * Math.cos(angle) - z * Math.sin(angle),
  y * Math.sin(angle) + z * Math.cos(angle),
];

/** The same wing put together from many small boxes, each a point: written apart from the library's integrals. */
function boxes(wing: Wing, density: number, share: number, seat: { z: number; incidence: number }): Body[] {
  const [along, across, layers] = [24, 160, 8];
  const power = share / (1 - share);
  const high = 0.3;
  const bodies: Body[] = [];
  for (const [side, half] of [
    [1, wing.right],
    [-1, wing.left],
  ] as const) {
    half.length.forEach((length, panel) => {
      const at = (list: readonly number[], index = panel) => list[index] ?? Number.NaN;
      for (let i = 0; i < along; i++) {
        const part = (i + 0.5) / along;
        const chord = at(half.root_chord) + (at(half.tip_chord) - at(half.root_chord)) * part;
        const edge = (list: readonly number[]) => at(list) + (at(list, panel + 1) - at(list)) * part;
        for (let j = 0; j < across; j++) {
          const xi = (j + 0.5) / across;
          const fromHigh = xi < high ? (high - xi) / high : (xi - high) / (1 - high);
          const height = at(half.thickness) * (1 - fromHigh ** power);
          for (let k = 0; k < layers; k++) {
            const local: Point = [xi * chord, 0, (height * (k + 0.5)) / layers];
            const [x, y, z] = aboutX(aboutY(local, -at(half.twist)), side * at(half.cant));
            const { stations } = half;
            const [px, py, pz] = aboutY(
              [edge(stations.x) + x, edge(stations.y) + y, edge(stations.z) + z],
              seat.incidence,
            );
            const volume = (length / along) * (chord / across) * (height / layers);
            bodies.push({ mass: density * volume, x: px, y: py, z: seat.z + pz });
          }
        }
      }
    });
  }
  return bodies;
}

describe("the wood of a wing", () => {
  const flat = { z: 0.012, incidence: 0 };
  test.each([
    ["Plover as it sits", ploverWing, ploverSeat],
    ["a wing of unlike halves, twisted and steep", build(ploverPanels, steep()), flat],
  ])("weighs and turns like many small boxes: %s", (_, wing, seat) => {
    const whole = weigh(wing, { density: 110, sanded: 0.78, ...seat });
    const pieces = gather(boxes(wing, 110, 0.78, seat));
    expectClose(whole.mass, pieces.mass, 5e-4);
    const size = 0.05;
    for (const axis of ["x", "y", "z"] as const) {
      expect(Math.abs(whole[axis] - pieces[axis]), axis).toBeLessThan(size * 2e-3);
    }
    for (const field of ["ixx", "iyy", "izz"] as const) expectClose(whole[field], pieces[field], 2e-3, field);
    for (const field of ["ixy", "ixz", "iyz"] as const) {
      expect(Math.abs(whole[field] - pieces[field]), field).toBeLessThan(1e-3 * whole.iyy);
    }
  });

  test("has every field of a part", () => {
    expect(faultOf(partRecord, weigh(ploverWing, { density: 110 }), "part")).toBe(null);
  });

  test("is symmetric where the wing is", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const part = weigh(build(panels));
        for (const field of ["y", "ixy", "iyz"] as const) expect(Math.abs(part[field])).toBeLessThan(1e-12);
      }),
      runs,
    );
  });

  test("turns y and the products with y where right and left change places", () => {
    fc.assert(
      fc.property(anyPanels, anyPanels, (right, left) => {
        const here = weigh(build(right, left));
        const there = weigh(build(left, right));
        for (const field of ["mass", "x", "z", "ixx", "iyy", "izz", "ixz"] as const) {
          expect(Math.abs(here[field] - there[field])).toBeLessThan(1e-12);
        }
        for (const field of ["y", "ixy", "iyz"] as const) {
          expect(Math.abs(here[field] + there[field])).toBeLessThan(1e-12);
        }
      }),
      runs,
    );
  });

  test("is a hundred thousand times the inertia where all lengths are ten times", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const small = weigh(build(panels), { sanded: 0.7, incidence: 0.05 });
        const large = weigh(build(scaled(panels, 10)), { sanded: 0.7, incidence: 0.05 });
        expectClose(large.mass / 1e3, small.mass, 1e-11);
        for (const field of ["ixx", "iyy", "izz"] as const) expectClose(large[field] / 1e5, small[field], 1e-9);
      }),
      runs,
    );
  });

  test("is the same where one panel is cut in two", () => {
    fc.assert(
      fc.property(anyPanels, fc.nat(), fc.double({ min: 0.1, max: 0.9, noNaN: true }), (panels, pick, share) => {
        const cut = split(panels, pick % panels.length.length, share);
        const [one, other] = [weigh(build(panels)), weigh(build(cut))];
        for (const field of ["mass", "ixx", "iyy", "izz"] as const) expectClose(other[field], one[field], 1e-9, field);
      }),
      runs,
    );
  });

  test("of the panels' own density is that of the table, and a density said beside it counts instead", () => {
    const mixed = build(withColumns(ploverPanels, { density: [120, 100, 90] }));
    const masses = call(panelMasses, { wing: mixed, sanded: 0.78 }) as number[];
    expectClose(weigh(mixed, { sanded: 0.78 }).mass, 2 * masses.reduce((sum, mass) => sum + mass, 0), 1e-12);
    expectClose(weigh(mixed, { density: 100 }).mass, weigh(ploverWing, { density: 100 }).mass, 1e-12);
  });

  test("is refused without any density, telling what to do", () => {
    expect(() => weigh(ploverWing)).toThrow(/Give a density/);
    expect(() => call(panelMasses, { wing: ploverWing })).toThrow(/Give a density/);
    expect(() => weigh(ploverWing, { density: 0 })).toThrow(Refusal);
  });

  test("comes down behind the root's leading edge where its seat is nose-up", () => {
    const [level, raised] = [0, degrees(4)].map((incidence) => weigh(ploverWing, { density: 110, incidence }));
    expect((level?.z ?? 0) - (raised?.z ?? 0)).toBeCloseTo((level?.x ?? 0) * Math.sin(degrees(4)), 4);
  });
});

function steep() {
  return withColumns(ploverPanels, {
    break: [degrees(20), degrees(-35), degrees(60)],
    washout: [degrees(4), degrees(-9), degrees(12)],
    sweep: [0.02, -0.01, 0.03],
  });
}
