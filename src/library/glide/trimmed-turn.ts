import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { define, number, record } from "../spec.ts";
import { farthestTurn, findTrim, tailFor } from "./find-trim.ts";
import { type Gliding, glidingOf, glidingParameters } from "./gliding.ts";
import {
  glidingAssumptions,
  glidingErrors,
  glidingSources,
  noTrimError,
  refuseTurnOfNone,
  trimOr,
} from "./gliding-words.ts";
import { sampleGlider } from "./sample-gliders.ts";
import { loadFactor, type SteadyFlight, steadyFlight, turnRadius } from "./steady-flight.ts";
import { tailParameter } from "./trim.ts";
import { leastBank, straightWords } from "./turn.ts";

const circle = {
  speed: number("m/s", "speed along the path"),
  sink: number("m/s", "height lost each second"),
  radius: number("m", "radius of the circle over ground"),
};

const opened = { optional: true, absent: "where no turn of a tailplane does it" } as const;

const trimmedTurnRecord = record(
  "trimmed_turn",
  "a steady turn as trimmed, and with the trim opened for it",
  {
    ...circle,
    time: number("s", "time for a circle"),
    load_factor: number("1", "lift over weight"),
    lift_coefficient: number("1", "lift coefficient on the wing's area"),
    open_trim: number("deg", "how much more decalage would keep the lift coefficient of straight flight", opened),
    opened_speed: number("m/s", "speed with the trim opened so", opened),
    opened_sink: number("m/s", "sink with the trim opened so", opened),
    opened_radius: number("m", "radius with the trim opened so", opened),
  },
  (turn) =>
    `${numberText(turn.radius, "m")} radius in ${numberText(turn.time, "s")}, ${numberText(turn.sink, "m/s")} sink`,
);

/** `trimmed_turn(glider, bank, …)`. */
export const trimmedTurn = define({
  name: "trimmed_turn",
  summary: "A steady turn at a bank: what the glider does with its trim as it is, and how far to open the trim.",
  topic: "glide",
  parameters: {
    ...glidingParameters,
    bank: number("deg", "bank, either way", { above: -degrees(70), below: degrees(70), default: degrees(20) }),
    tail_turn: tailParameter,
  },
  result: trimmedTurnRecord,
  formula:
    "dynamic pressure = m·g/√(L²·cos² bank + D²), radius = speed²·cos path/(g·tan bank); the pitch rate of the circle damps: moment + C_mq-term = 0",
  errors: [...glidingErrors, noTrimError, "The bank is less than 0.01 deg: the turn has no circle."],
  assumptions: [
    "The bank is held, without sideslip; what holds it is left out, and both halves of the wing are taken to fly at one speed. Of a circle of a few spans this says too little.",
    "The turn's own pitch rate pushes the nose down: untouched, a glider turns at less lift and more speed than it glides straight.",
    ...glidingAssumptions,
  ],
  sources: glidingSources,
  examples: [
    {
      summary: "24 g on a wing of 580 cm² with raised tips, banked by 25 deg",
      arguments: { glider: sampleGlider, bank: degrees(25) },
      result: { speed: 6.662, radius: 9.471, open_trim: degrees(1.212), opened_speed: 4.865, opened_radius: 5.129 },
      tolerance: 5e-3,
    },
  ],
  isSlow: true,
  compute: ({ bank, tail_turn, ...given }, refuse) => {
    if (Math.abs(bank) < leastBank) refuse("bank", straightWords);
    refuseTurnOfNone(given.glider, { tail_turn }, refuse);
    const glider = glidingOf(given, refuse);
    const straight = trimOr(findTrim(glider, tail_turn), glider, refuse);
    const turning = trimOr(findTrim(glider, tail_turn, bank), glider, refuse);
    const radius = turnRadius(turning);
    return {
      speed: turning.speed,
      sink: turning.sink,
      radius,
      time: (2 * Math.PI * radius) / (turning.speed * Math.cos(turning.descent)),
      load_factor: loadFactor(turning),
      lift_coefficient: turning.loads.lift / glider.glider.wing.area,
      ...openedFor(glider, straight, bank),
    };
  },
});

/** The turn at the angle of attack of straight flight, with the tailplane set for it; nothing where it cannot be. */
function openedFor(glider: Gliding, straight: SteadyFlight, bank: number) {
  const tail = tailFor(glider, straight.angle, bank);
  if (!glider.glider.tailplane || Math.abs(tail) >= farthestTurn) return {};
  const flight = steadyFlight(glider, straight.angle, bank, tail);
  return {
    open_trim: straight.tail - tail,
    opened_speed: flight.speed,
    opened_sink: flight.sink,
    opened_radius: turnRadius(flight),
  };
}
