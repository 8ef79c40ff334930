import { define, number } from "../spec.ts";

/** `surface_form(thickness)`. */
export const surfaceForm = define({
  name: "surface_form",
  summary: "By how much thickness raises the drag of a wing or tail over the friction of a plate.",
  topic: "air",
  parameters: { thickness: number("%", "thickness over chord", { min: 0, max: 0.3 }) },
  result: number("1", "drag over that of a plate of the same surface"),
  formula: "1 + 2·t/c + 60·(t/c)⁴",
  errors: [],
  assumptions: ["Streamlined sections, from tests at Reynolds numbers far above those of small gliders."],
  sources: [{ text: "S. F. Hoerner, Fluid-Dynamic Drag, 1965, chapter 6", mark: "from memory" }],
  examples: [{ summary: "a section of 8 %", arguments: { thickness: 0.08 }, result: 1.1624576 }],
  elementwise: true,
  compute: ({ thickness }) => 1 + 2 * thickness + 60 * thickness ** 4,
});
