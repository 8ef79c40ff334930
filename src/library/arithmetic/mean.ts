import { anyNumber, define } from "../spec.ts";
import { elementary } from "./elementary.ts";
import { emptyList, values } from "./list-parameter.ts";

/** `mean(values)`. */
export const mean = define({
  name: "mean",
  summary: "The mean of the numbers of a list: their sum over their count.",
  topic: "arithmetic",
  parameters: { values },
  result: anyNumber("the mean"),
  formula: "(x₁ + x₂ + … + xₙ) / n",
  errors: ["The list is empty."],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "three tosses", arguments: { values: [11, 14, 12.5] }, result: 12.5 }],
  spread: true,
  compute: (given, refuse) => {
    if (given.values.length === 0) refuse("values", emptyList);

    return given.values.reduce((total, value) => total + value, 0) / given.values.length;
  },
});
