import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Polar, stripForces } from "../../../src/library/air/polar.ts";
import { thinPolar } from "../../../src/library/air/section.ts";
import {
  bestGlideFlight,
  findTrim,
  leastSinkFlight,
  leastSinkTrim,
  slowestFlight,
  tailFor,
} from "../../../src/library/glide/find-trim.ts";
import {
  type Glides,
  leftMoment,
  loadFactor,
  pitchPerMetre,
  type SteadyFlight,
  steadyFlight,
  turnRadius,
} from "../../../src/library/glide/steady-flight.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { freeFall } from "../../../src/library/units.ts";
import { runs } from "../panel-arbitraries.ts";

const area = 0.031;
const chord = 0.065;
/** A parabolic polar and a straight moment: closed forms are at hand. */
const parabolic = (change: { margin?: number; atZero?: number; damping?: number } = {}): Glides => {
  const { margin = 0.1, atZero = 0.06, damping = 0 } = change;
  return {
    mass: 0.017,
    density: 1.225,
    loads: (angle, _speed, tail) => {
      const lift = 4.5 * (angle + degrees(4)) * area + 0.3 * tail * area;
      const cl = lift / area;
      const induced = 0.05 * cl ** 2 * area;
      const moment = (atZero - margin * cl - 1.2 * tail) * area * chord;
      return { lift, drag: 0.03 * area + induced, induced, moment, stalled: 0 };
    },
    pitchDamping: () => -damping * area * chord ** 2,
  };
};

/** One strip for the whole wing, with friction by Reynolds number and a stall. */
const polar: Polar = thinPolar({ thickness: 0.04, camber: 0.02, suction: 0.6 });
const stalling = (atZero = 0.06, margin = 0.1): Glides => ({
  ...parabolic(),
  loads: (angle, speed, tail) => {
    const strip = stripForces(polar, 4.5 * (angle + degrees(4)), (speed * chord) / 1.46e-5);
    const induced = 0.05 * strip.lift ** 2 * area;
    return {
      lift: strip.lift * area,
      drag: strip.drag * area + induced,
      induced,
      moment: (atZero - margin * strip.lift - 0.1 * strip.stalled - 1.2 * tail) * area * chord,
      stalled: strip.stalled,
    };
  },
});

const trimOf = (glider: Glides, tail = 0, bank = 0): SteadyFlight => {
  const search = findTrim(glider, tail, bank);
  if (search.found !== "trim") throw new Error(`got "${search.found}", expected a trim`);
  return search.flight;
};

describe("steady flight", () => {
  test("balances weight with lift and drag, straight and in a bank", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -degrees(3), max: degrees(10), noNaN: true }),
        fc.double({ min: -1.2, max: 1.2, noNaN: true }),
        (angle, bank) => {
          const flight = steadyFlight(stalling(), angle, bank);
          const q = 0.5 * 1.225 * flight.speed ** 2;
          const weight = 0.017 * freeFall;
          expect(q * flight.loads.drag).toBeCloseTo(weight * Math.sin(flight.descent), 10);
          expect(q * flight.loads.lift * Math.cos(bank)).toBeCloseTo(weight * Math.cos(flight.descent), 10);
          // What is left of the lift across turns it: m·(V cos γ)²/R.
          if (Math.abs(bank) < 0.01) return;
          const across = (0.017 * (flight.speed * Math.cos(flight.descent)) ** 2) / turnRadius(flight);
          expect(q * flight.loads.lift * Math.sin(Math.abs(bank))).toBeCloseTo(across, 10);
          expect(loadFactor(flight)).toBeCloseTo((q * flight.loads.lift) / weight, 10);
        },
      ),
      runs,
    );
  });
  test("goes on at a lift coefficient as the closed forms of a shallow glide say", () => {
    const flight = steadyFlight(parabolic(), 0);
    const cl = 4.5 * degrees(4);
    const all = Math.hypot(cl, 0.03 + 0.05 * cl ** 2);
    expect(flight.speed).toBeCloseTo(Math.sqrt((2 * 0.017 * freeFall) / (1.225 * area * all)), 10);
    expect(Math.tan(flight.descent)).toBeCloseTo((0.03 + 0.05 * cl ** 2) / cl, 12);
  });
  test("turns with a pitch rate of speed² · sin φ · tan φ's share, a third at a bank of 30 deg of what gravity would bend", () => {
    const flight = { ...steadyFlight(parabolic(), 0, degrees(30)), descent: 0 };
    expect(pitchPerMetre(flight) * flight.speed ** 2).toBeCloseTo(
      freeFall * Math.sin(degrees(30)) * Math.tan(degrees(30)),
      10,
    );
    expect(pitchPerMetre({ ...flight, bank: 0 })).toBe(0);
  });
});

