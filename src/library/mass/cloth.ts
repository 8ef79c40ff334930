import { chosen } from "../chosen.ts";
import { numberText } from "../number-text.ts";
import { choice, define, type Mark, number, record, text } from "../spec.ts";

interface ClothData {
  readonly weight: number;
  readonly thickness: number;
  readonly use: string;
  readonly mark: Mark;
}

/** Glass cloths by weight. Weights in g/m² follow from oz/yd²: 1 oz/yd² is 33.906 g/m². Thickness is of the dry cloth. */
const cloths: Readonly<Record<string, ClothData>> = {
  "17 g": { weight: 0.017, thickness: 2e-5, use: "tips, tail joints (0.5 oz)", mark: "common practice" },
  "19 g": { weight: 0.019, thickness: 2e-5, use: "whole surfaces of small models (0.56 oz)", mark: "verified" },
  "25 g": {
    weight: 0.025,
    thickness: 4e-5,
    use: "joints of wings of 0.3 to 0.6 m (0.73 oz, style 106)",
    mark: "verified",
  },
  "48 g": { weight: 0.0475, thickness: 6e-5, use: "root joint of wings of 0.6 to 1 m (1.4 oz)", mark: "from memory" },
  "68 g": { weight: 0.0678, thickness: 8.5e-5, use: "root joint under boost, fuselage (2 oz)", mark: "from memory" },
  "78 g": { weight: 0.078, thickness: 1e-4, use: "fuselage, pylon (2.3 oz)", mark: "verified" },
  "108 g": { weight: 0.1085, thickness: 1e-4, use: "pylon, pod (3.2 oz)", mark: "from memory" },
};

const clothRecord = record(
  "cloth",
  "a glass cloth",
  {
    weight: number("g/m^2", "mass per area, dry"),
    thickness: number("mm", "thickness, dry"),
    use: text("what it is used for"),
    mark: text("how well the values are grounded"),
  },
  (of) => `${numberText(of.weight, "g/m^2")}: ${of.use}`,
);

/** `cloth(name)`: glass cloth by its weight. */
export const cloth = define({
  name: "cloth",
  summary: "Weight and thickness of a glass cloth by the weight it is sold by.",
  topic: "mass",
  parameters: { name: choice("the cloth: its weight per square metre", Object.keys(cloths)) },
  result: clothRecord,
  formula: "looked up; 1 oz/yd² = 33.906 g/m²",
  errors: ["The name is none of the list."],
  assumptions: ["Plain-weave E-glass, dry. With resin it weighs twice and more: see laminate."],
  sources: [
    { text: "Weights of 0.73 oz (style 106), 0.56 oz and 2.3 oz cloth", mark: "verified" },
    { text: "The other weights and thicknesses: makers' usual figures", mark: "from memory" },
    { text: "What each is used for", mark: "common practice" },
  ],
  examples: [
    {
      summary: "the usual cloth for joints",
      arguments: { name: "25 g" },
      result: { weight: 0.025, thickness: 4e-5, mark: "verified" },
    },
  ],
  compute: ({ name }, refuse) => chosen(name, cloths, "name", refuse),
});
