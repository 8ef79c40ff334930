import { numberText } from "../number-text.ts";
import { boolean, number, record, table, text, type ValueOf } from "../spec.ts";

/** What a glider does that is let go in a bank. */
export const recoveryRecord = record(
  "recovery",
  "what a glider does that is let go in a bank",
  {
    verdict: text("settles, keeps circling, spirals in, swings, or stalls"),
    settling_time: number("s", "until bank and speed stay near their trim", {
      optional: true,
      absent: "where bank and speed never stay near their trim",
    }),
    spiral_half_time: number("s", "time in which a small bank halves by itself", {
      optional: true,
      absent: "where a small bank grows",
    }),
    spiral_double_time: number("s", "time in which a small bank doubles", {
      optional: true,
      absent: "where a small bank dies away",
    }),
    banked_integral: number("s", "bank off its trim, added up over time, over what it was at first", {
      optional: true,
      absent: "where it is let go in the bank of its trim",
    }),
    height_lost: number("m", "height lost beyond that of the steady glide, until it settles or the flight ends"),
    trim_bank: number("deg", "bank of the steady glide that it aims at, to the right"),
    trim_speed: number("m/s", "its speed"),
    trim_sink: number("m/s", "its sink"),
    trim_radius: number("m", "radius of its circle", { optional: true, absent: "where it flies straight" }),
    worst_angle: number("deg", "largest angle of attack on the way"),
    stall_angle: number("deg", "angle of attack of its slowest steady flight, where it stalls"),
    worst_sideslip: number("deg", "largest sideslip on the way"),
    stalled: number("%", "how far the most stalled strip stalled on the way"),
    inside_model: boolean("whether it stayed where the model holds"),
    limits: text("where it left the model, or that it did not"),
    left_model: number("s", "when it first left the model", { optional: true, absent: "where it never did" }),
    history: table("the flight, sampled at equal steps", {
      time: number("s", "time since it was let go"),
      bank: number("deg", "bank to the right"),
      sideslip: number("deg", "sideslip to the right"),
      speed: number("m/s", "speed"),
      angle: number("deg", "angle of attack"),
      height: number("m", "height above where it was let go"),
    }),
  },
  ({ verdict, settling_time, height_lost, inside_model }) => {
    const height = `${numberText(Math.abs(height_lost), "m")} ${height_lost < 0 ? "less lost than in" : "lost beyond"} the glide`;
    const told = settling_time === undefined ? verdict : `${verdict} in ${numberText(settling_time, "s")}, ${height}`;
    return inside_model ? told : `${told}; partly outside the model`;
  },
);

/** The value of a recovery in SI. */
export type Recovery = ValueOf<typeof recoveryRecord>;
