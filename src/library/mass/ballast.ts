import { numberText } from "../number-text.ts";
import { define, number, record } from "../spec.ts";
import { gather } from "./gather.ts";
import { type Part, partRecord } from "./part-record.ts";

const ballastRecord = record(
  "ballast",
  "how much ballast it takes, and what comes of it",
  { mass: number("g", "mass of the ballast"), balance: partRecord },
  (ballast) => `${numberText(ballast.mass, "g")} of ballast, ${numberText(ballast.balance.mass, "g")} in all`,
);

const example: Part = {
  mass: 0.014,
  x: 0.05,
  y: 0.001,
  z: 0.012,
  ixx: 3e-5,
  iyy: 5e-5,
  izz: 8e-5,
  ixy: 0,
  ixz: 1e-6,
  iyz: 0,
};

/** `ballast(before, wanted_x, ballast_x)`: what it takes to move the balance point. */
export const ballast = define({
  name: "ballast",
  summary: "The ballast at a given place that brings the balance point to a wanted x.",
  topic: "mass",
  parameters: {
    before: { ...partRecord, summary: "what balance() gave for the parts without ballast" },
    wanted_x: number("mm", "where the balance point is to be, aft of the origin"),
    ballast_x: number("mm", "where the ballast sits, aft of the origin"),
    ballast_y: number("mm", "where it sits, to the right; left out, in line with the balance point", {
      optional: true,
    }),
    ballast_z: number("mm", "where it sits, up; left out, as high as the balance point", { optional: true }),
  },
  result: ballastRecord,
  formula: "mass of the ballast = mass · (x − wanted_x) / (wanted_x − ballast_x)",
  errors: ["The wanted balance point does not lie between the present one and the ballast."],
  assumptions: ["The ballast counts as a point.", "x aft, y to the right tip, z up."],
  sources: [{ text: "Balance of moments about the wanted balance point", mark: "derived" }],
  examples: [
    {
      summary: "14 g balancing at 50 mm, wanted at 30 mm, clay at −80 mm",
      arguments: { before: example, wanted_x: 0.03, ballast_x: -0.08, ballast_z: 0.003 },
      result: { mass: (0.014 * 0.02) / 0.11 },
    },
    {
      summary: "the balance point is where it is wanted: no ballast",
      arguments: { before: example, wanted_x: 0.05, ballast_x: -0.08 },
      result: { mass: 0, balance: example },
    },
  ],
  compute: ({ before, wanted_x, ballast_x, ballast_y = before.y, ballast_z = before.z }, refuse) => {
    // +0 keeps a minus from a zero.
    const mass = wanted_x === before.x ? 0 : (before.mass * (before.x - wanted_x)) / (wanted_x - ballast_x) + 0;
    if (!(mass >= 0) || !Number.isFinite(mass)) {
      const place = (x: number) => numberText(x, "mm");
      refuse(
        "wanted_x",
        `Ballast at x ${place(ballast_x)} can bring the balance point only between ${place(before.x)} and there, ` +
          `not to ${place(wanted_x)}. Put it farther out on that side, or on the other side.`,
      );
    }
    return { mass, balance: gather([before, { mass, x: ballast_x, y: ballast_y, z: ballast_z }]) };
  },
});
