import { efficiency, efficiencySource } from "../flow/induced-drag.ts";
import { degrees } from "../numerics/degrees.ts";
import { plainVWing, tipDihedralWing } from "../shape/sample-wings.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { define, number } from "../spec.ts";

/** `sink_cost(wing, lift_coefficient, other_drag, efficiency)`: what the tilt of the panels costs in the glide. */
export const sinkCost = define({
  name: "sink_cost",
  summary: "By how much the bend of a wing makes a glider sink faster than the same panels laid flat.",
  topic: "dihedral",
  parameters: {
    wing: wingRecord,
    lift_coefficient: number("1", "lift coefficient of the sections, bent and flat", { above: 0, default: 0.6 }),
    other_drag: number("1", "drag coefficient of everything but the induced drag, on the area as cut", {
      above: 0,
      default: 0.045,
    }),
    efficiency,
  },
  result: number("%", "share by which the sink grows"),
  formula:
    "m^(−3/2)·((1 − k) + k·m²·(developed_span/span)²) − 1, with m = area/developed_area, and k the share of the induced drag in all drag, laid flat",
  errors: [],
  assumptions: [
    "The same panels, mass and lift coefficient of the sections, bent and laid flat; so lift is down by 1 − m, the mean cosine of the cants, and the glider flies faster by 1/√m.",
    "Profile drag, tail and body keep their drag coefficients; the change of the Reynolds number is left out.",
    "Induced drag goes by the span of the plan view at the same efficiency. Raised tips do a little better than that.",
    "Shallow path. Of a plain V it comes to cos^(−3/2) of the cant, whatever the drag: three quarters of what tilt_loss says.",
    "The bend alone: what joints and their glue weigh is not in it.",
  ],
  sources: [
    { text: "Sink = drag · speed / weight of wings that carry the same weight", mark: "derived" },
    efficiencySource,
  ],
  examples: [
    {
      summary: "a plain V at 12 deg",
      arguments: { wing: plainVWing },
      result: Math.cos(degrees(12)) ** -1.5 - 1,
    },
    {
      summary: "flat centre, 20 deg tips, even chord: area and span shrink alike, so induced drag plays no part either",
      arguments: { wing: tipDihedralWing, lift_coefficient: 0.8, other_drag: 0.03 },
      result: (0.5 + 0.5 / Math.cos(degrees(20))) ** 1.5 - 1,
    },
  ],
  compute: ({ wing, lift_coefficient, other_drag, efficiency }) => {
    const shrunk = wing.area / wing.developed_area;
    const induced = (lift_coefficient ** 2 * wing.developed_area) / (Math.PI * efficiency * wing.developed_span ** 2);
    const share = induced / (induced + other_drag);
    // Speed grows by m^−½ and dynamic pressure by 1/m; profile drag goes with that, induced drag as 1/(q·span²).
    const narrower = shrunk * (wing.developed_span / wing.span);
    return shrunk ** -1.5 * (1 - share + share * narrower ** 2) - 1;
  },
});
