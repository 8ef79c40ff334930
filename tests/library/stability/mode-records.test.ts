import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lateralModesOf, longitudinalModesOf } from "../../../src/library/stability/mode-records.ts";
import { Refusal, refuse } from "../call.ts";
import { runs } from "../panel-arbitraries.ts";

/** A matrix of blocks: two rows and columns for each pair, told by its rate and turning, or by two rates. */
const longitudinal = (...pairs: readonly (readonly [number, number, "pair" | "two"])[]) => {
  const entries = new Array<number>(16).fill(0);
  pairs.forEach(([a, b, kind], i) => {
    const at = (row: number, column: number) => 4 * (2 * i + row) + 2 * i + column;
    entries[at(0, 0)] = a;
    entries[at(1, 1)] = kind === "pair" ? a : b;
    if (kind === "pair") {
      entries[at(0, 1)] = -b;
      entries[at(1, 0)] = b;
    }
  });
  return longitudinalModesOf(entries, refuse);
};

describe("the modes in the plane of symmetry", () => {
  test("are short period and phugoid by their speed, in any order", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -8, max: -2, noNaN: true }),
        fc.double({ min: 3, max: 9, noNaN: true }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        fc.double({ min: 0.5, max: 2.5, noNaN: true }),
        fc.boolean(),
        (fast, fastTurning, slow, slowTurning, swap) => {
          const pairs = [
            [fast, fastTurning, "pair"],
            [slow, slowTurning, "pair"],
          ] as const;
          const modes = longitudinal(...(swap ? pairs.toReversed() : pairs));
          expect(modes.short_period.rate).toBeCloseTo(fast, 10);
          expect(modes.phugoid.period).toBeCloseTo((2 * Math.PI) / slowTurning, 10);
          expect(modes.phugoid.damping_ratio).toBeCloseTo(-slow / Math.hypot(slow, slowTurning), 10);
          expect(modes.phugoid.half_time === undefined).toBe(modes.phugoid.rate >= 0);
          expect(modes.usual).toBe(true);
        },
      ),
      runs,
    );
  });
  test("keep their names where the short period no longer swings, without a jump in frequency and damping", () => {
    const swinging = longitudinal([-5, 1e-4, "pair"], [-0.1, 2, "pair"]).short_period;
    const still = longitudinal([-5.0001, -4.9999, "two"], [-0.1, 2, "pair"]).short_period;
    expect(still.period).toBe(undefined);
    expect(still.frequency).toBeCloseTo(swinging.frequency ?? 0, 6);
    expect(still.damping_ratio).toBeCloseTo(swinging.damping_ratio ?? 0, 6);
    expect(still.rate).toBeCloseTo(swinging.rate, 3);
  });
  test("say where an oscillation stands between two single roots, and where one pitches away", () => {
    const between = longitudinal([-9, -0.1, "two"], [-1, 2, "pair"]);
    expect(between.usual).toBe(false);
    expect(between.phugoid.period).toBeCloseTo(Math.PI, 10);
    expect(between.verdict).toMatch(/barely/);
    const away = longitudinal([-9, 0.7, "two"], [-1, 2, "pair"]);
    expect(away.short_period.rate).toBeCloseTo(0.7, 10);
    expect(away.short_period.frequency).toBe(undefined);
    expect(away.verdict).toMatch(/doubling in 0.99 s: move the balance point forward/);
  });
  test("say where the phugoid or the short period grows", () => {
    expect(longitudinal([-5, 4, "pair"], [0.1, 2, "pair"]).verdict).toMatch(/phugoid grows, doubling in 6.93 s/);
    expect(longitudinal([0.5, 9, "pair"], [-0.1, 2, "pair"]).verdict).toMatch(/short period grows/);
    expect(longitudinal([-5, 4, "pair"], [-0.1, 2, "pair"]).verdict).toMatch(/half in 6.93 s, one swing in 3.14 s/);
  });
});

/** Derivatives of a small glider at 4 m/s, in sideslip angle, p, r and bank. */
const glider = (change: { roll?: number; slip?: number; fin?: number; turning?: number; swerve?: number } = {}) => {
  const { roll = -25, slip = -150, fin = 25, turning = 8, swerve = -2 } = change;
  return lateralModesOf([-0.8, 0, -1, 9.8 / 4, slip, roll, turning, 0, fin, swerve, -3, 0, 0, 1, 0, 0], refuse);
};

