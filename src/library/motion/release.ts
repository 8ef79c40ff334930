import { glidingParameters } from "../glide/gliding.ts";
import { sampleGlider } from "../glide/sample-gliders.ts";
import { degrees } from "../numerics/degrees.ts";
import { define, number } from "../spec.ts";
import { aimOf } from "./aim.ts";
import { flown } from "./flown.ts";
import { recovery } from "./recovery.ts";
import { recoveryRecord } from "./recovery-record.ts";
import { settingParameters } from "./setting-parameters.ts";

/** `release(glider, speed: 2 m/s, climb: 80 deg)`: a glider that the boost leaves slow, steep or upside down. */
export const release = define({
  name: "release",
  summary: "What a glider does after the boost has left it at some speed and attitude, and the height that it takes.",
  topic: "righting",
  parameters: {
    ...glidingParameters,
    speed: number("m/s", "speed along its axis when it is let go", { above: 0, max: 40, default: 2 }),
    climb: number("deg", "its nose above the horizon", { min: -degrees(89), max: degrees(89), default: degrees(80) }),
    bank: number("deg", "its bank; 180 deg is upside down", { min: -degrees(180), max: degrees(180), default: 0 }),
    seconds: number("s", "how long it is watched", { min: 1, max: 60, default: 20 }),
    ...settingParameters,
  },
  result: recoveryRecord,
  formula: recovery.formula,
  errors: recovery.errors,
  assumptions: [
    ...recovery.assumptions,
    "The glider has left its pod: what is told of its balance is without it. It is let go along its own axis, without turning.",
    "Slow and steep it is outside the model for a moment, and says so: the height is an estimate there.",
  ],
  sources: recovery.sources,
  examples: [
    {
      summary: "let go level, at about the speed of its glide",
      arguments: { glider: sampleGlider, speed: 4, climb: 0 },
      result: { verdict: "settles" },
    },
  ],
  isSlow: true,
  compute: (given, refuse) => {
    const aimed = aimOf(given, { tail: given.tail_turn, rudder: given.fin_turn }, refuse);
    const angles = { bank: given.bank, pitch: given.climb, heading: 0 };
    return flown(aimed, { u: given.speed, w: 0, angles }, given.seconds, refuse);
  },
});
