import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type WingJig, wingJig } from "../../../src/library/build/wing-jig.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import type { Vector } from "../../../src/library/numerics/vector3.ts";
import type { Panels } from "../../../src/library/shape/panel-columns.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { call, refuse } from "../call.ts";
import { anyPanels, runs, withColumns } from "../panel-arbitraries.ts";
import { ploverPanels, ploverWing } from "../plover.ts";
import { plus, rotate } from "./rotate.ts";
import { strokesOf } from "./strokes.ts";

const jig = (wing: unknown, given: Record<string, unknown> = {}) => call(wingJig, { wing, ...given }) as WingJig;
const build = (panels: Panels, left?: Panels) => buildWing(panels, left, refuse);

/** Wings broad and long enough for a jig. */
const jigged = anyPanels.map((panels) =>
  withColumns(panels, {
    length: panels.length.map((each) => each + 0.08),
    root_chord: panels.root_chord.map((each) => each + 0.05),
    tip_chord: panels.tip_chord.map((each) => each + 0.05),
    sweep: panels.sweep.map(() => 0),
    break: panels.break.map((each) => 0.1 + Math.abs(each) / 3),
    skew: panels.skew?.map((each) => each / 4) ?? [],
  }),
);

describe("the rails of a jig", () => {
  test("are the front view, both of them, where there is no washout", () => {
    fc.assert(
      fc.property(jigged, (random) => {
        const panels = withColumns(random, {
          washout: random.washout.map(() => 0),
          skew: random.skew?.map(() => 0) ?? [],
        });
        const wing = build(panels);
        const { heights } = jig(wing, { steepest: degrees(60), foot: 0.001 });
        const lift = 0.02 - Math.min(...wing.right.stations.z);
        const right = heights.y.flatMap((y, i) => (y >= 0 ? [[y, heights.front[i], heights.rear[i]]] : []));
        expect(right).toHaveLength(wing.right.stations.y.length);
        right.forEach(([y, front, rear], i) => {
          expect(y).toBeCloseTo(wing.right.stations.y[i] ?? 0, 9);
          expect(front).toBeCloseTo((wing.right.stations.z[i] ?? 0) + lift, 9);
          expect(rear).toBeCloseTo((wing.right.stations.z[i] ?? 0) + lift, 9);
        });
      }),
      runs,
    );
  });

  test("touch the lower faces of real panels, turned by their washout and cant, all along", () => {
    const { heights, front_x, rear_x } = jig(ploverWing);
    const place = (name: string) => heights.place.indexOf(name);
    // Panels turned in space by the tests' own rotations: first about their span, then about the flow.
    const washouts = [0, degrees(0.5), degrees(1.5)];
    const lift = heights.front[place("root")] ?? 0;
    const ends = ["root", "right 1–2", "right 2–3", "right tip"];
    washouts.forEach((washout, k) => {
      const cant = ploverWing.cants[k] ?? 0;
      const { x, y, z } = ploverWing.right.stations;
      const corner: Vector = [x[k] ?? 0, y[k] ?? 0, z[k] ?? 0];
      const aft = rotate(rotate([1, 0, 0], [0, 1, 0], -washout), [1, 0, 0], cant);
      const out = rotate([0, 1, 0], [1, 0, 0], cant);
      const normal = rotate(rotate([0, 0, 1], [0, 1, 0], -washout), [1, 0, 0], cant);
      for (const [at, rail] of [
        [front_x, heights.front],
        [rear_x, heights.rear],
      ] as const) {
        const on = plus(corner, [(at - corner[0]) / aft[0], aft], [0.03, out]);
        // The rail between the ends of this panel, at the place of that point. Its y at the rear moves with the skew.
        const [a, b] = [place(ends[k] ?? ""), place(ends[k + 1] ?? "")];
        const fromPlane = (zAt: number, yAt: number) =>
          normal[1] * (yAt - corner[1]) + normal[2] * (zAt - corner[2]) + normal[0] * (at - corner[0]);
        expect(Math.abs(fromPlane(on[2], on[1]))).toBeLessThan(1e-12);
        // Along the panel the rail rises as the panel does, and its ends lie on the panel's plane.
        const yA = corner[1] + ((rail[a] ?? 0) - lift - on[2]) / Math.tan(cant) + (on[1] - corner[1]);
        expect(Math.abs(fromPlane((rail[a] ?? 0) - lift, yA))).toBeLessThan(1e-9);
        expect(rail[b] ?? 0).toBeGreaterThan((rail[a] ?? 0) + 0.004);
      }
    });
  });

  test("stand higher behind by the washout", () => {
    const { heights, front_x, rear_x } = jig(ploverWing);
    const tip = heights.place.indexOf("right tip");
    // Along the tip's chord the rear edge rises by the sine of the washout, upright by the cosine of the cant.
    const rise = (rear_x - front_x) * Math.tan(degrees(1.5)) * Math.cos(degrees(21));
    expect(heights.rise[tip]).toBeCloseTo(rise, 9);
    expect(heights.rise[heights.place.indexOf("root")]).toBeCloseTo(0, 9);
  });

  test("are mirror images of themselves where the wing is", () => {
    fc.assert(
      fc.property(jigged, (panels) => {
        const { heights } = jig(build(panels), { steepest: degrees(60), foot: 0.001 });
        heights.front.forEach((z, i) => {
          expect(heights.front.at(-1 - i)).toBeCloseTo(z, 9);
          expect(heights.y.at(-1 - i)).toBeCloseTo(-(heights.y[i] ?? 0), 9);
        });
      }),
      { ...runs, numRuns: 60 },
    );
  });

  test("keep clear of each joint", () => {
    const { pattern, heights } = jig(ploverWing, { relief: 0.02, relief_depth: 0.005 });
    const [outline] = strokesOf(pattern, "front rail", "cut");
    const left = Math.min(...(heights.y ?? []));
    for (const [i, name] of heights.place.entries()) {
      if (/tip/.test(name)) continue;
      const near = (outline ?? []).filter(([x, y]) => Math.abs(x + left - (heights.y[i] ?? 0)) < 0.0099 && y > 0.012);
      // Nothing of the rail's upper edge lies within the relief.
      expect(near).toEqual([]);
    }
  });
});

