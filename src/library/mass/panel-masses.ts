import { integrateProduct } from "../numerics/integrate-product.ts";
import { threePanelWing } from "../shape/sample-wings.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { define, list, number } from "../spec.ts";
import { densities, sanding } from "./wing-wood.ts";

/** `panel_masses(wing, density, sanded)`. */
export const panelMasses = define({
  name: "panel_masses",
  summary: "The mass of each panel of the right half, to hold against the scales.",
  topic: "mass",
  parameters: { wing: wingRecord, ...sanding },
  result: list(number("g", "mass of the panel"), "mass of each right panel, root panel first"),
  formula: "density · sanded · thickness · length · (root_chord + tip_chord) / 2",
  errors: ["No density is given, and the table of panels has none either."],
  assumptions: ["Bare wood, before glue and finish."],
  sources: [{ text: "Volume of a straight-tapered panel of even thickness", mark: "derived" }],
  examples: [
    {
      summary: "three panels of 3 mm and 120 kg/m³ sanded to 75 %",
      arguments: { wing: threePanelWing, density: 120, sanded: 0.75 },
      result: [
        (120 * 0.75 * 0.003 * 0.2 * 0.12) / Math.cos(Math.PI / 60),
        (120 * 0.75 * 0.003 * 0.2 * 0.11) / Math.cos((8 * Math.PI) / 180),
        (120 * 0.75 * 0.003 * 0.1 * 0.08) / Math.cos(Math.PI / 9),
      ],
    },
  ],
  compute: ({ wing, density, sanded }, refuse) => {
    const { right } = wing;
    const wood = densities(wing, density, refuse).right;
    return right.length.map((length, i) => {
      const area = integrateProduct(length, right.root_chord[i] ?? 0, right.tip_chord[i] ?? 0, 1, 1);
      return (wood[i] ?? Number.NaN) * sanded * (right.thickness[i] ?? 0) * area;
    });
  },
});
