import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { panelPlaces } from "../../../src/library/build/panel-place.ts";
import { type WingAsBuilt, wingAsBuilt } from "../../../src/library/build/wing-as-built.ts";
import { sampleGlider } from "../../../src/library/glide/sample-gliders.ts";
import { rollingTendency } from "../../../src/library/motion/rolling-tendency.ts";
import { numberText } from "../../../src/library/number-text.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import type { Panels } from "../../../src/library/shape/panel-columns.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import type { Wing } from "../../../src/library/shape/wing-record.ts";
import { call, refuse } from "../call.ts";
import { anyPanels, runs, withColumns } from "../panel-arbitraries.ts";
import { ploverPanels, ploverWing } from "../plover.ts";

const build = (panels: Panels, left?: Panels) => buildWing(panels, left, refuse);
const check = (wing: unknown, measured: unknown, given: Record<string, unknown> = {}) =>
  call(wingAsBuilt, { wing, measured, ...given }) as WingAsBuilt;

/** What a ruler would find of a wing: heights of both edges at each panel's outer end, from its panels in space. */
function heightsOf(wing: Wing) {
  const of = (side: "right" | "left") => {
    // Each panel hangs on the leading edge of the one before: along its span, and aft by its sweep.
    let front = 0;
    return panelPlaces(wing)
      .filter((panel) => panel.side === side)
      .map(({ length, out, aft, tip_chord, sweep }) => {
        front += length * out[2] + sweep * aft[2];
        return { front, rear: front + tip_chord * aft[2] };
      });
  };
  return {
    right_height: of("right").map(({ front }) => front),
    left_height: of("left").map(({ front }) => front),
    right_rear: of("right").map(({ rear }) => rear),
    left_rear: of("left").map(({ rear }) => rear),
  };
}

const plain = anyPanels.map((panels) => {
  const { skew: _skew, ...rest } = withColumns(panels, { length: panels.length.map((each) => each + 0.03) });
  return rest as Panels;
});