describe("the parts of a jig", () => {
  test("are two rails, gussets and a base, whose slots fit each other", () => {
    const { pattern } = jig(ploverWing, { thickness: 0.004, material: "sheet wood" });
    expect(pattern.parts.part).toEqual([
      "front rail",
      "rear rail",
      "gusset centre",
      "gusset right 1",
      "gusset right 2",
      "gusset right 3",
      "gusset left 1",
      "gusset left 2",
      "gusset left 3",
      "base",
    ]);
    const [gusset] = strokesOf(pattern, "gusset right 2", "cut");
    const xs = [...new Set((gusset ?? []).map(([x]) => Math.round(x * 1e6) / 1e6))].sort((a, b) => a - b);
    expect((xs[2] ?? 0) - (xs[1] ?? 0)).toBeCloseTo(0.0041, 9);
  });
});

describe("a jig that cannot be made", () => {
  test("names the place of a panel that is too short for its foot", () => {
    const short = build(withColumns(ploverPanels, { length: [0.105, 0.02, 0.06] }));
    expect(() => jig(short)).toThrow(/Between left 2–3 and left 1–2 the panel rests on .*mm.*foot of 10 mm/);
  });
  test("says that no straight rail passes under a wing that is swept too far", () => {
    const swept = build(withColumns(ploverPanels, { sweep: [0, 40, 40].map((mm) => mm / 1000) }));
    expect(() => jig(swept)).toThrow(/do not fit under all panels.*prop_heights/);
  });
  test("names the rail that is put beside the wing", () => {
    expect(() => jig(ploverWing, { rear_x: 0.07 })).toThrow(/rail at 70 mm leaves a panel/);
  });
  test("names both rails where they are given in the wrong order or too near", () => {
    expect(() => jig(ploverWing, { front_x: 0.04, rear_x: 0.02 })).toThrow(
      /front rail at 40 mm and the rear one at 20 mm.*between 16 mm and 56 mm/,
    );
  });
  test("asks for thinner sheet where its slots would run into each other", () => {
    expect(() => jig(ploverWing, { thickness: 0.02, front_x: 0.025, rear_x: 0.036 })).toThrow(
      /rails stand 11 mm apart.*20 mm. Take thinner sheet/,
    );
    const short = build(withColumns(ploverPanels, { length: [0.03, 0.08, 0.06] }));
    expect(() => jig(short, { thickness: 0.02, relief: 0, foot: 0.001 })).toThrow(
      /^Between .* and gusset .*thinner sheet/,
    );
    const tip = build(withColumns(ploverPanels, { length: [0.105, 0.08, 0.012] }));
    expect(() => jig(tip, { thickness: 0.02, relief: 0, foot: 0.001 })).toThrow(/tip.*thinner sheet/);
  });
  test("asks for a higher base where slot and relief leave too little", () => {
    expect(() => jig(ploverWing, { base_height: 0.012 })).toThrow(/gusset centre.*Raise base_height/);
  });
  test("is refused for material of no thickness", () => {
    expect(() => jig(ploverWing, { thickness: 0 })).toThrow(/thickness/);
  });
});
