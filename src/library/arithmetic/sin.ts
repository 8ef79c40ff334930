import { define, number } from "../spec.ts";
import { elementary } from "./elementary.ts";

/** `sin(angle)`. */
export const sin = define({
  name: "sin",
  summary: "The sine of an angle.",
  topic: "arithmetic",
  parameters: { angle: number("rad", "an angle") },
  result: number("1", "its sine"),
  formula: "sin α",
  errors: [],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "of 30 deg", arguments: { angle: Math.PI / 6 }, result: 0.5 }],
  elementwise: true,
  compute: ({ angle }) => Math.sin(angle),
});
