import { degrees } from "../numerics/degrees.ts";
import { define, number } from "../spec.ts";

/** `spiral_parameter(arm, span, dihedral, lift_coefficient)`. */
export const spiralParameter = define({
  name: "spiral_parameter",
  summary: "A rule of thumb for the spiral: above 5 a glider tends to roll upright by itself.",
  topic: "stability",
  parameters: {
    arm: number("mm", "from the balance point back to a quarter of the fin's mean chord"),
    span: number("mm", "span of the wing", { above: 0 }),
    dihedral: number("deg", "equivalent dihedral"),
    lift_coefficient: number("1", "lift coefficient of the glide", { above: 0 }),
  },
  result: number("1", "spiral parameter: 5 is neutral"),
  formula: "(arm / span) · (dihedral / 1 deg) / lift_coefficient",
  errors: [],
  assumptions: [
    "For display and comparison only: with the flow computed, a glider of 5.5 can still diverge.",
    "Yaw damping is taken to be the fin's alone.",
  ],
  sources: [
    {
      text: "M. Drela, Basic Aircraft Design Rules, MIT Unified Engineering, 2006: l_v·Υ/(b·C_L), Υ in degrees",
      mark: "from memory",
    },
  ],
  examples: [
    {
      summary: "fin 230 mm back, 460 mm span, 9 deg, lift coefficient 0.6",
      arguments: { arm: 0.23, span: 0.46, dihedral: degrees(9), lift_coefficient: 0.6 },
      result: 7.5,
    },
  ],
  compute: ({ arm, span, dihedral, lift_coefficient }) => ((arm / span) * (dihedral / degrees(1))) / lift_coefficient,
});
