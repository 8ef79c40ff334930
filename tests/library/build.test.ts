import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { functions } from "../../src/library/index.ts";
import { degrees } from "../../src/library/numerics/degrees.ts";
import type { Panels } from "../../src/library/shape/panel-columns.ts";
import { buildWing } from "../../src/library/shape/wing.ts";
import { call, faultOf, Refusal, refuse } from "./call.ts";
import { anyPanels, runs, withColumns } from "./panel-arbitraries.ts";
import { ploverPanels } from "./plover.ts";

/** What is made of a wing alone, with what it needs besides. */
const ofWing: Readonly<Record<string, Record<string, unknown>>> = {
  joint_bevels: {},
  wing_jig: {},
  prop_heights: {},
  wing_blanks: { density: 120, kerf: 0.0002, margin: 0.001 },
  joint_strips: { layers: 2 },
  joint_strength: { mass: 0.03, density: 120 },
  section_templates: {},
};

describe("what is built of any wing", () => {
  test.each(Object.entries(ofWing))("by %s is complete and finite, or refused in a sentence", (name, given) => {
    const spec = functions.get(name);
    let made = 0;
    fc.assert(
      fc.property(anyPanels, fc.option(anyPanels), fc.constantFrom("cut", "step"), (panels, left, washout) => {
        const wing = buildWing(panels, left ?? undefined, refuse);
        const cuts = spec && "washout" in spec.parameters ? { washout } : {};
        try {
          const result = call(spec, { wing, ...given, ...cuts });
          expect(faultOf(spec?.result ?? { kind: "boolean" }, result, name)).toBe(null);
          made++;
        } catch (error) {
          if (!(error instanceof Refusal)) throw error;
          expect(error.message).toMatch(/^[A-Z].*[.]( [A-Z].*[.])*$/);
        }
      }),
      runs,
    );
    expect(made).toBeGreaterThan(10);
  });

  test("shrinks and grows with the wing: every length of a pattern does, no angle does", () => {
    const grown = (panels: Panels, by: number) =>
      withColumns(panels, {
        length: panels.length.map((each) => each * by),
        root_chord: panels.root_chord.map((each) => each * by),
        tip_chord: panels.tip_chord.map((each) => each * by),
        sweep: panels.sweep.map((each) => each * by),
        thickness: panels.thickness.map((each) => each * by),
      });
    const blanks = (panels: Panels) =>
      call(functions.get("wing_blanks"), { wing: buildWing(panels, undefined, refuse) }) as {
        area: number;
        pattern: { parts: { width: number[] } };
      };
    const bevels = (panels: Panels) =>
      (
        call(functions.get("joint_bevels"), { wing: buildWing(panels, undefined, refuse) }) as {
          edges: { bevel: number[] };
        }
      ).edges;
    const [small, large] = [blanks(ploverPanels), blanks(grown(ploverPanels, 3))];
    expect(large.area / small.area).toBeCloseTo(9, 9);
    large.pattern.parts.width.forEach((width, k) => {
      expect(width / (small.pattern.parts.width[k] ?? 1)).toBeCloseTo(3, 9);
    });
    bevels(grown(ploverPanels, 3)).bevel.forEach((bevel, k) => {
      expect(bevel).toBeCloseTo(bevels(ploverPanels).bevel[k] ?? 0, 12);
    });
  });

  test("steps where a joint has washout and no fold to carry it", () => {
    const wing = buildWing(withColumns(ploverPanels, { break: [degrees(3), 0, degrees(11)] }), undefined, refuse);
    const { joints } = call(functions.get("joint_bevels"), { wing }) as { joints: { step: number[]; skew: number[] } };
    expect(joints.step[1]).toBeCloseTo(0.07 * Math.sin(degrees(0.5)), 6);
    expect(joints.skew[1]).toBe(0);
  });
});
