import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import type { Panels } from "../../../src/library/shape/panel-columns.ts";
import { buildWing, wing } from "../../../src/library/shape/wing.ts";
import { type Wing, wingRecord } from "../../../src/library/shape/wing-record.ts";
import { call, faultOf, Refusal, refuse } from "../call.ts";
import { expectClose } from "../compare.ts";
import { anyPanels, laidFlat, runs, scaled, split, withColumns } from "../panel-arbitraries.ts";

const build = (panels: Panels, left?: Panels) => buildWing(panels, left, refuse);

const one: Panels = {
  length: [0.1],
  root_chord: [0.08],
  tip_chord: [0.07],
  sweep: [0.01],
  break: [degrees(2)],
  washout: [degrees(0.5)],
  thickness: [0.003],
};
const three: Panels = {
  length: [0.12, 0.08, 0.05],
  root_chord: [0.08, 0.07, 0.06],
  tip_chord: [0.07, 0.06, 0.03],
  sweep: [0.002, 0.005, 0.015],
  break: [degrees(5), degrees(10), degrees(15)],
  washout: [0, degrees(0.5), degrees(1)],
  thickness: [0.0032, 0.0024, 0.002],
};

/** Lengths and areas, which a scale of the whole wing scales along; everything else it leaves alone. */
const lengths = ["span", "mean_chord", "mac", "mac_x", "mac_y", "developed_span", "tip_height"] as const;
const areas = ["area", "developed_area"] as const;
const sizes = [...lengths, ...areas, "aspect_ratio"] as const;

describe("any wing", () => {
  test("has the fields that its spec promises, all finite", () => {
    fc.assert(
      fc.property(anyPanels, anyPanels, (right, left) => {
        expect(faultOf(wingRecord, build(right, left), "wing")).toBe(null);
      }),
      runs,
    );
  });

  test("is ten times as large, with a hundred times the area, where every length is; its angles stay", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const small = build(panels);
        const large = build(scaled(panels, 10));
        for (const field of lengths) expect(large[field] / 10).toBeCloseTo(small[field], 12);
        for (const field of areas) expect(large[field] / 100).toBeCloseTo(small[field], 12);
        expect(large.aspect_ratio).toBeCloseTo(small.aspect_ratio, 9);
        expect(large.cants).toEqual(small.cants);
        expect(large.joint_angles).toEqual(small.joint_angles);
        expect(large.right.twist).toEqual(small.right.twist);
      }),
      runs,
    );
  });

  test("is the same wing where one panel is cut in two and glued straight", () => {
    fc.assert(
      fc.property(anyPanels, fc.nat(), fc.double({ min: 0.1, max: 0.9, noNaN: true }), (panels, pick, share) => {
        const at = pick % panels.length.length;
        const whole = build(panels);
        const cut = build(split(panels, at, share));
        for (const field of sizes) expectClose(cut[field], whole[field], 1e-11, field);
        expect(cut.right.cant[at + 1]).toBe(cut.right.cant[at]);
        expect(cut.joint_angles[at + 1]).toBe(0);
      }),
      runs,
    );
  });

  test("has the area of its panels, as cut and in the plan view", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const { developed_area, area, cants } = build(panels);
        const each = panels.length.map(
          (length, i) => (length * ((panels.root_chord[i] ?? 0) + (panels.tip_chord[i] ?? 0))) / 2,
        );
        expectClose(developed_area, 2 * each.reduce((sum, one) => sum + one, 0), 1e-12);
        expectClose(area, 2 * each.reduce((sum, one, i) => sum + one * Math.cos(cants[i] ?? 0), 0), 1e-12);
      }),
      runs,
    );
  });

  test("is as long and as large in the plan view as developed where it is laid flat", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const flat = build(laidFlat(panels));
        expectClose(flat.span, flat.developed_span, 1e-12);
        expectClose(flat.area, flat.developed_area, 1e-12);
        expect(flat.tip_height).toBe(0);
        expectClose(flat.developed_area, build(panels).developed_area, 1e-12);
      }),
      runs,
    );
  });

  test("keeps its panels' true lengths between its stations", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const { y, z, distance } = build(panels).stations;
        panels.length.forEach((length, i) => {
          const dy = (y[i + 1] ?? 0) - (y[i] ?? 0);
          const dz = (z[i + 1] ?? 0) - (z[i] ?? 0);
          expectClose(Math.hypot(dy, dz), length, 1e-11);
          expectClose((distance[i + 1] ?? 0) - (distance[i] ?? 0), length, 1e-11);
        });
      }),
      runs,
    );
  });

  test("has a mean aerodynamic chord between its mean chord and its largest chord, within the half span", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const { mac, mean_chord, mac_y, span } = build(panels);
        expect(mac).toBeGreaterThanOrEqual(mean_chord - 1e-12);
        expect(mac).toBeLessThanOrEqual(Math.max(...panels.root_chord, ...panels.tip_chord) + 1e-12);
        expect(mac_y).toBeGreaterThan(0);
        expect(mac_y).toBeLessThan(span / 2);
      }),
      runs,
    );
  });

  test("changes no length, area or position by washout, camber, density or skew", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const plain = { ...panels, washout: panels.washout.map(() => 0) };
        const { skew: _skew, camber: _camber, density: _density, ...bare } = plain;
        const a = build(panels);
        const b = build(bare);
        for (const field of sizes) expect(a[field]).toBe(b[field]);
        expect(a.stations).toEqual(b.stations);
      }),
      runs,
    );
  });
});

