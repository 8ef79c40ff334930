import { flowState, stateCount } from "../flow/flow-state.ts";
import { findTrim } from "../glide/find-trim.ts";
import { type Gliding, glidingOf, glidingParameters } from "../glide/gliding.ts";
import { glidingErrors, glidingSources, noTrimError, refuseTurnOfNone, trimOr } from "../glide/gliding-words.ts";
import { sampleGlider } from "../glide/sample-gliders.ts";
import type { SteadyFlight } from "../glide/steady-flight.ts";
import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import type { Glider } from "../shape/glider-record.ts";
import { define, number, record } from "../spec.ts";
import { settingParameters } from "./setting-parameters.ts";

/** `rolling_tendency(glider)`: what a wing built crooked does to a glider that flies straight. */
export const rollingTendency = define({
  name: "rolling_tendency",
  summary: "How much a glider whose halves differ rolls and yaws in straight flight, and the twist that would cure it.",
  topic: "righting",
  parameters: { ...glidingParameters, tail_turn: settingParameters.tail_turn },
  result: record(
    "rolling tendency",
    "what halves that differ do in straight flight",
    {
      roll: number("1", "C_l: rolling moment of straight flight at trim, to the right, on area and span"),
      yaw: number("1", "C_n: yawing moment, nose to the right"),
      roll_rate: number("deg/s", "steady rolling that its damping would hold against that moment, to the right"),
      helix: number("deg", "angle p·b/2V at which the tips then go up and down"),
      cure: number("deg", "washout to give the right half of the wing to take the roll away; the left half below 0"),
    },
    ({ roll_rate, cure }) =>
      Math.abs(roll_rate) < degrees(0.05)
        ? "does not roll"
        : `rolls ${numberText(Math.abs(roll_rate), "deg/s")} to the ${roll_rate > 0 ? "right" : "left"}; ${numberText(Math.abs(cure), "deg")} more washout ${cure > 0 ? "right" : "left"} cures it`,
  ),
  formula: "roll_rate = −(2V/b)·C_l / C_lp at the trim of the glider as it is, flying straight",
  errors: [...glidingErrors, noTrimError],
  assumptions: [
    "Held straight: the glider itself soon slips and turns; the circle it comes to is told by circle(glider).",
    "The cure turns all panels of one half alike and takes the roll away, not the yaw that the difference in drag leaves.",
  ],
  sources: [{ text: "Rolling moment against roll damping: p = −(2V/b)·C_l/C_lp", mark: "derived" }, ...glidingSources],
  examples: [
    {
      summary: "a glider with equal halves does not roll",
      arguments: { glider: sampleGlider },
      result: { roll: 0, roll_rate: 0, cure: 0 },
    },
  ],
  isSlow: true,
  compute: ({ tail_turn, ...given }, refuse) => {
    refuseTurnOfNone(given.glider, { tail_turn }, refuse);
    const gliding = glidingOf(given, refuse);
    const flight = trimOr(findTrim(gliding, tail_turn), gliding, refuse);
    const { area, span } = gliding.glider.wing;
    const { roll, yaw } = momentsAt(gliding, flight, 0);
    const small = 0.01;
    const damping = (momentsAt(gliding, flight, small).roll - momentsAt(gliding, flight, -small).roll) / (2 * small);
    const rolling = roll === 0 ? 0 : -roll / damping;
    const turned = glidingOf({ ...given, glider: washedOut(given.glider, small) }, refuse);
    const byTwist = (momentsAt(turned, flight, 0).roll - roll) / small;
    const perArea = 2 / (gliding.density * flight.speed ** 2 * area * span);
    return {
      roll: roll * perArea,
      yaw: yaw * perArea,
      roll_rate: rolling * flight.speed,
      helix: (rolling * span) / 2,
      cure: roll === 0 ? 0 : -roll / byTwist,
    };
  },
});

/** Rolling and yawing moment in N m in straight flight, turning to the right by so many radians a metre. */
function momentsAt(gliding: Gliding, { angle, speed, tail }: SteadyFlight, rollPerMetre: number) {
  const state = new Float64Array(stateCount);
  state[flowState.u] = speed * Math.cos(angle);
  state[flowState.w] = speed * Math.sin(angle);
  state[flowState.p] = speed * rollPerMetre;
  state[flowState.tailplane] = tail * (state[flowState.u] as number);
  const loads = new Float64Array(6);
  gliding.addAll(state, loads);
  return { roll: settled(loads[3] as number), yaw: settled(loads[5] as number) };
}

/** Equal halves leave nothing but rounding. */
const settled = (moment: number): number => (Math.abs(moment) < 1e-13 ? 0 : moment);

/** The same glider with the right half of its wing turned nose-down. */
function washedOut(glider: Glider, angle: number): Glider {
  const { wing } = glider;
  const right = { ...wing.right, twist: wing.right.twist.map((each) => each + angle) };
  return { ...glider, wing: { ...wing, right, mirrored: false } };
}
