import { degrees } from "../numerics/degrees.ts";
import { integrateProduct } from "../numerics/integrate-product.ts";
import { tipDihedralWing } from "../shape/sample-wings.ts";
import { wingStrips } from "../shape/strips.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { define, number } from "../spec.ts";

/** `tilt_loss(wing)`: share of the lift slope that the tilt of the panels costs. */
export const tiltLoss = define({
  name: "tilt_loss",
  summary: "The share of lift slope that the tilt of the panels costs, against the same panels laid flat.",
  topic: "dihedral",
  parameters: { wing: wingRecord },
  result: number("%", "share of the lift slope lost"),
  formula: "1 − ∫ c·cos²Γ ds / ∫ c ds along the panels, with the chord c and the cant Γ",
  errors: [],
  assumptions: [
    "It is lift slope at a fixed angle of attack, not sink: a glider in trim loses about half of this in lift, and its sink rises by less.",
    "Each strip lifts by itself alone.",
  ],
  sources: [
    { text: "P. E. Purser, J. P. Campbell, NACA TR 823 (1945): lift slope of a V falls by cos²Γ", mark: "from memory" },
    { text: "Strip theory, each panel by its own cos²Γ", mark: "derived" },
  ],
  examples: [
    {
      summary: "flat centre, 20 deg tips: the tips' share of the area as cut, times sin² 20 deg",
      arguments: { wing: tipDihedralWing },
      result: (Math.sin(degrees(20)) ** 2 * 0.25) / (0.25 + 0.25 * Math.cos(degrees(20))),
    },
  ],
  compute: ({ wing }) => {
    let lost = 0;
    let all = 0;
    for (const { length, cant, root, tip } of wingStrips(wing)) {
      const area = integrateProduct(length, root.chord, tip.chord, 1, 1);
      // sin² instead of 1 − cos²: nothing is lost to rounding where the cants are small.
      lost += area * Math.sin(cant) ** 2;
      all += area;
    }
    return lost / all;
  },
});
