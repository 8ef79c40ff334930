import { partRecord } from "../mass/part-record.ts";
import { degrees } from "../numerics/degrees.ts";
import { define, type FieldValues, number, type Refuse } from "../spec.ts";
import { staticMargin } from "../stability/static-margin.ts";
import { finRecord } from "./fin-record.ts";
import { buildFuselageStick } from "./fuselage-stick.ts";
import { fuselageStickRecord } from "./fuselage-stick-record.ts";
import { type Glider, gliderRecord } from "./glider-record.ts";
import { taperedFin, taperedTailplane } from "./sample-tails.ts";
import { plainVWing, threePanelWing } from "./sample-wings.ts";
import { tailplaneRecord } from "./tailplane-record.ts";
import { wingRecord } from "./wing-record.ts";

const parameters = {
  wing: wingRecord,
  tailplane: { ...tailplaneRecord, optional: true },
  fin: { ...finRecord, optional: true },
  stick: { ...fuselageStickRecord, optional: true },
  balance: { ...partRecord, summary: "mass and balance point of all of it, as balance gives it", optional: true },
  neutral_x: number("mm", "x of the neutral point, as neutral_point gives it", { optional: true }),
  seat_height: number("mm", "height of the wing root's lower face at its leading edge, up", { default: 0 }),
  seat_angle: number("deg", "nose-up angle of the wing's seat", {
    above: -degrees(45),
    below: degrees(45),
    default: 0,
  }),
} as const;

/** Of the examples: 6.2 g that balance 38 mm behind the wing root. */
const balanced = { mass: 0.0062, x: 0.038, y: 0, z: 0.011, ixx: 3e-5, iyy: 1e-5, izz: 4e-5, ixy: 0, ixz: 1e-7, iyz: 0 };
const bodyStick = buildFuselageStick({ front_x: -0.09, rear_x: 0.3, width: 0.006, height: 0.009, z: 0 });

/** `glider(wing, tailplane, fin, stick, balance, …)`: the parts of a glider as one, for drawings and for what flies. */
export const glider = define({
  name: "glider",
  summary: "A whole glider: a wing on its seat, with tailplane, fin, stick, balance point and neutral point as given.",
  topic: "shape",
  parameters,
  result: gliderRecord,
  formula:
    "decalage = seat_angle − tailplane.incidence; tail_arm = tailplane.quarter_x − balance.x; static_margin = (neutral_x − balance.x) / wing.mac",
  errors: [],
  assumptions: [
    "All parts are told in the same axes: x aft from the leading edge of the wing's root, y to the right tip, z up.",
    "The seat's angle turns the whole wing about the leading edge of its root.",
    "What is not given is left out, and so is what follows from it; a wing alone is a glider without a tail.",
  ],
  sources: [
    { text: "Positions and angles against each other, by their definitions", mark: "derived" },
    ...staticMargin.sources,
  ],
  examples: [
    {
      summary: "a wing at 2 deg, 12 mm up, with tail, stick, balance point and neutral point",
      arguments: {
        wing: threePanelWing,
        tailplane: taperedTailplane,
        fin: taperedFin,
        stick: bodyStick,
        balance: balanced,
        neutral_x: 0.049,
        seat_height: 0.012,
        seat_angle: degrees(2),
      },
      // Of this wing ∫ c² dy is 0.01192 m³ and the area 0.108 m².
      result: {
        seat_height: 0.012,
        decalage: degrees(1.1),
        tail_arm: 0.25745 - 0.038,
        static_margin: 0.011 / (0.01192 / 0.108),
        neutral_x: 0.049,
      },
    },
    {
      summary: "a wing and a tailplane, before anything is weighed",
      arguments: { wing: plainVWing, tailplane: taperedTailplane, seat_angle: degrees(1.5) },
      result: { wing: plainVWing, tailplane: taperedTailplane, seat_height: 0, decalage: degrees(0.6) },
    },
  ],
  compute: (given, refuse) => buildGlider(given, refuse),
});

/** The glider of these parts. Fields of what was not given are not there at all. */
export function buildGlider(given: FieldValues<typeof parameters>, refuse: Refuse): Glider {
  const { wing, tailplane, fin, stick, balance, neutral_x, seat_height, seat_angle } = given;
  return {
    wing,
    ...(tailplane && { tailplane }),
    ...(fin && { fin }),
    ...(stick && { stick }),
    ...(balance && { balance }),
    ...(neutral_x !== undefined && { neutral_x }),
    seat_height,
    seat_angle,
    ...(tailplane && { decalage: seat_angle - tailplane.incidence }),
    ...(balance &&
      neutral_x !== undefined && {
        static_margin: staticMargin.compute({ neutral_x, balance_x: balance.x, mac: wing.mac }, refuse),
      }),
    ...(tailplane && balance && { tail_arm: tailplane.quarter_x - balance.x }),
  };
}
