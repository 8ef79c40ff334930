import { define, number } from "../spec.ts";
import { elementary } from "./elementary.ts";
import { values } from "./list-parameter.ts";

/** `count(values)`. */
export const count = define({
  name: "count",
  summary: "How many numbers a list has.",
  topic: "arithmetic",
  parameters: { values },
  result: number("1", "the count, 0 for an empty list"),
  formula: "n",
  errors: [],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "three panels", arguments: { values: [0.12, 0.08, 0.05] }, result: 3 }],
  spread: true,
  compute: (given) => given.values.length,
});