describe("the modes of roll, yaw and sideslip", () => {
  test("are roll, spiral and Dutch roll of a glider", () => {
    const modes = glider();
    expect(modes.joined).toBe(false);
    expect(modes.roll.rate).toBeLessThan(-20);
    expect(modes.dutch_roll.period).toBeGreaterThan(0.5);
    expect(modes.spiral.half_time).toBeGreaterThan(0.5);
    expect(modes.root_name).toEqual(["roll", "spiral", "Dutch roll", "Dutch roll"]);
    expect(modes.verdict).toMatch(/^Rights itself, halving a bank in/);
  });
  test("multiply to the determinant and add up to the trace of the matrix", () => {
    const { root_rate: rates, root_turning: turnings } = glider();
    expect(rates.reduce((sum, rate) => sum + rate, 0)).toBeCloseTo(-0.8 - 25 - 3, 10);
    const [roll = 0, spiral = 0, dutch = 0] = rates;
    // The constant term of the quartic is (g/V)·(Lβ·Nr − Nβ·Lr) (checks of the spiral criterion, derived).
    const constant = (9.8 / 4) * (-150 * -3 - 25 * 8);
    expect(roll * spiral * (dutch ** 2 + (turnings[2] ?? 0) ** 2)).toBeCloseTo(constant, 6);
  });
  test("have a spiral that grows with too much fin, and say so", () => {
    const modes = glider({ fin: 120 });
    expect(modes.spiral.double_time).toBeGreaterThan(0);
    expect(modes.verdict).toMatch(/^Spirals in/);
  });
  test("join roll and spiral in one oscillation where rolling is hardly damped, both telling the pair", () => {
    const modes = glider({ roll: -1, slip: -60, fin: 100, turning: 1, swerve: 0 });
    expect(modes.joined).toBe(true);
    expect(modes.roll).toEqual(modes.spiral);
    expect(modes.spiral.period).toBeGreaterThan(modes.dutch_roll.period ?? Number.POSITIVE_INFINITY);
    expect(modes.root_name).toEqual(["roll and spiral", "roll and spiral", "Dutch roll", "Dutch roll"]);
    expect(modes.verdict).toMatch(/Roll and spiral have become one slow oscillation/);
  });
  test("join and part without a jump in their rates", () => {
    const at = (roll: number) => glider({ roll, slip: -60, fin: 100, turning: 1, swerve: 0 });
    let [apart, together] = [-8, -1];
    expect(at(apart).joined).toBe(false);
    expect(at(together).joined).toBe(true);
    for (let i = 0; i < 50; i++) {
      const middle = (apart + together) / 2;
      if (at(middle).joined) together = middle;
      else apart = middle;
    }
    for (const mode of ["roll", "spiral"] as const) {
      expect(at(apart)[mode].rate).toBeCloseTo(at(together)[mode].rate, 4);
    }
  });
  test("without a fin swing ever wider, or swap ends", () => {
    const swings = glider({ fin: -30, slip: -20 });
    expect(swings.dutch_roll.period).toBeGreaterThan(5);
    expect(swings.verdict).toMatch(/^Swings ever wider.*more fin/);
    const swaps = glider({ fin: -60, slip: -5, swerve: 0, turning: -1 });
    expect(swaps.dutch_roll.period).toBe(undefined);
    expect(swaps.dutch_roll.rate).toBeGreaterThan(5);
    expect(swaps.spiral.rate).toBeLessThan(0);
    expect(swaps.verdict).toMatch(/^Swaps ends.*larger fin/);
  });
  test("swap ends also where the roll has met the dying half of the Dutch roll in a fast pair", () => {
    const modes = lateralModesOf([-0.8, 0, -1, 2.45, 40, -11, 0, 0, -35, -0.7, -2, 0, 0, 1, 0, 0], refuse);
    expect(modes.roll.period).toBeGreaterThan(0);
    expect(modes.roll.rate).toBeLessThan(-5);
    expect(modes.dutch_roll.rate).toBeGreaterThan(4);
    expect(modes.verdict).toMatch(/^Swaps ends/);
  });
  test("have roll and spiral joined also where the Dutch roll no longer swings", () => {
    const modes = lateralModesOf([-20, 0, -1, 2.4, -80, -0.5, 0, 0, 30, 0, -40, 0, 0, 1, 0, 0], refuse);
    expect(modes.joined).toBe(true);
    expect(modes.dutch_roll.period).toBe(undefined);
  });
  test("are refused for a matrix of another size", () => {
    expect(() => lateralModesOf([1, 2, 3], refuse)).toThrow(Refusal);
  });
});
