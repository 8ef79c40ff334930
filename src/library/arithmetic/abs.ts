import { anyNumber, define } from "../spec.ts";
import { elementary } from "./elementary.ts";

/** `abs(value)`. */
export const abs = define({
  name: "abs",
  summary: "The size of a number without its sign.",
  topic: "arithmetic",
  parameters: { value: anyNumber("any number") },
  result: anyNumber("its size"),
  formula: "|x|",
  errors: [],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "a place ahead of the root", arguments: { value: -0.085 }, result: 0.085 }],
  elementwise: true,
  compute: ({ value }) => Math.abs(value),
});
