import { anyNumber, define } from "../spec.ts";
import { elementary } from "./elementary.ts";

/** `sqrt(value)`. */
export const sqrt = define({
  name: "sqrt",
  summary: "The square root of a number; that of an area is a length.",
  topic: "arithmetic",
  parameters: { value: anyNumber("a number that is not negative", { min: 0 }) },
  result: anyNumber("its square root", undefined, 0.5),
  formula: "√x",
  errors: [],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "side of a square of 225 cm²", arguments: { value: 0.0225 }, result: 0.15 }],
  elementwise: true,
  compute: ({ value }) => Math.sqrt(value),
});
