import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stripCirculation } from "../../../src/library/flow/far-field.ts";
import { flowState, stateCount } from "../../../src/library/flow/flow-state.ts";
import { loadSlopes, loadsAbout, loadsAt } from "../../../src/library/flow/quadratic-loads.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import type { Glider } from "../../../src/library/shape/glider-record.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { refuse } from "../call.ts";
import { anyPanels } from "../panel-arbitraries.ts";
import { ploverPanels } from "../plover.ts";
import { coefficients, derivatives, plainWing, plover, ploverPoint, solved, wingAlone } from "./sample-flows.ts";

const few = { seed: 20240611, numRuns: 25 };
/** A wing that differs from its mirror image in the length of its left tip. */
const lopsided = () => {
  const other = { ...ploverPanels, length: [0.105, 0.08, 0.05], break: [degrees(3), degrees(9), degrees(8)] };
  return { right: ploverPanels, left: other };
};
const loadsOf = (glider: Glider, state: readonly number[]) => {
  const into = new Float64Array(6);
  loadsAt(solved(glider).loads, Float64Array.from(state), into);
  return [...into];
};
const someState = [3.9, 0.3, 0.4, 0.5, -0.4, 0.6, 0.05, 0.08];

describe("a solved lattice", () => {
  test("of a glider with equal halves is the same by halves as by the whole matrix", () => {
    const glider = plover();
    const half = solved(glider).loads;
    const whole = solved({ ...glider, wing: { ...glider.wing, mirrored: false } }).loads;
    const largest = Math.max(...half.form.map(Math.abs));
    for (const form of ["form", "skew"] as const) {
      half[form].forEach((value, i) => {
        expect(Math.abs(value - (whole[form][i] ?? 0))).toBeLessThan(1e-10 * largest);
      });
    }
  });

  test("turns its side loads with the sign of sideslip, rolling and yawing", () => {
    const [x, y, z, l, m, n] = loadsOf(plover(), someState) as [number, number, number, number, number, number];
    const mirrored = someState.map((value, k) => ([1, 3, 5, 7].includes(k) ? -value : value));
    loadsOf(plover(), mirrored).forEach((value, c) => {
      expect(value).toBeCloseTo([x, -y, z, -l, m, -n][c] ?? 0, 12);
    });
  });

  test("of a mirrored lopsided wing has mirrored loads", () => {
    const { right, left } = lopsided();
    const glider = { ...plover(), wing: buildWing(right, left, refuse) };
    const other = { ...plover(), wing: buildWing(left, right, refuse) };
    const mirrored = someState.map((value, k) => ([1, 3, 5, 7].includes(k) ? -value : value));
    const [x, y, z, l, m, n] = loadsOf(glider, someState);
    const found = loadsOf(other, mirrored);
    [x, -(y ?? 0), z, -(l ?? 0), m, -(n ?? 0)].forEach((value, c) => {
      expect(found[c]).toBeCloseTo(value ?? 0, 10);
    });
  });

  test("of a wing with a longer left half rolls to the right in straight flight", () => {
    const { right, left } = lopsided();
    expect(coefficients(wingAlone(right, left), 0.08).roll).toBeLessThan(0);
    expect(coefficients(wingAlone(left, right), 0.08).roll).toBeGreaterThan(0);
  });

  test("has no side force and no roll or yaw in straight flight, where the halves are equal", () => {
    const { side, roll, yaw } = coefficients(plover(), 0.1);
    for (const each of [side, roll, yaw]) expect(Math.abs(each)).toBeLessThan(1e-12);
  });

  test("keeps its coefficients at ten times the size", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const large = {
          ...panels,
          length: panels.length.map((each) => 10 * each),
          root_chord: panels.root_chord.map((each) => 10 * each),
          tip_chord: panels.tip_chord.map((each) => 10 * each),
          sweep: panels.sweep.map((each) => 10 * each),
        };
        const [small, big] = [derivatives(wingAlone(panels), 0.05), derivatives(wingAlone(large), 0.05)];
        for (const key of ["lift_alpha", "roll_beta", "roll_p", "pitch_q", "yaw_r"] as const) {
          expect(Math.abs(big[key] - small[key])).toBeLessThan(1e-8 * Math.max(1, Math.abs(small[key])));
        }
      }),
      few,
    );
  });

  test.each([
    ["turning, with a straight wake", someState, 0],
    ["slipping without turning", someState.map((value, k) => (k >= 3 && k <= 5 ? 0 : value)), 1],
  ])("has loads about another point that do the same to the body: %s", (_, motion, askew) => {
    const found = solved(plover()).loads;
    const loads = { ...found, skew: found.skew.map((value) => askew * value) };
    const moved = loadsAbout(loads, [0.04, 0.01, -0.02]);
    const [u = 0, v = 0, w = 0, p = 0, q = 0, r = 0, ...controls] = motion;
    // Body axes: from the origin to the new point.
    const [dx, dy, dz] = [-0.04, 0.01, 0.02];
    const there = [u + q * dz - r * dy, v + r * dx - p * dz, w + p * dy - q * dx, p, q, r, ...controls];
    const [here, after] = [new Float64Array(6), new Float64Array(6)];
    loadsAt(loads, Float64Array.from(motion), here);
    loadsAt(moved, Float64Array.from(there), after);
    const [x = 0, y = 0, z = 0, l = 0, m = 0, n = 0] = here;
    const expected = [x, y, z, l - (dy * z - dz * y), m - (dz * x - dx * z), n - (dx * y - dy * x)];
    expected.forEach((value, c) => {
      expect(after[c]).toBeCloseTo(value, 11);
    });
  });

  test("has slopes that are those of its loads", () => {
    const { loads } = solved(plover());
    const slopes = loadSlopes(loads, Float64Array.from(someState));
    for (let k = 0; k < stateCount; k++) {
      const at = (step: number) => {
        const into = new Float64Array(6);
        loadsAt(
          loads,
          Float64Array.from(someState, (value, i) => (i === k ? value + step : value)),
          into,
        );
        return into;
      };
      const [low, high] = [at(-1e-4), at(1e-4)];
      for (let c = 0; c < 6; c++) {
        expect(slopes[c * stateCount + k]).toBeCloseTo(((high[c] ?? 0) - (low[c] ?? 0)) / 2e-4, 8);
      }
    }
  });

  test("rolls by halves turned against each other as much as rolling loads its halves (reverse-flow theorem)", () => {
    const panels = {
      length: [0.5],
      root_chord: [0.125],
      tip_chord: [0.125],
      sweep: [0],
      break: [0],
      thickness: [0.003],
    };
    const crooked = wingAlone({ ...panels, washout: [0.01] }, { ...panels, washout: [-0.01] });
    const roll = coefficients(crooked, 0).roll * (crooked.wing.area / 2);
    const { lattice, circulation } = solved(plainWing(8));
    const rolling = Float64Array.from({ length: stateCount }, (_, k) => (k === flowState.p ? 1 : 0));
    const halfLoad = stripCirculation(lattice, circulation, rolling).reduce(
      (sum, strength, s) => sum + strength * (lattice.strips[s]?.acrossY ?? 0),
      0,
    );
    expect(roll / (2 * 0.01 * halfLoad)).toBeCloseTo(1, 2);
  });

  test("of a flat wing alone has no roll per sideslip without lift, and no side force", () => {
    const d = derivatives(plainWing(6), 0);
    expect(Math.abs(d.roll_beta)).toBeLessThan(1e-12);
    expect(Math.abs(d.side_beta)).toBeLessThan(1e-12);
  });

  test("damps roll, pitch and yaw of a whole glider, and rolls out of a slip", () => {
    const d = derivatives(plover(), 0.1, {}, ploverPoint);
    for (const key of ["roll_p", "pitch_q", "yaw_r", "roll_beta", "side_beta"] as const)
      expect(d[key], key).toBeLessThan(0);
    expect(d.yaw_beta).toBeGreaterThan(0);
    expect(d.roll_r).toBeGreaterThan(0);
  });

  test("answers a turned tailplane with lift and a nose-down moment, and a turned fin with a turn to the right", () => {
    const d = derivatives(plover(), 0.05, {}, ploverPoint);
    expect(d.lift_tailplane).toBeGreaterThan(0);
    expect(d.pitch_tailplane).toBeLessThan(0);
    expect(d.yaw_fin).toBeGreaterThan(0);
    expect(d.side_fin).toBeLessThan(0);
    const turned = coefficients(plover({ tailplane: { incidence: degrees(1.9) } }), 0.05);
    const before = coefficients(plover(), 0.05);
    expect((turned.lift - before.lift) / (degrees(1) * d.lift_tailplane)).toBeCloseTo(1, 2);
  });
});
