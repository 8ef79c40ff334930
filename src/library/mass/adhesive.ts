import { chosen } from "../chosen.ts";
import { numberText } from "../number-text.ts";
import { choice, define, type Mark, number, record, text } from "../spec.ts";

interface AdhesiveData {
  readonly density: number;
  readonly density_low: number;
  readonly density_high: number;
  readonly solids: number;
  readonly use: string;
  readonly mark: Mark;
}

const cyanoacrylate = { density: 1050, density_low: 1040, density_high: 1060, solids: 1 };

/** Adhesives by name. */
const adhesives: Readonly<Record<string, AdhesiveData>> = {
  "thin cyanoacrylate": { ...cyanoacrylate, use: "wicks into close joints and cloth", mark: "from memory" },
  "medium cyanoacrylate": { ...cyanoacrylate, use: "tacks panels in the jig", mark: "from memory" },
  "thick cyanoacrylate": { ...cyanoacrylate, use: "fills, fillets", mark: "from memory" },
  epoxy: {
    density: 1150,
    density_low: 1100,
    density_high: 1180,
    solids: 1,
    use: "lays cloth, fills gaps",
    mark: "verified",
  },
  "wood glue": {
    density: 1100,
    density_low: 1080,
    density_high: 1120,
    solids: 0.45,
    use: "gussets and fillets that are sanded",
    mark: "from memory",
  },
};

const adhesiveRecord = record(
  "adhesive",
  "an adhesive",
  {
    density: number("kg/m^3", "usual density, wet"),
    density_low: number("kg/m^3", "density of light ones"),
    density_high: number("kg/m^3", "density of heavy ones"),
    solids: number("%", "share that stays once it is dry, by mass"),
    use: text("what it is used for"),
    mark: text("how well the values are grounded"),
  },
  (of) => `${numberText(of.density, "kg/m^3")}, ${numberText(of.solids, "%")} stays: ${of.use}`,
);

/** `adhesive(name)`: what a glue weighs wet and dry. */
export const adhesive = define({
  name: "adhesive",
  summary: "Density of a glue by its name, and the share of it that stays once it is dry.",
  topic: "mass",
  parameters: { name: choice("name of the adhesive", Object.keys(adhesives)) },
  result: adhesiveRecord,
  formula: "looked up",
  errors: ["The name is none of the list."],
  assumptions: ["Density and solids serve for masses only."],
  sources: [
    { text: "Epoxy 1.15 g/cm³ for wet lay-up", mark: "verified" },
    { text: "Cyanoacrylate 1.04 to 1.06 g/cm³; wood glue 1.1 g/cm³ with about 45 % solids", mark: "from memory" },
  ],
  examples: [
    { summary: "wood glue", arguments: { name: "wood glue" }, result: { density: 1100, solids: 0.45 } },
    { summary: "epoxy", arguments: { name: "epoxy" }, result: { density: 1150, density_high: 1180, solids: 1 } },
  ],
  compute: ({ name }, refuse) => chosen(name, adhesives, "name", refuse),
});
