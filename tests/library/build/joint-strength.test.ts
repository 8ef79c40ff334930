import { describe, expect, test } from "vitest";
import { bendingMoment } from "../../../src/library/build/bending.ts";
import { type JointStrength, jointStrength } from "../../../src/library/build/joint-strength.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { call, refuse } from "../call.ts";
import { withColumns } from "../panel-arbitraries.ts";
import { ploverPanels, ploverWing } from "../plover.ts";

const strength = (given: Record<string, unknown> = {}) =>
  call(jointStrength, { wing: ploverWing, mass: 0.018, density: 110, ...given }) as JointStrength;

describe("the bending moment", () => {
  test("is the sum of the lift outboard times its arm, added up strip by strip", () => {
    for (const share of [0, 0.2, 0.45, 0.8]) {
      const [halfSpan, load, count] = [0.23, 5, 200_000];
      let sum = 0;
      for (let k = 0; k < count; k++) {
        const eta = (k + 0.5) / count;
        // Elliptic lift of a half, whose integral is load / 2.
        const lift = (load / 2) * (4 / Math.PI) * Math.sqrt(1 - eta ** 2);
        if (eta > share) sum += (lift * (eta - share) * halfSpan) / count;
      }
      expect(bendingMoment(load, halfSpan, share, "elliptic")).toBeCloseTo(sum, 7);
    }
  });
  test("is nothing at the tip, and an eighth of load times span at the root of uniform lift", () => {
    expect(bendingMoment(5, 0.23, 1, "elliptic")).toBeCloseTo(0, 12);
    expect(bendingMoment(5, 0.23, 0, "uniform")).toBeCloseTo((5 * 0.46) / 8, 12);
  });
});

describe("the joints' strength", () => {
  test("falls with the load and grows with wood, thickness and layers", () => {
    const { joints } = strength({ toss: 5, gust: 10 });
    expect((joints.butt[0] ?? 0) / (joints.butt[5] ?? 1)).toBeCloseTo(2, 9);
    expect(strength({ density: 220 }).least_butt).toBeCloseTo(2 * strength().least_butt, 9);
    expect(strength({ layers: 2 }).least_reinforced).toBeGreaterThan(strength().least_reinforced);
    expect(strength({ weave: "bias" }).least_reinforced).toBeLessThan(strength().least_reinforced);
  });
  test("is never more than the wood's beside the joint, nor less than the plain butt's", () => {
    const { joints } = strength({ layers: 6, cloth: 0.1, gust: 40 });
    joints.reinforced.forEach((reserve, i) => {
      expect(reserve).toBeLessThanOrEqual((joints.wood[i] ?? 0) + 1e-9);
      expect(reserve).toBeGreaterThanOrEqual(joints.butt[i] ?? 0);
      expect(joints.reinforced_low[i]).toBeLessThan(reserve);
      expect(joints.reinforced_high[i]).toBeGreaterThan(reserve);
    });
  });
  test("looks at a pull-up where it is asked to, and says what each joint takes", () => {
    const { joints } = strength({ pull_up: 60 });
    expect(joints.load.filter((load) => load === "pull-up")).toHaveLength(5);
    expect(joints.verdict[0]).toBe("a plain butt joint bears it");
    expect(joints.verdict[joints.load.indexOf("pull-up")]).not.toBe("a plain butt joint bears it");
  });
  test("is refused for a wing without joints and for half a layer", () => {
    const flat = buildWing(
      withColumns(ploverPanels, {
        length: [0.2],
        root_chord: [0.07],
        tip_chord: [0.06],
        sweep: [0],
        break: [degrees(0)],
        washout: [0],
        thickness: [0.003],
      }),
      undefined,
      refuse,
    );
    expect(() => strength({ wing: flat })).toThrow(/no joint/);
    expect(() => strength({ layers: 1.5 })).toThrow(/whole number/);
  });
});
