import { glidingParameters } from "../glide/gliding.ts";
import { sampleGlider } from "../glide/sample-gliders.ts";
import { degrees } from "../numerics/degrees.ts";
import { define, number } from "../spec.ts";
import { aimOf } from "./aim.ts";
import { flown } from "./flown.ts";
import { recoveryRecord } from "./recovery-record.ts";
import { settingParameters } from "./setting-parameters.ts";

const parameters = {
  ...glidingParameters,
  bank: number("deg", "bank at which it is let go, to the right; to the left below 0", {
    above: -degrees(180),
    below: degrees(180),
    default: degrees(30),
  }),
  speed_share: number("1", "speed at which it is let go, over that of its trim", { min: 0.3, max: 3, default: 1 }),
  seconds: number("s", "how long it is watched", { min: 1, max: 60, default: 12 }),
  ...settingParameters,
} as const;

/** `recovery(glider, bank: 30 deg)`: a glider let go in a bank, flown in all six degrees of freedom. */
export const recovery = define({
  name: "recovery",
  summary: "What a glider does that is let go in a bank: whether and when it settles, and the height that it costs.",
  topic: "righting",
  parameters,
  result: recoveryRecord,
  formula:
    "Newton's and Euler's equations in six degrees of freedom, with lattice, sections, apparent mass and downwash lag; let go at the trim's pitch and angle of attack, without sideslip or turning",
  errors: [
    "The glider has no balance, no inertia, or no trim.",
    "It comes to no steady glide, because it turns ever tighter.",
  ],
  assumptions: [
    "Settled: for good within 5° of the trimmed bank and a tenth of its speed. Free flight aims at a circle, seldom at wings level.",
    "Still air, a rigid glider, flow that follows the motion at once but for the lag of the downwash at the tail.",
    "The wake stays straight behind the wing; past the stall lift falls by 15 % in 5°, without hysteresis.",
    "The model ends where a strip is wholly stalled, beyond 15° of sideslip and below half of the trimmed speed; the result says so.",
    "The spiral's times are of small banks; a weak spiral settles differently from large ones, since the phugoid takes part.",
  ],
  sources: [
    {
      text: "B. Etkin, L. D. Reid, Dynamics of Flight, 3rd ed. 1996, section 4.7: equations of motion",
      mark: "from memory",
    },
    { text: "T. Theodorsen, NACA Report 496 (1935): apparent mass of a strip", mark: "from memory" },
    { text: "Release at trim speed and a bank of 30° or 60°", mark: "common practice" },
  ],
  examples: [
    {
      summary: "raised tips settle from a bank of 30 deg",
      arguments: { glider: sampleGlider },
      result: { verdict: "settles" },
    },
  ],
  isSlow: true,
  compute: (given, refuse) => {
    const aimed = aimOf(given, { tail: given.tail_turn, rudder: given.fin_turn }, refuse);
    const { u, w, pitch } = aimed.circle;
    const [bank, share] = [given.bank, given.speed_share];
    return flown(aimed, { u: u * share, w: w * share, angles: { bank, pitch, heading: 0 } }, given.seconds, refuse);
  },
});
