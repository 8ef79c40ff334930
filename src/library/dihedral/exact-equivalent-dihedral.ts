import { degrees } from "../numerics/degrees.ts";
import { integrateProduct } from "../numerics/integrate-product.ts";
import { plainVWing, taperedTipWing } from "../shape/sample-wings.ts";
import { wingStrips } from "../shape/strips.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { define, number } from "../spec.ts";

/** `exact_equivalent_dihedral(wing)`: the same V, with sines and cosines and the height of the tips. */
export const exactEquivalentDihedral = define({
  name: "exact_equivalent_dihedral",
  summary: "The angle of the plain V of the same plan view that rolls as much per sideslip, without small angles.",
  topic: "dihedral",
  parameters: { wing: wingRecord },
  result: number("deg", "angle of each half of the equivalent V"),
  formula:
    "the angle G with sin G / cos² G = ∫ sin Γ·(y·cos Γ + z·sin Γ)·c ds / ∫ c·y dy, with the cant Γ, the chord c, the distance y from the centre and the height z above the root",
  errors: [],
  assumptions: [
    "Each strip lifts by itself alone, square to its panel; the flow between the panels takes off some more.",
    "The moment is about the root's lower face. A balance point a little above or below changes it for the wing and its V alike.",
    "Where the halves differ, both count together.",
  ],
  sources: [
    { text: "Strip theory of the rolling moment in sideslip with the true arm of each strip", mark: "derived" },
  ],
  examples: [
    {
      summary: "level centre and 20 deg tips of equal length, tips tapered to three quarters: the rule says 14.08 deg",
      arguments: { wing: taperedTipWing },
      result: degrees(13.69),
      tolerance: 4e-4,
    },
    { summary: "a plain V is its own equivalent", arguments: { wing: plainVWing }, result: degrees(12) },
  ],
  compute: ({ wing }) => {
    let moment = 0;
    let arm = 0;
    for (const { length, width, cant, root, tip } of wingStrips(wing)) {
      const leverAt = (end: { y: number; z: number }) => end.y * Math.cos(cant) + end.z * Math.sin(cant);
      moment += Math.sin(cant) * integrateProduct(length, root.chord, tip.chord, leverAt(root), leverAt(tip));
      arm += integrateProduct(width, root.chord, tip.chord, root.y, tip.y);
    }
    // The V of that plan view has z = y tan G and ds = dy / cos G, so its moment is sin G / cos² G times the arm.
    const ratio = moment / arm;
    return Math.asin((2 * ratio) / (1 + Math.sqrt(1 + 4 * ratio ** 2)));
  },
});
