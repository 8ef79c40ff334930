import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type WingBlanks, wingBlanks } from "../../../src/library/build/wing-blanks.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import type { Panels } from "../../../src/library/shape/panel-columns.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { call, refuse } from "../call.ts";
import { anyPanels, runs, withColumns } from "../panel-arbitraries.ts";
import { ploverPanels, ploverWing } from "../plover.ts";
import { folded } from "./folded-panels.ts";
import { areaOf, strokesOf } from "./strokes.ts";

const blanks = (wing: unknown, given: Record<string, unknown> = {}) =>
  call(wingBlanks, { wing, ...given }) as WingBlanks;
const build = (panels: Panels, left?: Panels) => buildWing(panels, left, refuse);
const flowwise = (panels: Panels) =>
  withColumns(panels, { washout: panels.washout.map(() => 0), skew: panels.length.map(() => 0) });

describe("the blanks of a wing", () => {
  test("have the wing's developed area together, and each outline the area that is told", () => {
    fc.assert(
      fc.property(folded, (panels) => {
        const wing = build(flowwise(panels));
        const { area, pattern } = blanks(wing, { steepest: degrees(60) });
        expect(area).toBeCloseTo(wing.developed_area, 12);
        pattern.parts.part.forEach((name, index) => {
          const [outline] = strokesOf(pattern, name, "cut");
          expect(areaOf(outline ?? [])).toBeCloseTo(pattern.parts.area[index] ?? 0, 12);
        });
      }),
      { ...runs, numRuns: 60 },
    );
  });

  test("pass area on at a joint cut askew, and keep it together where the trailing edge runs straight on", () => {
    const straight = withColumns(ploverPanels, {
      root_chord: [0.08, 0.08, 0.08],
      tip_chord: [0.08, 0.08, 0.08],
      sweep: [0, 0, 0],
    });
    const plain = blanks(build(flowwise(straight)));
    const askew = blanks(build(straight));
    const at = (of: WingBlanks, name: string) => of.panels.area[of.panels.panel.indexOf(name)] ?? 0;
    expect(at(askew, "right 1")).toBeLessThan(at(plain, "right 1"));
    expect(at(askew, "right 3")).toBeGreaterThan(at(plain, "right 3"));
    // The cut lies on the two panels at angles that differ by the second order of washout over fold.
    expect(Math.abs(askew.area / plain.area - 1)).toBeLessThan(1e-3);
  });

  test("of panels that go down are longer above, and weigh as much as the wood between both faces", () => {
    const flat = [0, 0, 0];
    const panels: Panels = {
      ...{ length: [0.1, 0.08, 0.06], root_chord: [0.06, 0.06, 0.06], tip_chord: [0.06, 0.06, 0.06] },
      ...{ sweep: flat, washout: flat, thickness: [0.003, 0.003, 0.002] },
      break: [degrees(5), degrees(6), degrees(-15)],
    };
    const { panel, upper_length, mass, bevelled_mass } = blanks(build(panels), { density: 100 }).panels;
    // Half the fold of 2·5, 6 and −15 deg on each edge, by hand: up takes from the upper face, down leaves it longer.
    const tan = (angle: number) => Math.tan(degrees(angle));
    const upper = [0.1 - 0.003 * (tan(5) + tan(3)), 0.08 - 0.003 * tan(3) + 0.003 * tan(7.5), 0.06 + 0.002 * tan(7.5)];
    panels.length.forEach((length, k) => {
      const at = panel.indexOf(`right ${k + 1}`);
      expect(upper_length[at]).toBeCloseTo(upper[k] ?? 0, 12);
      // A plank whose ends are cut askew: the mean of both faces times thickness and chord.
      const volume = (((length + (upper[k] ?? 0)) / 2) * 0.06 * (panels.thickness[k] ?? 0)) as number;
      expect(bevelled_mass?.[at]).toBeCloseTo(100 * volume, 9);
      const longest = Math.max(length, [length, length + 0.003 * tan(7.5), upper[2] ?? 0][k] ?? 0);
      expect(mass?.[at]).toBeCloseTo(100 * longest * 0.06 * (panels.thickness[k] ?? 0), 9);
    });
  });

  test("are mirror pairs: a left outline is the right one turned over", () => {
    fc.assert(
      fc.property(folded, (random) => {
        // Long enough that no two joint lines meet within a panel.
        const panels = withColumns(random, { length: random.length.map((each) => each + 0.25) });
        const { pattern } = blanks(build(panels), { steepest: degrees(60), kerf: 0.0002, margin: 0.001 });
        const corners = (name: string, flip: boolean) => {
          const [outline] = strokesOf(pattern, name, "cut");
          const width = pattern.parts.width[pattern.parts.part.indexOf(name)] ?? 0;
          const points = (outline ?? []).slice(1).map(([x, y]) => [flip ? width - x : x, y] as const);
          return points.map(([x, y]) => `${(x * 1e6).toFixed(0)} ${(y * 1e6).toFixed(0)}`).sort();
        };
        panels.length.forEach((_, index) => {
          expect(corners(`left ${index + 1}`, true)).toEqual(corners(`right ${index + 1}`, false));
        });
      }),
      { ...runs, numRuns: 60 },
    );
  });

  test("meet in pairs of equal length: both cuts of a joint are as long where the chords are", () => {
    fc.assert(
      fc.property(anyPanels, (random) => {
        const chord = 0.09;
        const panels = withColumns(random, {
          length: random.length.map((each) => each + 0.05),
          root_chord: random.length.map(() => chord),
          tip_chord: random.length.map(() => chord),
          sweep: random.length.map(() => 0),
          break: random.length.map(() => 0.2),
          washout: random.length.map((_, i) => (i === 0 ? 0 : 0.01)),
          skew: random.length.map(() => 0),
        });
        const { pattern } = blanks(build(panels));
        const cut = (name: string, from: number, to: number) => {
          const [outline] = strokesOf(pattern, name, "cut");
          const [a, b] = [outline?.[from], outline?.[to]];
          return a && b ? Math.hypot(a[0] - b[0], a[1] - b[1]) : Number.NaN;
        };
        // Of a right blank's corners the first is the tip's leading edge, the second the root's, then the root's
        // trailing edge and the tip's.
        panels.length.slice(1).forEach((_, index) => {
          const [inner, outer] = [cut(`right ${index + 1}`, 3, 0), cut(`right ${index + 2}`, 1, 2)];
          // The planes meet in one line; the trailing edges miss each other by the second order of twist and fold.
          expect(Math.abs(inner - outer)).toBeLessThan(5e-4 * chord);
        });
      }),
      { ...runs, numRuns: 60 },
    );
  });

  test("grow by half the kerf all around, and by the margin along their free edges", () => {
    const plain = blanks(ploverWing).pattern.parts;
    const wide = blanks(ploverWing, { kerf: 0.0002 }).pattern.parts;
    expect((wide.height[0] ?? 0) - (plain.height[0] ?? 0)).toBeCloseTo(0.0002, 5);
    expect(wide.area[0]).toBeCloseTo(plain.area[0] ?? 0, 12);
    const spare = blanks(ploverWing, { margin: 0.002 }).pattern.parts;
    expect((spare.height[2] ?? 0) - (plain.height[2] ?? 0)).toBeGreaterThan(0.0038);
  });

  test("of a continuous centre are one piece, and stay so however the wing is bent farther out", () => {
    const flat = build(withColumns(ploverPanels, { break: [0, degrees(10), degrees(11)] }));
    const { panels, pattern } = blanks(flat);
    expect(panels.panel).toEqual(["centre", "right 2", "right 3", "left 2", "left 3"]);
    expect(panels.hand[0]).toBe("both");
    expect(panels.length[0]).toBeCloseTo(0.21, 12);
    const [outline] = strokesOf(pattern, "centre", "cut");
    expect(areaOf(outline ?? [])).toBeCloseTo(panels.area[0] ?? 0, 12);
    expect(pattern.parts.width[0]).toBeGreaterThan(0.2);
  });

  test("are longer than the lower face where a joint goes down", () => {
    const gull = build(withColumns(ploverPanels, { break: [degrees(12), degrees(-10), 0], washout: [0, 0, 0] }));
    const { pattern, panels } = blanks(gull);
    expect((pattern.parts.width[0] ?? 0) - (panels.length[0] ?? 0)).toBeCloseTo(0.0032 * Math.tan(degrees(5)), 9);
  });

  test("weigh by their wood where it is known, less the wedges of their bevels", () => {
    const { panels, mass } = blanks(ploverWing, { density: 110 });
    expect(mass).toBeCloseTo(
      (panels.mass ?? []).reduce((sum, each) => sum + each, 0),
      12,
    );
    const wedge = 0.5 * 0.0032 ** 2 * (Math.tan(degrees(3)) * 0.074 + Math.tan(degrees(3.51)) * 0.07);
    expect((panels.mass?.[0] ?? 0) - (panels.bevelled_mass?.[0] ?? 0)).toBeCloseTo(110 * wedge, 6);
    expect(blanks(ploverWing).mass).toBeUndefined();
  });

  test("turn with the leading edge where the grain is to follow it", () => {
    const { pattern } = blanks(ploverWing, { grain: "leading edge" });
    const [outline] = strokesOf(pattern, "right 3", "cut");
    const [tip, root] = [outline?.[0], outline?.[1]];
    expect(tip?.[1]).toBeCloseTo(root?.[1] ?? 0, 9);
  });

  test("are refused where the joint lines of a short panel meet within it", () => {
    const short = build(
      withColumns(ploverPanels, {
        length: [0.105, 0.008, 0.06],
        break: [degrees(3), degrees(12), degrees(12)],
        skew: [0, degrees(-8), degrees(8)],
        washout: [0, 0, 0],
      }),
    );
    const mirrored = build(
      withColumns(ploverPanels, {
        length: [0.105, 0.008, 0.06],
        break: [degrees(3), degrees(12), degrees(12)],
        skew: [0, degrees(8), degrees(-8)],
        washout: [0, 0, 0],
      }),
    );
    expect(() => blanks(mirrored)).toThrow(/joint lines of panel right 2 .*Make it longer/);
    expect(blanks(short).panels.panel).toHaveLength(6);
  });
});
