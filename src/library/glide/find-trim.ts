import { degrees } from "../numerics/degrees.ts";
import { leastWithin, rootWithin } from "../numerics/roots.ts";
import { type Glides, leftMoment, type SteadyFlight, steadyFlight } from "./steady-flight.ts";

/** Angles of attack of the fuselage among which a trim is looked for. */
export const lowestAngle = -degrees(8);
export const highestAngle = degrees(16);
const step = degrees(1);
/** A steeper path is a dive and no glide. */
const steepest = degrees(45);

/** What looking for a trim came to. */
export type TrimSearch =
  | { readonly found: "trim"; readonly flight: SteadyFlight }
  /** Why there is none, with the moment and lift of the flight of least sink that a remedy is told from. */
  | { readonly found: "dives" | "rears up" | "tumbles"; readonly wanted: SteadyFlight };

/**
 * The steady flight in which forces and pitching moment balance, with the tailplane set more nose-up by `tail`. Of several
 * the one at the smallest angle of attack that holds itself; past the largest lift none counts. There is none where the
 * nose goes down at every angle that glides ("dives"), up at every angle until the stall ("rears up"), or where no balance
 * would hold itself because the balance point lies behind the neutral point ("tumbles").
 */
export function findTrim(glider: Glides, tail = 0, bank = 0): TrimSearch {
  const momentAt = (angle: number) => leftMoment(glider, steadyFlight(glider, angle, bank, tail));
  const flights = scan(glider, bank, tail);
  const moments = flights.map((flight) => leftMoment(glider, flight));
  let tumbles = false;
  for (const [i, here] of flights.entries()) {
    const [next, moment = 0, then = 0] = [flights[i + 1], moments[i], moments[i + 1]];
    if (!next || next.loads.lift <= 0 || isPastStall(glider, here)) continue;
    if (moment < 0 && then >= 0) tumbles = true;
    if (moment <= 0 || then > 0) continue;
    // The flights of the scan are only nearly steady: the steady balance may lie a little outside.
    let [from, to] = [here.angle, next.angle];
    while (momentAt(from) <= 0 && from > lowestAngle) from -= step / 4;
    while (momentAt(to) > 0 && to < highestAngle) to += step / 4;
    const flight = steadyFlight(glider, rootWithin(momentAt, from, to), bank, tail);
    if (flight.descent < steepest && !isPastStall(glider, flight)) return { found: "trim", flight };
  }
  const wanted = leastSinkFlight(glider, bank, tail);
  const moment = leftMoment(glider, wanted);
  if (tumbles || momentAt(wanted.angle - 2 * step) < moment) return { found: "tumbles", wanted };
  return { found: moment < 0 ? "dives" : "rears up", wanted };
}

/** Whether the glider as a whole lifts no more with a larger angle of attack. */
function isPastStall({ loads }: Glides, { angle, speed, tail, loads: here }: SteadyFlight): boolean {
  return here.stalled > 0 && loads(angle + step / 10, speed, tail).lift <= here.lift;
}

/** The flight of least sink over all angles, whatever its moment. */
export const leastSinkFlight = (glider: Glides, bank = 0, tail = 0): SteadyFlight =>
  bestFlight(glider, ({ sink }) => sink, bank, tail);

/** The flight that goes farthest for its height, whatever its moment. */
export const bestGlideFlight = (glider: Glides, bank = 0, tail = 0): SteadyFlight =>
  bestFlight(glider, ({ descent }) => descent, bank, tail);

/**
 * The slowest flight up to the stall, whatever its moment: its speed is the stall speed. Deep in the stall a wing falls
 * slower still, as its drag carries; that is no flight to be told of.
 */
export const slowestFlight = (glider: Glides, bank = 0, tail = 0): SteadyFlight =>
  bestFlight(
    glider,
    ({ speed, loads }) => (loads.lift > 0 ? speed : Number.POSITIVE_INFINITY),
    bank,
    tail,
    indexOfFirstValley,
  );

/** The flight with the least of something: the best of a scan, then closer between its neighbours. */
function bestFlight(
  glider: Glides,
  of: (flight: SteadyFlight) => number,
  bank: number,
  tail: number,
  indexOfBest: (values: readonly number[]) => number = indexOfLeast,
): SteadyFlight {
  const flights = scan(glider, bank, tail);
  const best = flights[indexOfBest(flights.map(of))]?.angle ?? lowestAngle;
  const at = (angle: number) => of(steadyFlight(glider, angle, bank, tail));
  return steadyFlight(glider, leastWithin(at, best - step, best + step), bank, tail);
}

