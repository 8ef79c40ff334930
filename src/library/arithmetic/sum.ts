import { anyNumber, define } from "../spec.ts";
import { elementary } from "./elementary.ts";
import { emptyList, values } from "./list-parameter.ts";

/** `sum(values)`. */
export const sum = define({
  name: "sum",
  summary: "All numbers of a list added up.",
  topic: "arithmetic",
  parameters: { values },
  result: anyNumber("the sum"),
  formula: "x₁ + x₂ + … + xₙ",
  errors: ["The list is empty."],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "three masses", arguments: { values: [0.002, 0.0035, 0.001] }, result: 0.0065 }],
  spread: true,
  compute: (given, refuse) => {
    if (given.values.length === 0) refuse("values", emptyList);
    return given.values.reduce((total, value) => total + value, 0);
  },
});