describe("halves", () => {
  test("that are given alike make the wing that mirroring makes", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        expect(build(panels, panels)).toEqual(build(panels));
        expect(build(panels).mirrored).toBe(true);
      }),
      runs,
    );
  });

  test("that change places leave all sizes as they are and swap the records", () => {
    fc.assert(
      fc.property(anyPanels, anyPanels, (one, other) => {
        const a = build(one, other);
        const b = build(other, one);
        for (const field of sizes) {
          if (field !== "tip_height") expectClose(a[field], b[field], 1e-11, field);
        }
        expect(a.joint_angles[0]).toBe(b.joint_angles[0]);
        expect(a.left.stations.z).toEqual(b.right.stations.z);
        expect(a.left.stations.y.map((y) => 0 - y)).toEqual(b.right.stations.y);
        expect(a.left.twist).toEqual(b.right.twist);
      }),
      runs,
    );
  });

  test("that differ have the mean of what each would have mirrored, area for area", () => {
    fc.assert(
      fc.property(anyPanels, anyPanels, (one, other) => {
        const [a, b, both] = [build(one), build(other), build(one, other)];
        expectClose(both.area, (a.area + b.area) / 2, 1e-12);
        expectClose(both.span, (a.span + b.span) / 2, 1e-12);
        const mean = (field: "mac" | "mac_x" | "mac_y") => (a[field] * a.area + b[field] * b.area) / (a.area + b.area);
        for (const field of ["mac", "mac_x", "mac_y"] as const) expect(both[field]).toBeCloseTo(mean(field), 12);
      }),
      runs,
    );
  });

  test("mirror to negative y on the left, with all else as on the right", () => {
    const { right, left } = build(three);
    expect(left.stations.y).toEqual(right.stations.y.map((y) => 0 - y));
    expect({ ...left.stations, y: [] }).toEqual({ ...right.stations, y: [] });
    expect(left.cant).toEqual(right.cant);
  });

  test("may have other numbers of panels", () => {
    const other = build(three, one);
    expect(other.panels).toBe(3);
    expect(other.left.length).toEqual([0.1]);
    expect(other.mirrored).toBe(false);
    expect(other.joint_angles[0]).toBeCloseTo(degrees(5) + degrees(2), 12);
  });
});