describe("a wing as it was built", () => {
  test("has the angles that its measured heights came from, whatever wing it is", () => {
    fc.assert(
      fc.property(plain, (panels) => {
        const wing = build(panels);
        const { panels: found, equivalent_dihedral, planned_dihedral, roll_rate } = check(wing, heightsOf(wing));
        found.right.forEach((cant, k) => {
          expect(cant).toBeCloseTo(wing.cants[k] ?? 0, 9);
        });
        found.left_washout.forEach((twist, k) => {
          expect(twist).toBeCloseTo(wing.left.twist[k] ?? 0, 9);
        });
        expect(equivalent_dihedral).toBeCloseTo(planned_dihedral, 9);
        expect(roll_rate).toBeCloseTo(0, 9);
      }),
      { ...runs, numRuns: 60 },
    );
  });

  test("finds the panel that is off, and incidence to matter far more than dihedral", () => {
    const crooked = build(
      ploverPanels,
      withColumns(ploverPanels, {
        break: [degrees(4), degrees(6), degrees(11)],
        washout: [0, degrees(0.5), degrees(2)],
      }),
    );
    const found = check(ploverWing, heightsOf(crooked), { height_error: 0.0002 });
    expect(found.worst).toBe("incidence of panel 3, right against left");
    expect(found.panels.washout_apart[2]).toBeCloseTo(degrees(-1), 9);
    expect(found.panels.apart[0]).toBeCloseTo(degrees(-1), 9);
    const rate = (name: string) => Math.abs(found.errors.roll_rate[found.errors.error.indexOf(name)] ?? 0);
    const each = (name: string) => rate(`${name} of panel 1, right against left`);
    expect(rate(found.worst)).toBeGreaterThan(20 * each("cant"));
    // The left is washed out too far, so the wing rolls to the left; it is the left that is off its plan.
    expect(found.roll_rate).toBeLessThan(0);
    expect(found.remedy).toMatch(/^turn the trailing edge of the left panel 3, .* down by .* which is 1 deg/);
    // Flap effectiveness at a tenth of the chord, 0.396, stands in Glauert's theory of 1927: 1 deg of twist is 2.53 deg of tab.
    expect(found.remedy).toMatch(/tab, along the whole panel, by about 2\.53 deg/);
  });

  test("has the planned angles where no rear heights are measured, also where panels are swept and twisted", () => {
    fc.assert(
      fc.property(plain, (panels) => {
        const wing = build(panels);
        const { right_height, left_height } = heightsOf(wing);
        const { panels: found } = check(wing, { right_height, left_height });
        found.left.forEach((cant, k) => {
          expect(cant).toBeCloseTo(wing.left.cant[k] ?? 0, 9);
        });
      }),
      { ...runs, numRuns: 60 },
    );
  });

  test("does not blame what a ruler cannot tell, and says to read finer", () => {
    const crooked = build(ploverPanels, withColumns(ploverPanels, { washout: [0, degrees(0.5), degrees(2)] }));
    const { worst, remedy } = check(ploverWing, heightsOf(crooked), { height_error: 0.0005 });
    expect(worst).toBe("none");
    expect(remedy).toMatch(/read the heights of both edges finer/);
  });

  test("rolls to the side that the flow solution rolls it to, and by about as much", () => {
    const wing = sampleGlider.wing;
    const heights = heightsOf(wing);
    const chord = wing.right.tip_chord[1] ?? 0;
    const measured = { ...heights, right_rear: heights.right_rear.map((z, k) => (k === 1 ? z + chord * 0.01 : z)) };
    const found = check(wing, measured, { speed: 4.26 });
    const flown = call(rollingTendency, { glider: { ...sampleGlider, wing: found.wing } }) as { roll_rate: number };
    expect(found.roll_rate).toBeGreaterThan(0);
    expect(flown.roll_rate / found.roll_rate).toBeGreaterThan(0.7);
    expect(flown.roll_rate / found.roll_rate).toBeLessThan(1.4);
  });

  test("has doubts as wide as heights read wrong by chance would spread the answer", () => {
    const heights = heightsOf(ploverWing);
    const { dihedral_doubt, panels } = check(ploverWing, heights, { height_error: 0.0004, length_error: 0.0006 });
    const normal = gauss(7);
    const answers = Array.from({ length: 3000 }, () => {
      const off = (list: readonly number[], by: number) => list.map((value) => value + by * normal());
      const [right, left] = [off(heights.right_height, 0.0004), off(heights.left_height, 0.0004)];
      return check(ploverWing, {
        right_height: right,
        left_height: left,
        right_length: off(ploverPanels.length, 0.0006),
        left_length: off(ploverPanels.length, 0.0006),
      });
    });
    const spread = (values: readonly number[]) => {
      const mean = values.reduce((sum, each) => sum + each, 0) / values.length;
      return Math.sqrt(values.reduce((sum, each) => sum + (each - mean) ** 2, 0) / values.length);
    };
    expect(spread(answers.map(({ equivalent_dihedral }) => equivalent_dihedral)) / dihedral_doubt).toBeCloseTo(1, 1);
    // The root's height is taken as sure in the sampling of the first panel, so the second one is looked at.
    expect(spread(answers.map((answer) => answer.panels.right[1] ?? 0)) / (panels.doubt[1] ?? 1)).toBeCloseTo(1, 1);
  });

  test("tells what to do about a joint: leave it, sand more, sand less", () => {
    const off = build(withColumns(ploverPanels, { break: [degrees(3), degrees(4), degrees(14)] }));
    const { joints } = check(ploverWing, heightsOf(off));
    const remedy = (name: string) => joints.remedy[joints.joint.indexOf(name)] ?? "";
    expect(remedy("root")).toBe("leave it");
    expect(remedy("right 1–2")).toMatch(/folds too little.*1.5 deg more off each edge/);
    expect(remedy("left 2–3")).toMatch(/folds too far.*1.5 deg less/);
  });

  test("takes measured thicknesses into the wing that flies, and resands a joint by the thinner of its two", () => {
    const off = build(withColumns(ploverPanels, { break: [degrees(3), degrees(4), degrees(11)] }));
    const thin = { right_thickness: [0.0031, 0.0018, 0.0019], left_thickness: [0.0032, 0.0023, 0.0019] };
    const { wing, joints, panels } = check(ploverWing, { ...heightsOf(off), ...thin });
    expect(wing.right.thickness).toEqual(thin.right_thickness);
    expect(wing.left.thickness).toEqual(thin.left_thickness);
    expect(panels.right_thickness).toEqual(thin.right_thickness);
    expect(panels.planned_thickness).toEqual(ploverPanels.thickness);
    expect(panels.thickness_doubt).toEqual([0.00005, 0.00005, 0.00005]);
    // Half of 3 deg on 1.8 mm and on 2.3 mm of wood.
    const wood = (name: string) => joints.remedy[joints.joint.indexOf(name)];
    expect(wood("right 1–2")).toContain(`${numberText(0.0018 * Math.tan(degrees(1.5)), "mm")} at the upper edge`);
    expect(wood("left 1–2")).toContain(`${numberText(0.0023 * Math.tan(degrees(1.5)), "mm")} at the upper edge`);
    expect(check(ploverWing, heightsOf(off)).wing.right.thickness).toEqual(ploverPanels.thickness);
  });

  test("says what unlike panels weigh on the roll, and the tip weight that cures it", () => {
    const measured = {
      ...heightsOf(ploverWing),
      right_mass: [0.0021, 0.0011, 0.0006],
      left_mass: [0.0021, 0.0011, 0.0005],
    };
    const { errors } = check(ploverWing, measured, { mass: 0.018 });
    const at = errors.error.indexOf("mass of the panels, right against left");
    expect(errors.roll_rate[at] ?? 0).toBeGreaterThan(0);
    const { y } = ploverWing.right.stations;
    const arm = ((y[2] ?? 0) + (y[3] ?? 0)) / 2;
    expect(errors.remedy[at]).toBe(`put ${numberText((0.0001 * arm) / (y[3] ?? 0), "g")} on the left tip`);
    // A heavier panel inboard on the other side evens it out: nothing is to be done.
    const inboard = ((y[0] ?? 0) + (y[1] ?? 0)) / 2;
    const evened = { ...measured, left_mass: [0.0021 + (0.0001 * arm) / inboard, 0.0011, 0.0005] };
    const even = check(ploverWing, evened, { mass: 0.018 }).errors;
    expect(even.remedy[even.error.indexOf("mass of the panels, right against left")]).toBe("leave it");
  });
});

