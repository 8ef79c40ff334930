import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { boolean, define, list, number, record } from "../spec.ts";
import { turbulent } from "./friction.ts";
import { measuredParameter, measuredPolar } from "./measured-polar.ts";
import { type Polar, stripForces } from "./polar.ts";
import { sampleSection } from "./sample-sections.ts";
import { dragSpread, highestReynolds, lowestReynolds, testedFrom, testedTo, thinPolar } from "./section.ts";
import { sectionRecord } from "./section-record.ts";
import { sectionAssumptions, sectionSources } from "./section-sources.ts";

const sectionPolarRecord = record(
  "section_polar",
  "lift and drag of a section over its angle of attack",
  {
    reynolds: number("1", "Reynolds number"),
    angle: list(number("deg", "angle of attack of the chord line"), "angles of attack of the chord line"),
    lift_coefficient: list(number("1", "lift coefficient"), "lift at each angle"),
    drag_coefficient: list(number("1", "drag coefficient"), "drag at each angle"),
    drag_low: list(number("1", "drag coefficient"), "drag at each angle, as low as it may be"),
    drag_high: list(number("1", "drag coefficient"), "drag at each angle, as high as it may be"),
    lift_slope: number("1/rad", "lift slope before the stall"),
    zero_lift_angle: number("deg", "angle of attack without lift"),
    max_lift: number("1", "largest lift coefficient, ±0.1"),
    stall_angle: number("deg", "angle of attack of the largest lift"),
    moment: number("1", "nose-up moment coefficient about a quarter of the chord"),
    best_ratio: number("1", "most lift over drag among the angles"),
    spread: number("%", "share by which the drag may differ"),
    tested: boolean("whether tests of such sections reach this Reynolds number"),
  },
  (polar) =>
    `${numberText(polar.best_ratio, "1")} lift over drag at best, lift up to ${numberText(polar.max_lift, "1")}, at a Reynolds number of ${numberText(polar.reynolds, "1")}`,
);

/** `section_polar(section, reynolds, from, to, count, measured)`. */
export const sectionPolar = define({
  name: "section_polar",
  summary: "Lift and drag of a thin section over its angle of attack, through the stall, at a Reynolds number.",
  topic: "air",
  parameters: {
    section: sectionRecord,
    reynolds: number("1", "Reynolds number of the chord", { min: lowestReynolds, max: highestReynolds }),
    from: number("deg", "first angle of attack", { min: -degrees(20), max: degrees(20), default: -degrees(6) }),
    to: number("deg", "last angle of attack", { min: -degrees(20), max: degrees(20), default: degrees(14) }),
    count: number("1", "how many angles", { min: 2, max: 500, default: 41 }),
    measured: measuredParameter,
  },
  result: sectionPolarRecord,
  formula:
    "lift as in section_lift; drag as in section_drag, and past the stall friction + lift·tan angle: the force comes to stand square on the chord",
  errors: [
    "The last angle is not above the first, or count is no whole number.",
    "The measured polar has too few rows at a Reynolds number, two of equal lift, or angles that do not fit.",
  ],
  assumptions: [
    ...sectionAssumptions,
    "A measured polar takes the place of the model: between its Reynolds numbers it is interpolated over their logarithm, beyond them its least drag goes on as turbulent friction does. Its largest lift is taken for the stall.",
    "Past the stall it says little: air that has left a section comes and goes.",
  ],
  sources: sectionSources,
  examples: [
    {
      summary: "a flat-bottomed section of 4.2 % at 1 and 4 deg, at a Reynolds number whose logarithm is 5",
      arguments: { section: sampleSection, reynolds: 100_000, from: degrees(1), to: degrees(4), count: 2 },
      result: {
        lift_coefficient: [5.7 * (degrees(1) + 0.042), 5.7 * (degrees(4) + 0.042)],
        drag_coefficient: [
          2.3 * 1.084 * 1.105 * turbulent(1e5) +
            (0.4 * (5.7 * (degrees(1) + 0.042) - 0.084 * Math.PI) ** 2) / (2 * Math.PI),
          2.3 * 1.084 * 1.105 * turbulent(1e5) +
            (0.4 * (5.7 * (degrees(4) + 0.042) - 0.084 * Math.PI) ** 2) / (2 * Math.PI),
        ],
        lift_slope: 5.7,
        stall_angle: (0.88 + 0.1) / 5.7 - 0.042,
        spread: 0.2,
        tested: true,
      },
    },
    {
      summary: "a measured polar of three rows, at its own Reynolds number",
      arguments: {
        section: sampleSection,
        reynolds: 40_000,
        from: degrees(2),
        to: degrees(6),
        count: 3,
        measured: {
          reynolds: [40_000, 40_000, 40_000],
          angle: [degrees(0), degrees(4), degrees(12)],
          lift_coefficient: [0.25, 0.65, 1],
          drag_coefficient: [0.025, 0.03, 0.06],
        },
      },
      result: { lift_slope: 0.4 / degrees(4), zero_lift_angle: -degrees(2.5), max_lift: 1 },
    },
  ],
  compute: ({ section, reynolds, from, to, count, measured }, refuse) => {
    if (to <= from) refuse("to", "The last angle is not above the first. Give a larger one.");
    if (!Number.isInteger(count)) refuse("count", "count must be a whole number.");
    const thin = thinPolar(section);
    const polar: Polar = measured ? measuredPolar(measured, thin, refuse) : thin;
    const slope = polar.slope(reynolds);
    const straight = (angle: number) => slope * (angle - polar.zeroLiftAngle);
    const angle = Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
    const forces = angle.map((each) => stripForces(polar, straight(each), reynolds));
    const drag = forces.map((each) => each.drag);
    const spread = dragSpread(reynolds);
    return {
      reynolds,
      angle,
      lift_coefficient: forces.map((each) => each.lift),
      drag_coefficient: drag,
      drag_low: drag.map((each) => each * (1 - spread)),
      drag_high: drag.map((each) => each * (1 + spread)),
      lift_slope: slope,
      zero_lift_angle: polar.zeroLiftAngle + 0,
      max_lift: polar.maxLift(reynolds),
      stall_angle: polar.zeroLiftAngle + (polar.maxLift(reynolds) + Math.min(0.1, polar.maxLift(reynolds) / 2)) / slope,
      moment: polar.moment + 0,
      best_ratio: Math.max(...forces.map((each) => each.lift / each.drag)),
      spread,
      tested: reynolds >= testedFrom && reynolds <= testedTo,
    };
  },
});
