import { numberText } from "../number-text.ts";
import { define, number, record } from "../spec.ts";
import { clothParameters, laidWeight, resinSource } from "./laid-cloth.ts";

const laminateRecord = record(
  "laminate",
  "layers of cloth in resin",
  {
    weight: number("g/m^2", "mass per area, cloth and resin"),
    thickness: number("mm", "thickness"),
    fibre_share: number("%", "share of fibre, by volume"),
  },
  (all) => `${numberText(all.weight, "g/m^2")}, ${numberText(all.thickness, "mm")} thick`,
);

/** `laminate(cloth, resin, layers, …)`. */
export const laminate = define({
  name: "laminate",
  summary: "Weight, thickness and share of fibre of cloth laid in resin.",
  topic: "mass",
  parameters: {
    ...clothParameters,
    layers: number("1", "number of layers", { min: 1, max: 100, default: 1 }),
    fibre_density: number("kg/m^3", "density of the fibre; E-glass unless said", { above: 0, default: 2540 }),
    resin_density: number("kg/m^3", "density of the resin; epoxy unless said", { above: 0, default: 1150 }),
  },
  result: laminateRecord,
  formula:
    "weight = layers · cloth / (1 − resin); thickness = weight · ((1 − resin)/fibre_density + resin/resin_density)",
  errors: ["The number of layers is no whole number."],
  assumptions: ["No air is left in the cloth: cloth pressed under film, without dry patches."],
  sources: [{ text: "Volumes of fibre and resin added up", mark: "derived" }, resinSource],
  examples: [
    {
      summary: "one layer of 25 g/m² cloth, half of the strip resin",
      arguments: { cloth: 0.025 },
      result: { weight: 0.05, thickness: 0.025 / 2540 + 0.025 / 1150, fibre_share: 1150 / (1150 + 2540) },
    },
    {
      summary: "three layers of 48 g/m² with 60 % resin",
      arguments: { cloth: 0.048, resin: 0.6, layers: 3 },
      result: { weight: 0.36, thickness: 0.144 / 2540 + 0.216 / 1150 },
    },
  ],
  compute: ({ cloth, resin, layers, fibre_density, resin_density }, refuse) => {
    if (!Number.isInteger(layers)) refuse("layers", `${layers} is no whole number. Layers are counted.`);
    const weight = layers * laidWeight(cloth, resin);
    const fibre = (weight * (1 - resin)) / fibre_density;
    const thickness = fibre + (weight * resin) / resin_density;
    return { weight, thickness, fibre_share: fibre / thickness };
  },
});