describe("the joints of a wing", () => {
  test("fold by twice the first break at the root and by each break farther out", () => {
    const { joint_angles, cants } = build(three);
    expectClose(joint_angles, [degrees(10), degrees(10), degrees(15)], 1e-12);
    expectClose(cants, [degrees(5), degrees(15), degrees(30)], 1e-12);
  });

  // The table of oblique joints: front-view break, skew, fold, nose-up angle; degrees, derived.
  test.each([
    [20, -5, 20.07, -1.824],
    [20, 5, 20.07, 1.824],
    [10, -10, 10.151, -1.781],
    [15, 0, 15, 0],
  ])(
    "a break of %f deg with a skew of %f deg folds by %f deg and turns the outer panel up by %f deg",
    (bend, skew, fold, up) => {
      const oblique = build(
        withColumns(three, { break: [0, degrees(bend), 0], skew: [0, degrees(skew), 0], washout: [0, 0, degrees(1)] }),
      );
      expect((oblique.joint_angles[1] ?? 0) / degrees(1)).toBeCloseTo(fold, 2);
      expect((oblique.right.twist[1] ?? 0) / degrees(1)).toBeCloseTo(-up, 2);
      expect((oblique.right.twist[2] ?? 0) / degrees(1)).toBeCloseTo(1 - up, 2);
    },
  );

  test("have the fold that the normals of two panels folded about the skewed line have", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: -1.2, max: 1.2, noNaN: true }),
        (bend, skew) => {
          // A panel through the line at skew to the flow, of slope tan G seen from the front: z = tan G · (y − x tan λ).
          const normal = [Math.tan(bend) * Math.tan(skew), -Math.tan(bend), 1] as const;
          const angle = Math.acos(1 / Math.hypot(...normal));
          const { joint_angles } = build(withColumns(three, { break: [0, bend, 0], skew: [0, skew, 0] }));
          expect(Math.abs(joint_angles[1] ?? 0)).toBeCloseTo(angle, 6);
        },
      ),
      runs,
    );
  });

  test("may step in chord; the station then tells the outer panel's", () => {
    const stepped = build(withColumns(three, { root_chord: [0.08, 0.09, 0.06] }));
    expect(stepped.stations.chord).toEqual([0.08, 0.09, 0.06, 0.03]);
    expect(stepped.right.tip_chord).toEqual([0.07, 0.06, 0.03]);
  });
});

describe("a wing is refused", () => {
  const refused = (panels: Panels, left?: Panels): Refusal => {
    try {
      call(wing, left ? { panels, left } : { panels });
    } catch (error) {
      if (error instanceof Refusal) return error;
      throw error;
    }
    throw new Error("got a wing, expected a refusal");
  };
  const none = Object.fromEntries(Object.keys(one).map((column) => [column, []])) as unknown as Panels;

  test("without any panel", () => {
    expect(refused(none).message).toMatch(/at least one panel/);
    const left = refused(three, none);
    expect(left.parameter).toBe("left");
  });
  test("with a panel folded past 90 deg, telling which", () => {
    const folded = withColumns(three, { break: [degrees(40), degrees(30), degrees(25)] });
    expect(refused(folded).message).toMatch(/Panel 3 would stand at 95 deg/);
    expect(refused(withColumns(three, { break: [-0.9, -0.9, 0] })).message).toMatch(/Panel 2/);
    expect(refused(withColumns(three, { break: [degrees(45), degrees(45), 0] })).message).toMatch(/Panel 2/);
  });
  test("but not with one that stands at 89 deg", () => {
    const steep = call(wing, { panels: withColumns(three, { break: [degrees(40), degrees(30), degrees(19)] }) });
    expect((steep as Wing).cants[2]).toBeCloseTo(degrees(89), 12);
  });
  test("with a length or chord of nothing or less", () => {
    for (const column of ["length", "root_chord", "tip_chord", "thickness"] as const) {
      for (const value of [0, -0.01]) {
        expect(refused(withColumns(three, { [column]: [0.05, value, 0.05] })).message).toMatch(column);
      }
    }
  });
  test("with columns of different length, telling which", () => {
    expect(refused(withColumns(three, { sweep: [0, 0] })).message).toMatch(/sweep has 2 entries, length has 3/);
    expect(refused(three, withColumns(one, { camber: [0, 0] })).parameter).toBe("left");
  });
  test("with a skew of the root joint", () => {
    expect(refused(withColumns(three, { skew: [0.1, 0, 0] })).message).toMatch(/skew of panel 1/);
  });
});

describe("the line that tells a wing", () => {
  const line = (right: Panels, left?: Panels) => (wingRecord.text as (value: unknown) => string)(build(right, left));
  test("says span and panels", () => {
    expect(line(three)).toBe("480 mm span, 3 panels a side");
    expect(line(one)).toBe("200 mm span, 1 panel a side");
    expect(line(three, one)).toBe("340 mm span, 3 panels right and 1 left");
  });
});
