import { define, number } from "../spec.ts";
import { elementary } from "./elementary.ts";

/** `exp(value)`. */
export const exp = define({
  name: "exp",
  summary: "The exponential: e raised to a number.",
  topic: "arithmetic",
  parameters: { value: number("1", "an exponent") },
  result: number("1", "e to that power"),
  formula: "eˣ",
  errors: [],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "e to the minus two", arguments: { value: -2 }, result: 0.1353352832366127 }],
  elementwise: true,
  compute: ({ value }) => Math.exp(value),
});
