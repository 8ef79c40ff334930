import { glidingParameters } from "../glide/gliding.ts";
import { sampleGlider } from "../glide/sample-gliders.ts";
import { define, record } from "../spec.ts";
import {
  lateralModesOf,
  lateralModesRecord,
  longitudinalModesOf,
  longitudinalModesRecord,
} from "../stability/mode-records.ts";
import { aimOf } from "./aim.ts";
import { disturbanceMatrix, lateralPart, longitudinalPart } from "./linear.ts";
import { settingParameters } from "./setting-parameters.ts";

/** `modes(glider)`: how small disturbances of its own steady glide die away or grow. */
export const modes = define({
  name: "modes",
  summary: "The modes of a glider about its steady glide: short period, phugoid, roll, spiral and Dutch roll.",
  topic: "righting",
  parameters: { ...glidingParameters, ...settingParameters },
  result: record(
    "modes",
    "modes of a glider about its steady glide",
    { longitudinal: longitudinalModesRecord, lateral: lateralModesRecord },
    ({ longitudinal, lateral }) => `${longitudinal.verdict}. ${lateral.verdict}`,
  ),
  formula: "roots of the matrix of small disturbances, by differences of the full equations of motion about the trim",
  errors: [
    "The glider has no balance, no inertia, or no trim.",
    "It comes to no steady glide, because it turns ever tighter.",
  ],
  assumptions: [
    "Small disturbances; lattice, sections, apparent mass and downwash lag as in recovery.",
    "Where the steady glide is a circle, what couples the two groups of modes is left out.",
  ],
  sources: [{ text: "B. Etkin, L. D. Reid, Dynamics of Flight, 3rd ed. 1996, chapter 6", mark: "from memory" }],
  examples: [
    {
      summary: "24 g on a wing of 580 cm² with raised tips",
      arguments: { glider: sampleGlider },
      // As computed, but a bank of one degree let go and flown goes as they say (flown.test.ts).
      result: {
        longitudinal: {
          short_period: { rate: -17.96, damping_ratio: 1.037 },
          phugoid: { rate: -0.314, period: 5.148 },
          usual: true,
        },
        lateral: {
          roll: { rate: -33.65 },
          spiral: { half_time: 1.0652 },
          dutch_roll: { period: 1.1903, damping_ratio: 0.1998 },
          joined: false,
        },
      },
      tolerance: 5e-3,
    },
  ],
  isSlow: true,
  compute: (given, refuse) => {
    const { body, circle } = aimOf(given, { tail: given.tail_turn, rudder: given.fin_turn }, refuse);
    const matrix = disturbanceMatrix(body, circle);
    return {
      longitudinal: longitudinalModesOf(longitudinalPart(matrix), refuse),
      lateral: lateralModesOf(lateralPart(matrix), refuse),
    };
  },
});