describe("measurements that cannot be", () => {
  const heights = heightsOf(ploverWing);
  test("name the panel that has none", () => {
    expect(() => check(ploverWing, { ...heights, left_height: heights.left_height.slice(0, 2) })).toThrow(
      /column left_height has 2 of 3 panels. Measure panel 3 too/,
    );
  });
  test("name a column with a row too many, and one that has no counterpart on the other side", () => {
    const longer = { ...heights, right_height: [...heights.right_height, 0.05] };
    expect(() => check(ploverWing, longer)).toThrow(/right_height has 4 rows, and the wing has 3 panels a side/);
    const { left_rear: _left, ...oneRear } = heights;
    expect(() => check(ploverWing, oneRear)).toThrow(/a column right_rear and no left_rear.*Measure both/);
    expect(() => check(ploverWing, { ...heights, left_mass: [0.002, 0.001, 0.0005] })).toThrow(
      /a column left_mass and no right_mass/,
    );
  });
  test("name the panel that would stand upright or be twisted off", () => {
    expect(() => check(ploverWing, { ...heights, right_height: [0.2, 0.21, 0.22] })).toThrow(
      /panel right 1 lies .* above/,
    );
    expect(() => check(ploverWing, { ...heights, left_rear: [0.2, 0.2, 0.2] })).toThrow(
      /trailing edge of panel left 1/,
    );
  });
});

/** Numbers of a normal law by a seed (mulberry32, Box and Muller). */
function gauss(seed: number): () => number {
  let state = seed;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(uniform() + 1e-12)) * Math.cos(2 * Math.PI * uniform());
}
