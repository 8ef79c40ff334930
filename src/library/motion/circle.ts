import { glidingParameters } from "../glide/gliding.ts";
import { sampleGlider } from "../glide/sample-gliders.ts";
import { numberText } from "../number-text.ts";
import { define, number, record } from "../spec.ts";
import { aimOf } from "./aim.ts";
import { settingParameters } from "./setting-parameters.ts";

/** `circle(glider, fin_turn: 1 deg)`: the circle that a glider is trimmed for, on purpose or by how it was built. */
export const circle = define({
  name: "circle",
  summary: "The steady circle in which a glider comes to glide, by its fin, by halves that differ, or by its balance.",
  topic: "righting",
  parameters: { ...glidingParameters, ...settingParameters },
  result: record(
    "circle",
    "the steady circle of a glider",
    {
      bank: number("deg", "bank, to the right"),
      radius: number("m", "radius of the circle over ground", { optional: true, absent: "where it glides straight" }),
      turn_rate: number("deg/s", "turning about the vertical, to the right"),
      speed: number("m/s", "speed along the path"),
      sink: number("m/s", "height lost each second"),
      sideslip: number("deg", "sideslip, to the right"),
      angle: number("deg", "angle of attack"),
    },
    ({ bank, radius, sink }) =>
      radius === undefined
        ? `straight, ${numberText(sink, "m/s")} sink`
        : `${numberText(Math.abs(bank), "deg")} bank ${bank > 0 ? "right" : "left"}, radius ${numberText(radius, "m")}, ${numberText(sink, "m/s")} sink`,
  ),
  formula:
    "Newton's steps on the six equations of motion, from the straight trim, until no speed and no turning changes",
  errors: [
    "The glider has no balance, no inertia, or no trim.",
    "It comes to no steady glide, because it turns ever tighter.",
  ],
  assumptions: [
    "What makes it turn is in the glider itself (breaks, washouts or masses that differ left and right, balance.y), or is the fin turned by fin_turn.",
    "A tab at the fin's rear edge acts as a smaller turn of the whole fin.",
    "That there is such a circle does not say that the glider finds it: see modes and recovery.",
  ],
  sources: [{ text: "B. Etkin, L. D. Reid, Dynamics of Flight, 3rd ed. 1996, section 4.7", mark: "from memory" }],
  examples: [
    {
      summary: "a glider with equal halves and a straight fin glides straight on",
      arguments: { glider: sampleGlider },
      // Its trim, as trim finds it by other means.
      result: { speed: 4.5793, sink: 0.54551 },
      tolerance: 1e-4,
    },
  ],
  isSlow: true,
  compute: (given, refuse) => {
    const aimed = aimOf(given, { tail: given.tail_turn, rudder: given.fin_turn }, refuse);
    const { u, v, w, bank, rate } = aimed.circle;
    const { speed, sink } = aimed;
    return {
      bank,
      ...(Math.abs(rate) > 1e-6 && { radius: Math.sqrt(speed ** 2 - sink ** 2) / Math.abs(rate) }),
      turn_rate: rate,
      speed,
      sink,
      sideslip: Math.asin(v / speed),
      angle: Math.atan2(w, u),
    };
  },
});
