import { numberText } from "../number-text.ts";
import { define, number, record, type ValueOf } from "../spec.ts";

const balsaRecord = record(
  "balsa",
  "what balsa of a density bears",
  {
    density: number("kg/m^3", "density"),
    modulus: number("GPa", "modulus of elasticity in bending, along the grain"),
    modulus_low: number("GPa", "modulus that soft sheets may have"),
    modulus_high: number("GPa", "modulus that stiff sheets may have"),
    strength: number("MPa", "bending strength along the grain"),
    strength_low: number("MPa", "bending strength that weak sheets may have"),
    strength_high: number("MPa", "bending strength that strong sheets may have"),
    compression: number("MPa", "crushing strength along the grain"),
    shear: number("MPa", "shear strength along the grain"),
    shear_modulus_quarter: number("MPa", "shear modulus in the plane of a quarter-grain sheet (C grain)"),
    shear_modulus_tangent: number("MPa", "shear modulus in the plane of a tangent-cut sheet (A grain)"),
    cross_modulus_quarter: number("MPa", "modulus across the grain of a quarter-grain sheet (C grain)"),
    cross_modulus_tangent: number("MPa", "modulus across the grain of a tangent-cut sheet (A grain)"),
  },
  (wood) =>
    `${numberText(wood.density, "kg/m^3")}, ${numberText(wood.modulus, "GPa")}, ${numberText(wood.strength, "MPa")} in bending`,
);

/** The value of balsa in SI. */
export type Balsa = ValueOf<typeof balsaRecord>;

/** Share by which stiffness and strength of sheets of one density differ. */
const spread = 0.25;

/** `balsa(density)`: what balsa of a density bears. */
export const balsa = define({
  name: "balsa",
  summary: "Stiffness and strength of balsa from its density, with what sheets of that density differ by.",
  topic: "mass",
  parameters: { density: number("kg/m^3", "density as weighed", { min: 60, max: 380 }) },
  result: balsaRecord,
  formula:
    "modulus = 3.4 GPa · density / (160 kg/m³); strength = 21.6 MPa, compression 14.9 MPa, shear 2.1 MPa, each · density / (160 kg/m³); " +
    "shear and cross moduli are shares of 1.1 · modulus: 0.054 and 0.046 (quarter grain), 0.037 and 0.015 (tangent cut)",
  errors: [],
  assumptions: [
    "Everything grows in step with density, as tests on 60 to 380 kg/m³ found for loads along the grain.",
    "Sheets of one density differ by a quarter either way: low and high say so.",
    "12 % moisture. The density is that of the sheet as weighed; a specific gravity told on dry mass is about 12 % smaller.",
  ],
  sources: [
    {
      text: "Wood Handbook, Forest Products Laboratory FPL-GTR-190/282, table 5-5, balsa: modulus 3.4 GPa, compression 14.9 MPa",
      mark: "verified",
    },
    {
      text: "The same table: bending strength 21.6 MPa, shear 2.1 MPa; table 5-1: ratios of the moduli",
      mark: "from memory",
    },
    {
      text: "Mechanics of balsa wood, Mechanics of Materials 84 (2015) 75–90: modulus and strength linear in density",
      mark: "verified",
    },
    { text: "Spread of a quarter: three sources on one wood differ by so much", mark: "common practice" },
  ],
  examples: [
    {
      summary: "a wing's light sheet of 100 kg/m³",
      arguments: { density: 100 },
      result: {
        modulus: 2.125e9,
        modulus_low: 1.59375e9,
        modulus_high: 2.65625e9,
        strength: 13.5e6,
        compression: 9.3125e6,
        shear: 1.3125e6,
        shear_modulus_quarter: 126.225e6,
        shear_modulus_tangent: 86.4875e6,
        cross_modulus_quarter: 107.525e6,
        cross_modulus_tangent: 35.0625e6,
      },
    },
  ],
  compute: ({ density }) => balsaOf(density),
});

/** Balsa of this density, from the Wood Handbook's values at a specific gravity of 0.16 in proportion (sources above). */
export function balsaOf(density: number): Balsa {
  const share = density / 160;
  const modulus = 3.4e9 * share;
  const strength = 21.6e6 * share;
  // Bending tests read 10 % low for shear (Wood Handbook, chapter 5); the ratios are to the true modulus along the grain.
  const along = 1.1 * modulus;
  return {
    density,
    modulus,
    modulus_low: modulus * (1 - spread),
    modulus_high: modulus * (1 + spread),
    strength,
    strength_low: strength * (1 - spread),
    strength_high: strength * (1 + spread),
    compression: 14.9e6 * share,
    shear: 2.1e6 * share,
    shear_modulus_quarter: 0.054 * along,
    shear_modulus_tangent: 0.037 * along,
    cross_modulus_quarter: 0.046 * along,
    cross_modulus_tangent: 0.015 * along,
  };
}
