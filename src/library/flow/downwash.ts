import { tipDihedralWing } from "../shape/sample-wings.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { define, number } from "../spec.ts";
import { slopeOfWing } from "./finite-wing.ts";
import { sectionSlope, sectionSlopeSource } from "./section-slope.ts";
import { downwashPerLift } from "./wake.ts";

/** What holds of every downwash found from a straight lifting line. */
export const wakeAssumptions: readonly string[] = [
  "The wing is taken for a straight lifting line through a quarter of its mean aerodynamic chord, its wake for a flat sheet straight behind it that does not roll up; cant and sweep are left out.",
  "Lift is spread halfway between the chords and an ellipse, told as part ellipse and part even loading.",
  "The middle of the tail stands for all of it. A flow solution of one wing and tail found 0.300 where this finds 0.313.",
];

/** Where it comes from. */
export const wakeSources = [
  { text: "Law of Biot and Savart for a lifting line with straight trailing vortices", mark: "derived" },
  { text: "O. Schrenk 1940, NACA TM 948: loading halfway between chords and ellipse", mark: "from memory" },
] as const;

/** `downwash(wing, x, z, section_slope)`. */
export const downwash = define({
  name: "downwash",
  summary: "How much of a change in the wing's angle of attack its downwash takes away at a place behind it.",
  topic: "flow",
  parameters: {
    wing: wingRecord,
    x: number("mm", "the place, aft of the wing root's leading edge: the quarter chord of the tail"),
    z: number("mm", "the place, above the wing root's lower face; negative below it", { default: 0 }),
    section_slope: sectionSlope,
  },
  result: number("%", "downwash angle gained for each degree of angle of attack"),
  formula:
    "lift_slope · (area / span) / (8π) · (share of the ellipse · its wake + rest · even wake); even: s/(s² + z²)·2·(1 + x/r) + 2·s·x/(r·(x² + z²)), with half span s, distance r of a tip, x aft of the quarter chord",
  errors: ["The place does not lie behind the wing."],
  assumptions: wakeAssumptions,
  sources: [...wakeSources, sectionSlopeSource],
  examples: [
    {
      summary: "even chords, 1 m span: half a span behind the line of quarter chords, level with it",
      arguments: { wing: tipDihedralWing, x: 0.5225 },
      // Per lift coefficient, each loading for one half: the ellipse has the complete elliptic integral E(k² = ½) = 1.35064.
      result:
        slopeOfWing(tipDihedralWing, 5.7) *
        ((0.09 / (2 * Math.PI)) * (1 + (2 / Math.PI) * Math.SQRT2 * 1.3506438810476755) +
          (0.09 / (16 * Math.PI)) * (4 + 4 * Math.SQRT2)),
      tolerance: 1e-8,
    },
  ],
  compute: ({ wing, x, z, section_slope }, refuse) => {
    if (!(x > wing.mac_x + wing.mac)) refuse("x", "The place must lie behind the wing: give it a larger x.");
    return slopeOfWing(wing, section_slope) * downwashPerLift(wing, x - wing.mac_x - wing.mac / 4, z);
  },
});
