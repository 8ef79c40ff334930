import { define, number } from "../spec.ts";
import { bodyForm as form } from "./friction.ts";

/** `body_form(slenderness)`. */
export const bodyForm = define({
  name: "body_form",
  summary: "By how much its girth raises the drag of a slender body over the friction of a plate.",
  topic: "air",
  parameters: { slenderness: number("1", "length over diameter", { min: 2, max: 1000 }) },
  result: number("1", "drag over that of a plate of the same surface"),
  formula: "1 + 1.5·(d/l)^1.5 + 7·(d/l)³",
  errors: [],
  assumptions: ["Streamlined bodies of round section, at Reynolds numbers far above those of small gliders."],
  sources: [{ text: "S. F. Hoerner, Fluid-Dynamic Drag, 1965, chapter 6", mark: "from memory" }],
  examples: [{ summary: "sixteen times as long as thick", arguments: { slenderness: 16 }, result: 1.025146484375 }],
  elementwise: true,
  compute: ({ slenderness }) => form(slenderness),
});