/** Flights over all angles, nearly steady: the speed of each is put back once only. */
function scan(glider: Glides, bank: number, tail: number): readonly SteadyFlight[] {
  const count = Math.round((highestAngle - lowestAngle) / step);
  let speed: number | undefined;
  return Array.from({ length: count + 1 }, (_, i) => {
    const flight = steadyFlight(glider, lowestAngle + i * step, bank, tail, speed);
    speed = flight.speed;
    return flight;
  });
}

const indexOfLeast = (values: readonly number[]) => values.indexOf(Math.min(...values));

/** The first of finite values that the next does not go below. */
const indexOfFirstValley = (values: readonly number[]) =>
  values.findIndex((value, i) => Number.isFinite(value) && !((values[i + 1] ?? value) < value));

/** Beyond this no tailplane is looked for: it is stalled long before. */
export const farthestTurn = degrees(45);

/**
 * The setting of the tailplane, more nose-up by so much, with which a flight at an angle of attack balances: the nearest
 * one within `farthestTurn`, or that itself, to the side that leaves less of the moment, where none does.
 */
export function tailFor(glider: Glides, angle: number, bank = 0): number {
  const moment = (tail: number) => leftMoment(glider, steadyFlight(glider, angle, bank, tail));
  return secantZero(moment) ?? nearestZero(moment);
}

/** Where the moment is nearly straight in the setting secants find its zero in a few steps; null where they run away. */
function secantZero(moment: (tail: number) => number): number | null {
  let [before, here] = [0, degrees(1)];
  let [momentBefore, momentHere] = [moment(before), moment(here)];
  for (let round = 0; round < 12 && Math.abs(here - before) > 1e-12; round++) {
    const next = here - (momentHere * (here - before)) / (momentHere - momentBefore);
    if (!Number.isFinite(next)) break;
    if (Math.abs(next) > farthestTurn) return null;
    [before, momentBefore, here, momentHere] = [here, momentHere, next, moment(next)];
  }
  return Math.abs(here - before) < 1e-6 ? here : null;
}

/** Looks to both sides of the tailplane as built, as past its stall the moment turns back. */
function nearestZero(moment: (tail: number) => number): number {
  const stride = farthestTurn / 9;
  const sides = [1, -1].map((sign) => ({ sign, at: moment(0) }));
  for (let k = 1; k <= 9; k++) {
    for (const side of sides) {
      const [from, to] = [side.sign * (k - 1) * stride, side.sign * k * stride];
      const at = moment(to);
      if (Math.sign(at) !== Math.sign(side.at)) return rootWithin(moment, from, to);
      side.at = at;
    }
  }
  const [up, down] = sides.map(({ at }) => Math.abs(at)) as [number, number];
  return up < down ? farthestTurn : -farthestTurn;
}

/** The setting of the tailplane that trims for least sink, and that flight. */
export const leastSinkTrim = (glider: Glides, bank = 0): SteadyFlight =>
  bestTrim(glider, ({ sink }) => sink, leastSinkFlight(glider, bank).angle, bank);

/** The setting that trims for a speed faster than that of the least sink by a share of it, and that flight. */
export function fasterTrim(glider: Glides, faster: number): SteadyFlight {
  const least = leastSinkTrim(glider);
  if (faster === 0) return least;
  const tooSlow = (angle: number) => trimmedAt(glider, angle).speed - (1 + faster) * least.speed;
  let flatter = least.angle - step;
  while (tooSlow(flatter) < 0 && flatter > lowestAngle) flatter -= step;
  return trimmedAt(glider, rootWithin(tooSlow, flatter, least.angle));
}

/** The setting that trims for the best glide, and that flight. */
export const bestGlideTrim = (glider: Glides, bank = 0): SteadyFlight =>
  bestTrim(glider, ({ descent }) => descent, bestGlideFlight(glider, bank).angle, bank);

/** The setting that trims for the slowest flight there is, and that flight. */
export const slowestTrim = (glider: Glides, bank = 0): SteadyFlight =>
  bestTrim(glider, ({ speed }) => speed, slowestFlight(glider, bank).angle, bank);

/** The trimmed flight with the least of something, near an angle at which the glider has it with its tail as it is. */
function bestTrim(glider: Glides, of: (flight: SteadyFlight) => number, near: number, bank: number): SteadyFlight {
  const angle = leastWithin((each) => of(trimmedAt(glider, each, bank)), near - 2 * step, near + 2 * step);
  return trimmedAt(glider, angle, bank);
}

/** The flight at an angle of attack with the tailplane set so that it balances. */
const trimmedAt = (glider: Glides, angle: number, bank = 0): SteadyFlight =>
  steadyFlight(glider, angle, bank, tailFor(glider, angle, bank));
