import { define, number } from "../spec.ts";
import { clothParameters, laidWeight, resinSource } from "./laid-cloth.ts";
import { partRecord } from "./part-record.ts";
import { bodyOf } from "./solid.ts";

/** `strip_mass(length, width, cloth, x, …)`: strips of cloth in resin as one part. */
export const stripMass = define({
  name: "strip_mass",
  summary: "Strips of cloth in resin that lie flat, one on the other or on both faces, as one part.",
  topic: "mass",
  parameters: {
    length: number("mm", "length of each strip, fore and aft", { above: 0 }),
    width: number("mm", "width of each strip, across", { above: 0 }),
    cloth: clothParameters.cloth,
    x: number("mm", "their middle, aft of the wing root's leading edge"),
    y: number("mm", "their middle, to the right", { default: 0 }),
    z: number("mm", "their middle, up", { default: 0 }),
    layers: number("1", "number of strips", { min: 1, max: 100, default: 2 }),
    resin: clothParameters.resin,
  },
  result: partRecord,
  formula: "mass = layers · length · width · cloth / (1 − resin)",
  errors: ["The number of layers is no whole number."],
  assumptions: ["All strips lie in one level plane.", "Glue that soaks into the wood under them is not in it."],
  sources: [{ text: "Area times weight per area; moments of a flat rectangle", mark: "derived" }, resinSource],
  examples: [
    {
      summary: "two strips of 100 by 20 mm of 25 g/m² cloth with as much resin as glass",
      arguments: { length: 0.1, width: 0.02, cloth: 0.025, x: 0.05, y: 0.003, z: 0.012 },
      result: {
        mass: 0.0002,
        x: 0.05,
        y: 0.003,
        z: 0.012,
        ixx: (0.0002 * 0.0004) / 12,
        iyy: (0.0002 * 0.01) / 12,
        izz: (0.0002 * 0.0104) / 12,
      },
    },
  ],
  compute: ({ length, width, cloth, x, y, z, layers, resin }, refuse) => {
    if (!Number.isInteger(layers)) refuse("layers", `${layers} is no whole number. Layers are counted.`);
    const mass = layers * length * width * laidWeight(cloth, resin);
    return bodyOf(
      mass,
      [x, y, z],
      [
        { mean: length ** 2 / 12, a: [1, 0, 0], b: [1, 0, 0] },
        { mean: width ** 2 / 12, a: [0, 1, 0], b: [0, 1, 0] },
      ],
    );
  },
});
