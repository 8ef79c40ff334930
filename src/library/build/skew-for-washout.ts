import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { define, number } from "../spec.ts";

/** `skew_for_washout(washout, break)`. */
export const skewForWashout = define({
  name: "skew_for_washout",
  summary: "How far askew to cut a joint so that its fold alone gives the outer panel a washout.",
  topic: "build",
  parameters: {
    washout: number("deg", "wanted nose-down angle of the outer panel about its own span, as a wing tells it", {
      above: -degrees(30),
      below: degrees(30),
    }),
    break: number("deg", "angle added at the joint, seen from the front", { above: -degrees(90), below: degrees(90) }),
  },
  result: number("deg", "angle of the joint line to the flow; below 0 its trailing-edge end lies farther in"),
  formula: "tan skew = −tan washout / sin break",
  errors: ["The break is too small: the line would have to lie more than 30 deg askew."],
  assumptions: ["The inner panel lies level."],
  sources: [{ text: "The oblique joint, solved for its skew", mark: "derived" }],
  examples: [
    {
      summary: "1 deg of washout from a break of 11 deg",
      arguments: { washout: degrees(1), break: degrees(11) },
      result: -Math.atan(Math.tan(degrees(1)) / Math.sin(degrees(11))),
    },
  ],
  compute: ({ washout, break: bend }, refuse) => {
    const skew = washout === 0 ? 0 : -Math.atan(Math.tan(washout) / Math.sin(bend));
    if (!(Math.abs(skew) <= degrees(30))) {
      refuse(
        "washout",
        `A break of ${numberText(bend, "deg")} cannot carry ${numberText(washout, "deg")} of washout: the joint line would lie ` +
          `${numberText(Math.abs(skew), "deg")} askew. Ask for less washout, break more, or warp the panel instead.`,
      );
    }
    return skew;
  },
});
