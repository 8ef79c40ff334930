import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { fold } from "../shape/half.ts";
import { define, number, record } from "../spec.ts";

const obliqueRecord = record(
  "oblique_joint",
  "a joint cut askew",
  {
    fold: number("deg", "fold about the joint line"),
    bevel: number("deg", "bevel of each edge, square to the joint line: half the fold"),
    incidence: number("deg", "nose-up angle of the outer panel, told square to the inner one; below 0 is washout"),
    twist: number("deg", "the same about the outer panel's own span"),
    per_degree: number("1", "nose-up angle that one degree more of skew gives"),
  },
  ({ fold, incidence }) =>
    `folds by ${numberText(fold, "deg")}, ${numberText(Math.abs(incidence), "deg")} of ${incidence < 0 ? "washout" : "wash-in"}`,
);

/** `oblique_joint(break, skew)`. */
export const obliqueJoint = define({
  name: "oblique_joint",
  summary: "Fold, bevel and twist of a joint whose line does not run along the flow.",
  topic: "build",
  parameters: {
    break: number("deg", "angle added at the joint, seen from the front", { above: -degrees(90), below: degrees(90) }),
    skew: number("deg", "angle of the joint line to the flow, above 0 where its trailing-edge end lies farther out", {
      above: -degrees(90),
      below: degrees(90),
    }),
  },
  result: obliqueRecord,
  formula: "tan fold = tan break / cos skew; tan incidence = tan break · tan skew; tan twist = sin break · tan skew",
  errors: [],
  assumptions: [
    "The inner panel lies level.",
    "A line that runs outward towards the leading edge gives washout. A little skew hardly changes the bevel, but it sets the tip's incidence: the main hidden warp.",
  ],
  sources: [{ text: "A plane turned about a line within another: slopes of the two traces", mark: "derived" }],
  examples: [
    {
      summary: "a break of 20 deg cut 5 deg askew, outward to the leading edge: 1.82 deg of washout",
      arguments: { break: degrees(20), skew: degrees(-5) },
      result: { fold: degrees(20.07), bevel: degrees(10.035), incidence: degrees(-1.824) },
      tolerance: 3e-4,
    },
  ],
  compute: ({ break: bend, skew }) => {
    const angle = fold(bend, skew);
    const slope = Math.tan(bend) * Math.tan(skew);
    return {
      fold: angle,
      bevel: angle / 2,
      incidence: Math.atan(slope),
      twist: Math.atan(Math.sin(bend) * Math.tan(skew)),
      // d atan(tan G · tan λ)/dλ.
      per_degree: Math.tan(bend) / Math.cos(skew) ** 2 / (1 + slope ** 2),
    };
  },
});
