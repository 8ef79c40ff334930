import { describe, expect, test } from "vitest";
import { derivativesAt } from "../../../src/library/flow/derivatives.ts";
import { loadsAbout } from "../../../src/library/flow/quadratic-loads.ts";
import { type Gliding, type GlidingValues, glidingOf } from "../../../src/library/glide/gliding.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { rootWithin } from "../../../src/library/numerics/roots.ts";
import { rectangularWing } from "../../../src/library/shape/sample-wings.ts";
import { refuse } from "../call.ts";
import { ploverWing } from "../plover.ts";
import { ploverBalance, ploverWith } from "./plover-glider.ts";

const glidingWith = (change: Parameters<typeof ploverWith>[0] = {}, given: Partial<GlidingValues> = {}): Gliding =>
  glidingOf({ glider: ploverWith(change), shape: "flat-bottomed", other_area: 0, ...given }, refuse);
const plover = glidingWith();
const angle = degrees(3);
const speed = 4.1;

/** Loads of body axes in straight flight at that angle and speed, moving sideways and turning as well where told. */
function loadsOf(glider: Gliding, moving: Partial<Record<1 | 3 | 4 | 5, number>> = {}): readonly number[] {
  const state = new Float64Array(8);
  state[0] = speed * Math.cos(angle);
  state[2] = speed * Math.sin(angle);
  for (const [i, value] of Object.entries(moving)) state[Number(i)] = value;
  const loads = new Float64Array(6);
  glider.addAll(state, loads);
  return [...loads];
}

describe("the loads of a glider", () => {
  test("are the same forces about another balance point, with the moment that they have about it", () => {
    const moved = glidingWith({ balance: { ...ploverBalance, x: ploverBalance.x + 0.01, z: ploverBalance.z + 0.02 } });
    const [x = 0, y = 0, z = 0, l = 0, m = 0, n = 0] = loadsOf(plover, { 1: 0.3 });
    const [ahead, below] = [0.01, 0.02];
    // The old balance point lies so far ahead of the new one and below it: moment + way × force.
    const about = [x, y, z, l - below * y, m + below * x - ahead * z, n + ahead * y];
    for (const [i, each] of loadsOf(moved, { 1: 0.3 }).entries()) expect(each).toBeCloseTo(about[i] ?? 0, 12);
  });
  test("turn about the balance point: pitching about one ahead of the wing lifts the wing too", () => {
    const far = glidingWith({ balance: { ...ploverBalance, x: -1 } });
    const [calm, pitching] = [loadsOf(far), loadsOf(far, { 4: 0.1 })];
    // About 1 m ahead the wing meets the air from below by some 0.1 m/s more: a fortieth of a radian.
    expect((calm[2] ?? 0) - (pitching[2] ?? 0)).toBeGreaterThan(0);
    const perRadian =
      ((calm[2] ?? 0) - (pitching[2] ?? 0)) / (0.5 * 1.225 * speed ** 2 * ploverWing.area) / (0.1 / speed);
    expect(perRadian).toBeGreaterThan(4);
    expect(perRadian).toBeLessThan(6.5);
  });
  test("have the pitch damping of the lattice, and a little of the drag's", () => {
    const about = loadsAbout(plover.flow.loads, [ploverBalance.x, 0, ploverBalance.z]);
    const reference = { area: ploverWing.area, span: ploverWing.span, chord: ploverWing.mac };
    const { pitch_q } = derivativesAt(about, angle, reference, "body", { slope: 0, way: 0 });
    const perMetre = plover.pitchDamping(angle, speed) / ploverWing.area / ploverWing.mac ** 2;
    expect(perMetre / (pitch_q / 2)).toBeGreaterThan(0.98);
    expect(perMetre / (pitch_q / 2)).toBeLessThan(1.08);
  });
  test("take fittings at the balance point and the stick at its middle along the wind", () => {
    const fitted = glidingWith({}, { other_area: 1e-4 }).loads(angle, speed, 0);
    const bare = plover.loads(angle, speed, 0);
    expect(fitted.drag - bare.drag).toBeCloseTo(1e-4, 12);
    expect(fitted.moment).toBeCloseTo(bare.moment, 12);
    const stickless = glidingWith({ stick: undefined }).loads(angle, speed, 0);
    expect(bare.drag - stickless.drag).toBeGreaterThan(5e-5);
    expect(bare.lift).toBeCloseTo(stickless.lift, 12);
    // The stick lies below the balance point: its drag pulls the nose down.
    expect(bare.moment).toBeLessThan(stickless.moment);
  });
});

describe("the sections of a glider", () => {
  const balance = { ...ploverBalance, mass: 0.05 };
  const flat = {
    wing: rectangularWing,
    tailplane: undefined,
    fin: undefined,
    stick: undefined,
    balance,
    seat_angle: 0,
  };
  const zeroLift = (glider: Gliding) => rootWithin((each) => glider.loads(each, 5, 0).lift, -0.1, 0.05);
  test("take half the thickness for camber where they are flat-bottomed, and none as flat plates", () => {
    // 3 mm on a chord of 100 mm: 1.5 % of camber, and a zero-lift angle of −2·1.5 %.
    // A lifting surface of aspect ratio 8 makes 3 % more of it: its camber lifts aft of where its angle does.
    expect(zeroLift(glidingWith(flat)) / -0.03).toBeGreaterThan(1);
    expect(zeroLift(glidingWith(flat)) / -0.03).toBeLessThan(1.04);
    expect(zeroLift(glidingWith(flat, { shape: "flat plate" }))).toBeCloseTo(0, 6);
  });
  test("take the zero-lift angle of a measured polar", () => {
    const lifts = [0, 0.2, 0.4, 0.6, 0.8];
    const measured = {
      reynolds: lifts.map(() => 30_000),
      lift_coefficient: lifts,
      drag_coefficient: lifts.map(() => 0.03),
      angle: lifts.map((lift) => lift / 5.5 - 0.07),
    };
    expect(zeroLift(glidingWith(flat, { measured }))).toBeCloseTo(-0.07, 2);
    expect(() => glidingWith(flat, { shape: "arc" })).toThrow(/needs its camber/);
    expect(zeroLift(glidingWith(flat, { measured, shape: "arc" }))).toBeCloseTo(-0.07, 2);
  });
});
