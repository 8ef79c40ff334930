import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type JointBevels, jointBevels } from "../../../src/library/build/joint-bevels.ts";
import { panelPlaces } from "../../../src/library/build/panel-place.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import type { Panels } from "../../../src/library/shape/panel-columns.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { call, refuse } from "../call.ts";
import { runs, withColumns } from "../panel-arbitraries.ts";
import { ploverPanels, ploverWing } from "../plover.ts";
import { folded } from "./folded-panels.ts";
import { apart, plus } from "./rotate.ts";

const bevels = (wing: unknown, given: Record<string, unknown> = {}) =>
  call(jointBevels, { wing, ...given }) as JointBevels;
const build = (panels: Panels, left?: Panels) => buildWing(panels, left, refuse);

describe("the joints of any wing", () => {
  test("fold by the breaks, and folds add up to twice the tip's cant from tip to tip", () => {
    fc.assert(
      fc.property(folded, (random) => {
        const plain = withColumns(random, {
          washout: random.washout.map(() => 0),
          skew: random.skew?.map(() => 0) ?? [],
        });
        const wing = build(plain);
        const { joints, edges } = bevels(wing, { steepest: degrees(60) });
        const total = (list: readonly number[]) => list.reduce((sum, each) => sum + each, 0);
        const tips = (wing.right.cant.at(-1) ?? 0) + (wing.left.cant.at(-1) ?? 0);
        expect(total(joints.fold)).toBeCloseTo(tips, 9);
        expect(total(edges.bevel)).toBeCloseTo(tips, 9);
        expect(edges.panel).toHaveLength(2 * joints.joint.length);
      }),
      runs,
    );
  });

  test("are the same on both sides of a mirrored wing", () => {
    fc.assert(
      fc.property(folded, (panels) => {
        const { joints } = bevels(build(panels), { steepest: degrees(60) });
        const of = (side: string) => joints.fold.filter((_, i) => joints.joint[i]?.startsWith(side));
        for (const [i, fold] of of("right").entries()) expect(of("left")[i]).toBeCloseTo(fold, 12);
      }),
      runs,
    );
  });
});

describe("the joints of Plover", () => {
  test("carry its washout by lines cut four and five degrees askew", () => {
    const { joints } = bevels(ploverWing);
    const at = joints.joint.indexOf("right 1–2");
    // tan skew = −tan washout / sin break, exact where the inner panel is level; panel 2 is washed out itself.
    const skew = (washout: number, bend: number) => -Math.atan(Math.tan(degrees(washout)) / Math.sin(degrees(bend)));
    expect(joints.skew[at]).toBeCloseTo(skew(0.5, 7), 9);
    expect(Math.abs((joints.skew[at + 1] ?? 0) - skew(1, 11))).toBeLessThan(degrees(0.06));
    expect(joints.step.every((each) => each === 0)).toBe(true);
  });
  test("step by the washout at the trailing edge where they are cut along the flow", () => {
    const { joints } = bevels(ploverWing, { washout: "step" });
    const at = joints.joint.indexOf("right 2–3");
    expect(joints.skew[at]).toBe(0);
    expect(joints.step[at]).toBeCloseTo(0.06 * Math.sin(degrees(1)), 6);
    const [inner, outer] = panelPlaces(ploverWing).slice(1, 3);
    if (!inner || !outer) throw new Error("got no panels 2 and 3");
    const fromEdge = apart(plus([0, 0, 0], [0.06, inner.aft]), plus([0, 0, 0], [0.06, outer.aft]));
    expect(joints.step[at] ?? 0).toBeCloseTo(fromEdge, 4);
  });
  test("have no root joint where the centre is one piece", () => {
    const flat = build(withColumns(ploverPanels, { break: [0, degrees(10), degrees(11)] }));
    expect(bevels(flat).joints.joint).toEqual(["right 1–2", "right 2–3", "left 1–2", "left 2–3"]);
  });
  test("take wood from the lower edge where the outer panel goes down", () => {
    const gull = build(
      withColumns(ploverPanels, { break: [degrees(12), degrees(-8), degrees(0)], washout: [0, 0, 0] }),
    );
    const { edges, joints } = bevels(gull);
    expect(joints.fold[1]).toBeCloseTo(degrees(-8), 12);
    expect(edges.takes_from.slice(0, 4)).toEqual(["upper", "upper", "lower", "lower"]);
    expect(edges.bevel[2]).toBeCloseTo(degrees(4), 12);
  });
  test("are propped at the length that is entered, or at the end of a shorter panel", () => {
    const { edges } = bevels(ploverWing, { prop_at: 0.1 });
    expect(edges.prop_at).toEqual([0.1, 0.1, 0.1, 0.08, 0.08, 0.06, 0.1, 0.08, 0.08, 0.06]);
    expect(edges.prop_height[0]).toBeCloseTo(0.1 * Math.sin(degrees(3)), 12);
  });
});

describe("joints that cannot be made", () => {
  test("name the joint, its bevel and a remedy where the fold is too steep", () => {
    const steep = build(withColumns(ploverPanels, { break: [degrees(3), degrees(7), degrees(70)] }));
    expect(() => bevels(steep)).toThrow(/right 2–3 joint folds by 70 deg.*limit is 30 deg.*share it/);
  });
  test("name a panel that is thicker than its chord", () => {
    const thick = build(withColumns(ploverPanels, { thickness: [0.0032, 0.24, 0.002] }));
    expect(() => bevels(thick)).toThrow(/Panel right 2 is 240 mm thick on a chord of 70 mm/);
  });
  test("name the panel whose face the bevels take away", () => {
    const short = build(withColumns(ploverPanels, { length: [0.105, 0.0003, 0.06] }));
    expect(() => bevels(short)).toThrow(/Panel right 2 is 0.3 mm long.*Make it longer/);
  });
});