describe("the trim", () => {
  test("is where the moment is 0", () => {
    const flight = trimOf(parabolic());
    expect(flight.loads.lift / area).toBeCloseTo(0.6, 10);
    expect(Math.abs(flight.loads.moment)).toBeLessThan(1e-14);
  });
  test("is the same at any mass, but flown faster by its root", () => {
    const [light, heavy] = [trimOf(parabolic()), trimOf({ ...parabolic(), mass: 4 * 0.017 })];
    expect(heavy.angle).toBeCloseTo(light.angle, 10);
    expect(heavy.speed / light.speed).toBeCloseTo(2, 10);
  });
  test("comes at less lift with the tail more nose-up, and moves smoothly with it", () => {
    const angles = [-0.01, -0.005, 0, 0.005, 0.01].map((tail) => trimOf(stalling(), tail).angle);
    const steps = angles.slice(1).map((angle, i) => angle - (angles[i] ?? 0));
    for (const step of steps) expect(step).toBeLessThan(0);
    const [first = 0, ...others] = steps;
    for (const step of others) expect(step / first).toBeCloseTo(1, 1);
  });
  test("is none where the nose goes down or up at every angle, or where it does not hold itself", () => {
    expect(findTrim(stalling(-0.05)).found).toBe("dives");
    expect(findTrim(stalling(0.4)).found).toBe("rears up");
    expect(findTrim(stalling(-0.06, -0.1)).found).toBe("tumbles");
    const none = findTrim(stalling(-0.05));
    if (none.found === "trim") throw new Error("got a trim");
    expect(none.wanted.loads.lift / area).toBeGreaterThan(0.5);
    expect(none.wanted.loads.moment).toBeLessThan(0);
  });
  test("in a bank wants the tail more nose-down, as the turn damps", () => {
    const glider = parabolic({ damping: 12 });
    const straight = trimOf(glider);
    const more = tailFor(glider, straight.angle, degrees(30));
    expect(tailFor(glider, straight.angle)).toBeCloseTo(0, 10);
    expect(more).toBeLessThan(0);
    const turned = steadyFlight(glider, straight.angle, degrees(30), more);
    expect(turned.loads.moment).toBeCloseTo(12 * area * chord ** 2 * pitchPerMetre(turned), 14);
    // Left as it is, the glider turns at less lift and flies faster.
    const turning = trimOf(glider, 0, degrees(30));
    expect(turning.loads.lift).toBeLessThan(straight.loads.lift);
    expect(leftMoment(glider, turning)).toBeCloseTo(0, 14);
  });
});

describe("the best flights", () => {
  test("of a parabolic polar are those of the theory", () => {
    const best = bestGlideFlight(parabolic());
    expect(best.loads.lift / area).toBeCloseTo(Math.sqrt(0.03 / 0.05), 6);
    expect(1 / Math.tan(best.descent)).toBeCloseTo(1 / (2 * Math.sqrt(0.03 * 0.05)), 10);
    const slow = leastSinkFlight(parabolic());
    // On a path that is not shallow the least sink lies a little above √3 times that lift.
    expect(slow.loads.lift / area / Math.sqrt((3 * 0.03) / 0.05)).toBeGreaterThan(1);
    expect(slow.loads.lift / area / Math.sqrt((3 * 0.03) / 0.05)).toBeLessThan(1.02);
  });
  test("of a wing that stalls stand in order: best glide, least sink, stall", () => {
    const glider = stalling();
    const [best, least, slowest] = [bestGlideFlight(glider), leastSinkFlight(glider), slowestFlight(glider)];
    expect(best.speed).toBeGreaterThan(least.speed);
    expect(least.speed).toBeGreaterThan(slowest.speed);
    expect(least.sink).toBeLessThan(best.sink);
    expect(slowest.loads.lift / area).toBeCloseTo(0.88, 1);
    expect(least.loads.stalled).toBeLessThan(0.1);
  });
  test("of all settings of the tail, that for least sink balances and sinks least", () => {
    const glider = stalling();
    const best = leastSinkTrim(glider);
    expect(Math.abs(leftMoment(glider, best))).toBeLessThan(1e-12);
    for (const more of [-0.004, 0.004]) expect(trimOf(glider, best.tail + more).sink).toBeGreaterThan(best.sink);
  });
});
