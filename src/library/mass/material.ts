import { chosen } from "../chosen.ts";
import { numberText } from "../number-text.ts";
import { choice, define, number, record, text } from "../spec.ts";
import { materials } from "./material-data.ts";

const materialRecord = record(
  "material",
  "a material with its spread",
  {
    density: number("kg/m^3", "usual density"),
    density_low: number("kg/m^3", "density of light pieces"),
    density_high: number("kg/m^3", "density of heavy pieces"),
    modulus: number("GPa", "usual modulus of elasticity in bending, along the grain"),
    modulus_low: number("GPa", "modulus of soft pieces"),
    modulus_high: number("GPa", "modulus of stiff pieces"),
    strength: number("MPa", "usual bending strength along the grain"),
    strength_low: number("MPa", "strength of weak pieces"),
    strength_high: number("MPa", "strength of strong pieces"),
    source: text("where the values come from"),
    mark: text("how well they are grounded"),
  },
  (of) =>
    `${numberText(of.density, "kg/m^3")} (${numberText(of.density_low, "kg/m^3").split(" ")[0]} to ${numberText(of.density_high, "kg/m^3").split(" ")[0]}), ${numberText(of.modulus, "GPa")}`,
);

/** `material(name)`: density, modulus and strength by name, with their spread. */
export const material = define({
  name: "material",
  summary: "Density, stiffness and strength of a material by its name, with how far they spread.",
  topic: "mass",
  parameters: { name: choice("name of the material", Object.keys(materials)) },
  result: materialRecord,
  formula: "looked up; the grades of balsa by balsa(density)",
  errors: ["The name is none of the list."],
  assumptions: [
    "A grade of balsa is a label: one end of a plank can weigh twice the other. Weigh the blank, and use its density.",
    "Along the grain, dry (12 % moisture).",
  ],
  sources: [
    {
      text: "Balsa: 6 to 18 lb/ft³ is the run of model stock, 8 to 12 the most plentiful, the trade's average 10; no standard for grades",
      mark: "verified",
    },
    {
      text: "Wood Handbook, Forest Products Laboratory FPL-GTR-190/282, tables 5-5 and 5-6: basswood, spruce, spread of clear wood",
      mark: "from memory",
    },
    { text: "Plywood, carbon, foam: makers' usual figures", mark: "from memory" },
  ],
  examples: [
    {
      summary: "light balsa: about 6 lb/ft³, from 5 to 8",
      arguments: { name: "light balsa" },
      result: {
        density: 96,
        density_low: 80,
        density_high: 128,
        modulus: 2.04e9,
        modulus_low: 1.275e9,
        modulus_high: 3.4e9,
        strength: 12.96e6,
        mark: "common practice",
      },
    },
    {
      summary: "basswood at 12 % moisture",
      arguments: { name: "basswood" },
      result: { density: 415, modulus: 10.1e9, modulus_low: 7.878e9, strength: 60e6, strength_high: 69.6e6 },
    },
  ],
  compute: ({ name }, refuse) => {
    const { density, modulus, strength, source, mark } = chosen(name, materials, "name", refuse);
    return {
      density: density[0],
      density_low: density[1],
      density_high: density[2],
      modulus: modulus[0],
      modulus_low: modulus[1],
      modulus_high: modulus[2],
      strength: strength[0],
      strength_low: strength[1],
      strength_high: strength[2],
      source,
      mark,
    };
  },
});
