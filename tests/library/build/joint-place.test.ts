import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { jointPlaces } from "../../../src/library/build/joint-place.ts";
import type { Vector } from "../../../src/library/numerics/vector3.ts";
import type { Panels } from "../../../src/library/shape/panel-columns.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { refuse } from "../call.ts";
import { runs, withColumns } from "../panel-arbitraries.ts";
import { folded } from "./folded-panels.ts";
import { apart, plus, rotate } from "./rotate.ts";

const build = (panels: Panels) => buildWing(panels, undefined, refuse);

describe("the joints of any wing", () => {
  test("close: glued on their line at half the fold each, the bevelled faces are one", () => {
    fc.assert(
      fc.property(folded, (random) => {
        const panels = withColumns(random, { thickness: random.thickness.map(() => 0.003) });
        const wing = build(panels);
        for (const { inner, outer, line, fold, innerSkew, outerSkew, step } of jointPlaces(wing, "cut")) {
          if (step > 0) continue;
          // The cut edge as it is drawn on each flat panel, then carried to where that panel stands.
          const cutOn = (of: typeof inner, skew: number): Vector =>
            plus([0, 0, 0], [Math.cos(skew), of.aft], [Math.sin(skew), of.out]);
          expect(apart(cutOn(inner, innerSkew), line)).toBeLessThan(1e-9);
          expect(apart(cutOn(outer, outerSkew), line)).toBeLessThan(1e-9);
          // Upper corners: up by the thickness, back from the edge by what the bevel takes.
          const off = 0.003 * Math.tan(fold / 2);
          const away = (of: typeof inner, skew: number): Vector =>
            plus([0, 0, 0], [Math.cos(skew), of.out], [-Math.sin(skew), of.aft]);
          const isRoot = inner.side !== outer.side;
          const innerTop = plus([0, 0, 0], [0.003, inner.up], [isRoot ? off : -off, away(inner, innerSkew)]);
          const outerTop = plus([0, 0, 0], [0.003, outer.up], [off, away(outer, outerSkew)]);
          expect(apart(innerTop, outerTop)).toBeLessThan(1e-9);
          // Folding the inner panel's face about the line gives the outer panel's.
          expect(apart(rotate(inner.up, line, outer.sign * fold), outer.up)).toBeLessThan(1e-9);
        }
      }),
      runs,
    );
  });

  test("are cut at the skew that the panels say where no washout is asked for besides", () => {
    fc.assert(
      fc.property(folded, (random) => {
        const panels = withColumns(random, {
          washout: random.washout.map(() => 0),
          skew: random.skew?.map((each, i) => (i === 1 ? each : 0)) ?? [],
        });
        const wing = build(panels);
        const second = jointPlaces(wing, "step").find(({ name }) => name === "right 1–2");
        if (second) {
          expect(second.innerSkew).toBeCloseTo(panels.skew?.[1] ?? 0, 9);
          expect(second.step).toBeLessThan(1e-9);
          expect(second.fold).toBeCloseTo(wing.joint_angles[1] ?? 0, 9);
        }
      }),
      runs,
    );
  });
});
