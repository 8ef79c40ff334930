import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { latticeOf } from "../../../src/library/flow/build-lattice.ts";
import type { Lattice } from "../../../src/library/flow/lattice.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { buildFuselageStick } from "../../../src/library/shape/fuselage-stick.ts";
import { anyPanels, runs } from "../panel-arbitraries.ts";
import { plover, usual, wingAlone } from "./sample-flows.ts";

/** Area of the strips of one surface, chord at the control point times width. */
const areaOf = ({ strips }: Lattice, surface: string) =>
  strips.reduce(
    (sum, each) => sum + (each.surface === surface ? each.edge.chord * Math.hypot(each.acrossY, each.acrossZ) : 0),
    0,
  );
const finHeights = (lattice: Lattice) => {
  const nodes = [...lattice.from, ...lattice.to].slice();
  const ofFin = nodes.filter((_, i) => i % lattice.count >= lattice.fin.start);
  const heights = ofFin.map((node) => lattice.nodes[3 * node + 2] ?? Number.NaN);
  return [Math.min(...heights), Math.max(...heights)];
};

describe("a lattice", () => {
  test("covers the panels as cut, whatever their shape", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const glider = wingAlone(panels);
        const area = 2 * areaOf(latticeOf(glider, { ...usual, strips: 40 }), "wing");
        expect(Math.abs(area / glider.wing.developed_area - 1)).toBeLessThan(0.002);
      }),
      runs,
    );
  });

  test("has as many strips as asked for, an edge on every break, and two on the smallest panel", () => {
    const lattice = latticeOf(plover(), { ...usual, strips: 9 });
    const panels = lattice.strips.filter(({ surface }) => surface === "wing").map(({ panel }) => panel);
    expect(panels).toHaveLength(9);
    for (const panel of [1, 2, 3]) expect(panels.filter((each) => each === panel).length).toBeGreaterThanOrEqual(2);
  });

  test("holds every panel once in a run, whose nodes it shares with its neighbours", () => {
    for (const glider of [
      plover(),
      plover({ panels: { root_chord: [0.074, 0.06, 0.06] } }),
      plover({ fin: { z: -0.02 } }),
    ]) {
      const { runsOf, from, to, count } = latticeOf(glider, usual);
      const seen: number[] = [];
      for (const { node, panel, strips, rows } of Object.values(runsOf).flat()) {
        for (let i = 0; i < strips * rows; i++) {
          seen.push(panel + i);
          expect([from[panel + i], to[panel + i]]).toEqual([node + i, node + i + rows]);
        }
      }
      expect(seen).toEqual(Array.from({ length: count }, (_, i) => i));
    }
    // A step in the chord parts the wing in two.
    const wings = [plover(), plover({ panels: { root_chord: [0.074, 0.06, 0.06] } })];
    expect(wings.map((glider) => latticeOf(glider, usual).runsOf.wing.length)).toEqual([1, 2]);
  });

  test("has no strip wider than twice its neighbour but at a break", () => {
    const { strips } = latticeOf(plover(), { ...usual, strips: 20 });
    const wing = strips.filter(({ surface }) => surface === "wing");
    for (let i = 1; i < wing.length; i++) {
      const [a, b] = [wing[i - 1], wing[i]];
      if (!a || !b || a.panel !== b.panel || i === wing.length - 1) continue;
      expect(Math.hypot(a.acrossY, a.acrossZ) / Math.hypot(b.acrossY, b.acrossZ)).toBeLessThan(2);
    }
  });

  test("holds half of a glider with equal halves, and all of one whose halves differ", () => {
    const half = latticeOf(plover(), usual);
    const glider = plover();
    const whole = latticeOf({ ...glider, wing: { ...glider.wing, mirrored: false } }, usual);
    expect(half.unknowns).toBe(whole.count);
    expect(whole.unknowns).toBe(whole.count);
    expect(areaOf(whole, "wing")).toBeCloseTo(2 * areaOf(half, "wing"), 12);
    expect(areaOf(whole, "fin")).toBeCloseTo(areaOf(half, "fin"), 12);
  });

  test("turns the wing on its seat about the leading edge of its root", () => {
    const at = (seatAngle: number) => {
      const { strips } = latticeOf(plover({ seatAngle }), usual);
      const tip = strips.filter(({ surface }) => surface === "wing").at(-1)?.edge;
      return tip ?? { x: 0, y: 0, z: 0, chord: 0 };
    };
    const [flat, seated] = [at(0), at(degrees(4))];
    expect(seated.y).toBeCloseTo(flat.y, 5);
    expect(seated.z).toBeLessThan(flat.z);
    // The tip stands high, so that it also moves back.
    expect(seated.x).toBeGreaterThan(flat.x);
  });

  test("joins the fin to a tailplane it stands on, so that no air gets through between", () => {
    const middle = 0.003 + 0.0015 / 2;
    const [foot, top] = finHeights(latticeOf(plover(), usual));
    expect(foot).toBeCloseTo(middle, 12);
    expect(top).toBeCloseTo(0.054, 12);
    const stick = buildFuselageStick({ front_x: -0.08, rear_x: 0.3, width: 0.006, height: 0.006, z: 0 });
    const onStick = finHeights(latticeOf({ ...plover({ fin: { z: 0.009 } }), stick }, usual));
    expect(onStick[0]).toBeCloseTo(middle, 12);
    const apart = finHeights(latticeOf(plover({ fin: { z: 0.02 } }), usual));
    expect(apart[0]).toBeCloseTo(0.02, 12);
  });

  test("keeps all of a fin whose foot reaches below the tailplane, however little", () => {
    const middle = 0.003 + 0.0015 / 2;
    for (const below of [1e-4, 0.0004, 0.001, 0.005]) {
      const [foot] = finHeights(latticeOf(plover({ fin: { z: middle - below } }), usual));
      expect(foot).toBeCloseTo(middle - below, 12);
    }
    const [, top] = finHeights(latticeOf(plover({ fin: { z: middle + 0.0004 - 0.05 } }), usual));
    expect(top).toBeCloseTo(middle + 0.0004, 12);
  });

  test("cuts a fin where the tailplane passes through it", () => {
    const { strips } = latticeOf(plover({ fin: { z: -0.02 } }), usual);
    const fin = strips.filter(({ surface }) => surface === "fin");
    const below = fin.filter(({ edge }) => edge.z < 0.00375).reduce((sum, { acrossZ }) => sum + acrossZ, 0);
    expect(below).toBeCloseTo(0.02375, 12);
    expect(fin.reduce((sum, { acrossZ }) => sum + acrossZ, 0)).toBeCloseTo(0.05, 12);
  });
});
