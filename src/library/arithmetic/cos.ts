import { define, number } from "../spec.ts";
import { elementary } from "./elementary.ts";

/** `cos(angle)`. */
export const cos = define({
  name: "cos",
  summary: "The cosine of an angle.",
  topic: "arithmetic",
  parameters: { angle: number("rad", "an angle") },
  result: number("1", "its cosine"),
  formula: "cos α",
  errors: [],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "of 60 deg", arguments: { angle: Math.PI / 3 }, result: 0.5 }],
  elementwise: true,
  compute: ({ angle }) => Math.cos(angle),
});
