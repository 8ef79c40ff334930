import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { define, number, record } from "../spec.ts";
import { freeFall } from "../units.ts";
import { glideRecord } from "./glide-record.ts";
import { steadyGlide } from "./steady-glide.ts";

const turnRecord = record(
  "turn",
  "a steady turn",
  {
    speed: number("m/s", "speed along the path"),
    sink: number("m/s", "height lost each second"),
    radius: number("m", "radius of the circle"),
    time: number("s", "time for a circle"),
    load_factor: number("1", "lift over weight"),
  },
  (turn) =>
    `${numberText(turn.radius, "m")} radius in ${numberText(turn.time, "s")}, ${numberText(turn.sink, "m/s")} sink`,
);

/** A bank of less, such as the rounding that is left of a straight glide, turns in no circle that anybody flies. */
export const leastBank = degrees(0.01);
export const straightWords = "Without bank it flies straight. Give a bank to either side, of 0.01 deg at least.";

/** `turn(glide, bank)`: the same lift coefficient flown in a bank. */
export const turn = define({
  name: "turn",
  summary: "The steady turn of a glide at a bank: radius, time for a circle, sink.",
  topic: "glide",
  parameters: {
    glide: { ...glideRecord, summary: "the straight glide, as glide gives it" },
    bank: number("deg", "bank, either way", { above: -degrees(85), below: degrees(85) }),
  },
  result: turnRecord,
  formula:
    "speed = straight speed / √cos bank, sink = straight sink / cos^1.5 bank, radius = speed² / (gravity · tan bank)",
  errors: ["The bank is less than 0.01 deg: the turn has no circle."],
  assumptions: [
    "The same lift and drag coefficients as in the straight glide, without sideslip, on a shallow path.",
    "The outer wing flies faster than the inner one: of a turn as tight as a few spans this says too little.",
  ],
  sources: [{ text: "Balance of lift, weight and centrifugal force in a level turn", mark: "derived" }],
  examples: [
    {
      summary: "a glide of 4 m/s and 0.5 m/s sink, banked by 60 deg: half the lift carries",
      arguments: {
        glide: steadyGlide({
          mass: 0.02,
          area: 0.03,
          density: 1.2,
          lift: 0.6,
          profile: 0.04,
          induced: 0.02,
          other: 0,
          spread: 0.2,
        }),
        bank: degrees(60),
      },
      result: { load_factor: 2, speed: Math.sqrt((2 * 2 * 0.02 * freeFall) / (1.2 * 0.03 * Math.hypot(0.6, 0.06))) },
    },
  ],
  compute: ({ glide, bank }, refuse) => {
    if (Math.abs(bank) < leastBank) refuse("bank", straightWords);
    const share = Math.cos(bank);
    const speed = glide.speed / Math.sqrt(share);
    const radius = speed ** 2 / (freeFall * Math.tan(Math.abs(bank)));
    return {
      speed,
      sink: glide.sink / share ** 1.5,
      radius,
      time: (2 * Math.PI * radius) / speed,
      load_factor: 1 / share,
    };
  },
});
