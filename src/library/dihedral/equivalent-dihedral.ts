import { degrees } from "../numerics/degrees.ts";
import { integrateProduct } from "../numerics/integrate-product.ts";
import { threePanelWing, tipDihedralWing } from "../shape/sample-wings.ts";
import { wingStrips } from "../shape/strips.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { define, number } from "../spec.ts";

/** `equivalent_dihedral(wing)`: the plain V that rolls as much per sideslip, by the strip rule. */
export const equivalentDihedral = define({
  name: "equivalent_dihedral",
  summary: "The angle of the plain V that rolls as much per sideslip as this wing, by the strip rule.",
  topic: "dihedral",
  parameters: { wing: wingRecord },
  result: number("deg", "angle of each half of the equivalent V"),
  formula: "∫ Γ·c·y dy / ∫ c·y dy over the plan view, with the cant Γ, the chord c and the distance y from the centre",
  errors: [],
  assumptions: [
    "A rule for small angles: exact_equivalent_dihedral takes sines, cosines and the height of the tips, and gives less for strong breaks.",
    "Each strip lifts by itself alone; the flow between the panels takes off some more.",
    "Where the halves differ, both count together.",
  ],
  sources: [
    {
      text: "Free-flight practice: panel area × panel dihedral × distance of the panel's middle, added up and divided by the same without dihedral",
      mark: "verified",
    },
    { text: "Strip theory of the rolling moment in sideslip, small angles", mark: "derived" },
  ],
  examples: [
    {
      summary: "three panels at 3, 8 and 20 deg with corners at y 0, 200, 400 and 500 mm",
      arguments: { wing: threePanelWing },
      result: degrees(0.1308 / 0.0125),
    },
    {
      summary: "flat centre, 20 deg tips from half of the plan view, constant chord: three quarters of 20 deg",
      arguments: { wing: tipDihedralWing },
      result: degrees(15),
    },
  ],
  compute: ({ wing }) => {
    let moment = 0;
    let arm = 0;
    for (const { width, cant, root, tip } of wingStrips(wing)) {
      const weight = integrateProduct(width, root.chord, tip.chord, root.y, tip.y);
      moment += cant * weight;
      arm += weight;
    }
    return moment / arm;
  },
});
