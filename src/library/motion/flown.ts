import { slowestFlight } from "../glide/find-trim.ts";
import { degrees } from "../numerics/degrees.ts";
import type { Refuse } from "../spec.ts";
import { lateralModesOf } from "../stability/mode-records.ts";
import type { Aimed } from "./aim.ts";
import { type Angles, attitudeOf } from "./attitude.ts";
import { stateSize } from "./body.ts";
import { type FullFlight, fly } from "./fly.ts";
import { disturbanceMatrix, lateralPart } from "./linear.ts";
import type { Recovery } from "./recovery-record.ts";
import { bankedIntegral, heightLost, settledFrom, verdictOf } from "./settling.ts";
import { unlessRounding } from "./steady-circle.ts";

/** How a glider is let go: its speed along its axes, its attitude, without turning. */
export interface LetGo {
  readonly u: number;
  readonly w: number;
  readonly angles: Angles;
}

/** Of a flight that breaks off sooner nothing can be said. */
const shortest = 0.5;

/** Flies a glider from where it is let go, and tells what came of it. */
export function flown(aimed: Aimed, { u, w, angles }: LetGo, seconds: number, refuse: Refuse): Recovery {
  const { body, circle, speed, sink } = aimed;
  const start = new Float64Array(stateSize);
  start.set([u, 0, w, 0, 0, 0, ...attitudeOf(angles), 0, 0, 0]);
  const flight = fly(body, start, { seconds });
  if ((flight.time.at(-1) ?? 0) < shortest) {
    return refuse(
      "glider",
      "Its motion cannot be followed: it tumbles within half a second. Look at its mass, and at where wing and tail stand.",
    );
  }
  const aim = { bank: circle.bank, speed, sink };
  const settled = settledFrom(flight, aim);
  const banked = bankedIntegral(flight, aim);
  const stalled = Math.max(...flight.stalled);
  const { spiral } = lateralModesOf(lateralPart(disturbanceMatrix(body, circle)), refuse);
  return {
    verdict: verdictOf(flight, aim, stalled > 0.5),
    ...(settled !== null && { settling_time: flight.time[settled] }),
    ...(spiral.half_time !== undefined && { spiral_half_time: spiral.half_time }),
    ...(spiral.double_time !== undefined && { spiral_double_time: spiral.double_time }),
    ...(banked !== null && { banked_integral: banked }),
    height_lost: heightLost(flight, aim, settled ?? flight.time.length),
    trim_bank: circle.bank,
    trim_speed: speed,
    trim_sink: sink,
    ...(Math.abs(circle.rate) > 1e-6 && { trim_radius: Math.sqrt(speed ** 2 - sink ** 2) / Math.abs(circle.rate) }),
    worst_angle: Math.max(...flight.angle),
    stall_angle: slowestFlight(aimed.gliding).angle,
    worst_sideslip: unlessRounding(Math.max(...flight.sideslip.map(Math.abs))),
    stalled,
    ...limitsOf(flight, aimed, seconds),
    history: {
      time: flight.time,
      bank: flight.bank,
      sideslip: flight.sideslip,
      speed: flight.speed,
      angle: flight.angle,
      height: flight.height,
    },
  };
}

/** Where a flight left what the model knows. */
function limitsOf(
  flight: FullFlight,
  { speed }: Aimed,
  seconds: number,
): Pick<Recovery, "inside_model" | "limits" | "left_model"> {
  const first = (is: (sample: number) => boolean) => flight.time.findIndex((_, sample) => is(sample));
  const found = [
    { at: first((i) => (flight.stalled[i] ?? 0) >= 1), what: "a strip was wholly stalled" },
    { at: first((i) => Math.abs(flight.sideslip[i] ?? 0) > degrees(15)), what: "the sideslip was beyond 15°" },
    { at: first((i) => (flight.speed[i] ?? speed) < speed / 2), what: "the speed was below half of the trim's" },
    {
      at: (flight.time.at(-1) ?? 0) < seconds - 0.1 ? flight.time.length - 1 : -1,
      what: "it tumbled, and the flight was ended",
    },
  ].filter(({ at }) => at >= 0);
  if (found.length === 0) return { inside_model: true, limits: "stayed where the model holds" };
  const told = found.map(({ at, what }) => `${what} after ${(flight.time[at] ?? 0).toFixed(1)} s`);
  const left_model = Math.min(...found.map(({ at }) => flight.time[at] ?? 0));
  return { inside_model: false, left_model, limits: `left the model: ${told.join("; ")}` };
}
