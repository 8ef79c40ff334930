import { anyNumber, define } from "../spec.ts";
import { elementary } from "./elementary.ts";
import { emptyList, values } from "./list-parameter.ts";

/** `min(values)`. */
export const min = define({
  name: "min",
  summary: "The smallest number of a list.",
  topic: "arithmetic",
  parameters: { values },
  result: anyNumber("the smallest number"),
  formula: "the smallest of x₁, x₂, …, xₙ",
  errors: ["The list is empty."],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "three panel lengths", arguments: { values: [0.08, 0.12, 0.05] }, result: 0.05 }],
  spread: true,
  compute: (given, refuse) => {
    if (given.values.length === 0) refuse("values", emptyList);
    return given.values.reduce((best, value) => Math.min(best, value));
  },
});
