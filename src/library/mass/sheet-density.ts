import { define, number } from "../spec.ts";

/** `sheet_density(mass, thickness, length, width)`. */
export const sheetDensity = define({
  name: "sheet_density",
  summary: "The density of a sheet of wood from the scales: weigh the blank, not the label.",
  topic: "mass",
  parameters: {
    mass: number("g", "mass of the sheet", { above: 0 }),
    thickness: number("mm", "its thickness as measured", { above: 0 }),
    length: number("mm", "its length", { above: 0, default: 36 * 0.0254 }),
    width: number("mm", "its width", { above: 0, default: 3 * 0.0254 }),
  },
  result: number("kg/m^3", "density"),
  formula: "mass / (length · width · thickness)",
  errors: [],
  assumptions: [
    "Left out, the sheet is 36 in by 3 in: its weight in ounces over its thickness in inches is then its density in pounds per cubic foot.",
    "Even thickness. A nominal 3 mm sheet and a 1/8 in sheet differ by 6 %: measure.",
  ],
  sources: [{ text: "Mass over volume", mark: "derived" }],
  examples: [
    {
      summary: "10 g of 2 mm sheet, 500 by 80 mm",
      arguments: { mass: 0.01, thickness: 0.002, length: 0.5, width: 0.08 },
      result: 125,
    },
  ],
  elementwise: true,
  compute: ({ mass, thickness, length, width }) => mass / (length * width * thickness),
});
