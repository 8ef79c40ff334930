import { expect, test } from "vitest";
import { aimOf } from "../../../src/library/motion/aim.ts";
import { stateSize } from "../../../src/library/motion/body.ts";
import { circle } from "../../../src/library/motion/circle.ts";
import { fly } from "../../../src/library/motion/fly.ts";
import { modes } from "../../../src/library/motion/modes.ts";
import { setSteady } from "../../../src/library/motion/steady-circle.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { call, refuse } from "../call.ts";
import { ploverWith } from "../glide/plover-glider.ts";

const given = { glider: ploverWith(), shape: "flat-bottomed", other_area: 0 };
type Circle = ReturnType<typeof circle.compute>;

test("let go in its steady circle a glider stays in it, turning at its rate", () => {
  const { body, circle: steady, speed, sink } = aimOf(given, { tail: 0, rudder: degrees(0.6) }, refuse);
  const state = new Float64Array(stateSize);
  setSteady(state, [steady.u, steady.v, steady.w, steady.bank, steady.pitch, steady.rate]);
  const flight = fly(body, state, { seconds: 5 });
  expect(steady.bank).toBeGreaterThan(degrees(2));
  for (const bank of flight.bank) expect(bank).toBeCloseTo(steady.bank, 6);
  expect(flight.heading.at(-1)).toBeCloseTo(5 * steady.rate, 5);
  expect(-(flight.height.at(-1) ?? 0)).toBeCloseTo(5 * sink, 6);
  // Across the path the bank holds the circle: tan(bank) = V·cos(descent)·rate / g, but for a trace of sideslip.
  const level = Math.sqrt(speed ** 2 - sink ** 2);
  expect(Math.tan(steady.bank)).toBeCloseTo((level * steady.rate) / 9.80665, 1);
});

test("with equal halves it glides straight, and a fin turned the other way gives the mirrored circle", () => {
  const straight = call(circle, given) as Circle;
  expect(straight.radius).toBeUndefined();
  expect(straight.bank).toBeCloseTo(0, 9);
  const [right, left] = [1, -1].map((side) => call(circle, { ...given, fin_turn: side * degrees(0.6) }) as Circle);
  expect(left?.bank).toBeCloseTo(-(right?.bank ?? Number.NaN), 7);
  expect(left?.radius).toBeCloseTo(right?.radius ?? Number.NaN, 5);
  expect(right?.sink).toBeGreaterThan(straight.sink);
});

test("a weight on the right tip circles to the right", () => {
  const { balance } = ploverWith();
  const heavy = ploverWith({ balance: balance && { ...balance, y: 0.001 } });
  expect((call(circle, { ...given, glider: heavy }) as Circle).bank).toBeGreaterThan(degrees(1));
});

test("Plover has the five modes of a textbook, and rights itself", () => {
  const { longitudinal, lateral } = call(modes, given) as ReturnType<typeof modes.compute>;
  expect(longitudinal.usual).toBe(true);
  // Lanchester's phugoid (1908), π·√2·V/g = 1.9 s, has no pitch damping. Of a glider as light as this the tail damps
  // pitching about as much as its static margin stiffens it, which stretches the swing to about twice that.
  const lanchester = (Math.PI * Math.SQRT2 * aimOf(given, { tail: 0, rudder: 0 }, refuse).speed) / 9.80665;
  expect(longitudinal.phugoid.period).toBeGreaterThan(lanchester);
  expect(longitudinal.phugoid.period).toBeLessThan(3 * lanchester);
  expect(longitudinal.short_period.rate).toBeLessThan(-3);
  expect(lateral.roll.rate).toBeLessThan(-15);
  expect(lateral.spiral.half_time).toBeGreaterThan(0.3);
  expect(lateral.dutch_roll.period).toBeGreaterThan(0.2);
});
