import { define, number } from "../spec.ts";
import { elementary } from "./elementary.ts";

/** `log(value)`. */
export const log = define({
  name: "log",
  summary: "The natural logarithm of a number.",
  topic: "arithmetic",
  parameters: { value: number("1", "a number above 0", { above: 0 }) },
  result: number("1", "its natural logarithm"),
  formula: "ln x",
  errors: [],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "of four", arguments: { value: 4 }, result: 1.3862943611198906 }],
  elementwise: true,
  compute: ({ value }) => Math.log(value),
});
