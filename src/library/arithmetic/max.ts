import { anyNumber, define } from "../spec.ts";
import { elementary } from "./elementary.ts";
import { emptyList, values } from "./list-parameter.ts";

/** `max(values)`. */
export const max = define({
  name: "max",
  summary: "The largest number of a list.",
  topic: "arithmetic",
  parameters: { values },
  result: anyNumber("the largest number"),
  formula: "the largest of x₁, x₂, …, xₙ",
  errors: ["The list is empty."],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "three panel lengths", arguments: { values: [0.08, 0.12, 0.05] }, result: 0.12 }],
  spread: true,
  compute: (given, refuse) => {
    if (given.values.length === 0) refuse("values", emptyList);
    return given.values.reduce((best, value) => Math.max(best, value));
  },
});
