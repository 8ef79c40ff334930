import { anyNumber, define } from "../spec.ts";
import { elementary } from "./elementary.ts";
import { step, stepAssumptions, stepCount } from "./step-parameter.ts";

/** `ceil(value, step)`. */
export const ceil = define({
  name: "ceil",
  summary: "The next multiple of a step that is not below a number.",
  topic: "arithmetic",
  parameters: { value: anyNumber("any number"), step },
  result: anyNumber("the multiple"),
  formula: "⌈x / step⌉ · step",
  errors: [],
  assumptions: [...stepAssumptions],
  sources: elementary,
  examples: [
    { summary: "−2.5 goes to −2", arguments: { value: -2.5 }, result: -2 },
    { summary: "31 mm in steps of 5 mm", arguments: { value: 0.031, step: 0.005 }, result: 0.035 },
  ],
  elementwise: true,
  compute: ({ value, step }) => Math.ceil(stepCount(value, step)) * step + 0,
});
