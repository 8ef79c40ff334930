import { degrees } from "../numerics/degrees.ts";
import { leastWithin, rootWithin } from "../numerics/roots.ts";
import { type Glides, leftMoment, type SteadyFlight, steadyFlight } from "./steady-flight.ts";

/** Angles of attack of the fuselage among which a trim is looked for. */
export const lowestAngle = -degrees(8);
export const highestAngle = degrees(16);
const step = degrees(0.5);

/** What looking for a trim came to. */
export type TrimSearch =
  | { readonly found: "trim"; readonly flight: SteadyFlight }
  /** Why there is none, with the moment and lift of the flight of least sink that a remedy is told from. */
  | { readonly found: "dives" | "rears up" | "tumbles"; readonly wanted: SteadyFlight };

/**
 * The steady flight in which forces and pitching moment balance, with the tailplane set more nose-up by `tail`. Of several
 * the one at the smallest angle of attack that holds itself; past the largest lift none counts. There is none where the
 * nose goes down at every angle that lifts ("dives"), up at every angle until the stall ("rears up"), or where the only
 * balance does not hold itself because the balance point lies behind the neutral point ("tumbles").
 */
export function findTrim(glider: Glides, tail = 0, bank = 0): TrimSearch {
  const momentAt = (angle: number) => leftMoment(glider, steadyFlight(glider, angle, bank, tail));
  const scan = anglesBetween(lowestAngle, highestAngle).map((angle) => {
    const flight = steadyFlight(glider, angle, bank, tail);
    return { angle, flight, moment: leftMoment(glider, flight) };
  });
  const last = slowestFlight(glider, bank, tail).angle;
  let tumbles = false;
  for (const [i, here] of scan.entries()) {
    const next = scan[i + 1];
    if (!next || here.flight.loads.lift <= 0 || here.angle > last) continue;
    if (here.moment < 0 && next.moment >= 0) tumbles = true;
    if (here.moment <= 0 || next.moment > 0) continue;
    const angle = rootWithin(momentAt, here.angle, next.angle);
    if (angle <= last) return { found: "trim", flight: steadyFlight(glider, angle, bank, tail) };
  }
  const wanted = leastSinkFlight(glider, bank, tail);
  if (tumbles) return { found: "tumbles", wanted };
  return { found: leftMoment(glider, wanted) < 0 ? "dives" : "rears up", wanted };
}

/** The flight of least sink over all angles, whatever its moment. */
export const leastSinkFlight = (glider: Glides, bank = 0, tail = 0): SteadyFlight =>
  bestFlight(glider, ({ sink }) => sink, bank, tail);

/** The flight that goes farthest for its height, whatever its moment. */
export const bestGlideFlight = (glider: Glides, bank = 0, tail = 0): SteadyFlight =>
  bestFlight(glider, ({ descent }) => descent, bank, tail);

/** The slowest flight there is, whatever its moment: its speed is the stall speed. */
export const slowestFlight = (glider: Glides, bank = 0, tail = 0): SteadyFlight =>
  bestFlight(glider, ({ speed, loads }) => (loads.lift > 0 ? speed : Number.POSITIVE_INFINITY), bank, tail);

/** The flight with the least of something: the best of a scan, then golden sections between its neighbours. */
function bestFlight(glider: Glides, of: (flight: SteadyFlight) => number, bank: number, tail: number): SteadyFlight {
  const at = (angle: number) => of(steadyFlight(glider, angle, bank, tail));
  const angles = anglesBetween(lowestAngle, highestAngle);
  const values = angles.map(at);
  const best = angles[values.indexOf(Math.min(...values))] ?? lowestAngle;
  return steadyFlight(glider, leastWithin(at, best - step, best + step), bank, tail);
}

/** The setting of the tailplane, more nose-up by so much, with which a flight at an angle of attack balances. */
export function tailFor(glider: Glides, angle: number, bank = 0): number {
  const moment = (tail: number) => leftMoment(glider, steadyFlight(glider, angle, bank, tail));
  // The moment is nearly straight in the setting: secants find it in a few steps.
  let [before, here] = [0, degrees(1)];
  let [momentBefore, momentHere] = [moment(before), moment(here)];
  for (let round = 0; round < 30 && Math.abs(here - before) > 1e-13; round++) {
    const next = here - (momentHere * (here - before)) / (momentHere - momentBefore);
    if (!Number.isFinite(next)) break;
    [before, momentBefore, here, momentHere] = [here, momentHere, next, moment(next)];
  }
  return here;
}

/** The setting of the tailplane that trims for least sink, and that flight. */
export function leastSinkTrim(glider: Glides, bank = 0): SteadyFlight {
  const trimmed = (angle: number) => steadyFlight(glider, angle, bank, tailFor(glider, angle, bank));
  const best = leastSinkFlight(glider, bank).angle;
  return trimmed(leastWithin((angle) => trimmed(angle).sink, best - 4 * step, best + 4 * step));
}

function anglesBetween(from: number, to: number): readonly number[] {
  const count = Math.round((to - from) / step);
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
}
