import { anyNumber, define } from "../spec.ts";
import { elementary } from "./elementary.ts";
import { step, stepAssumptions, stepCount } from "./step-parameter.ts";

/** `floor(value, step)`. */
export const floor = define({
  name: "floor",
  summary: "The next multiple of a step that is not above a number.",
  topic: "arithmetic",
  parameters: { value: anyNumber("any number"), step },
  result: anyNumber("the multiple"),
  formula: "⌊x / step⌋ · step",
  errors: [],
  assumptions: [...stepAssumptions],
  sources: elementary,
  examples: [
    { summary: "−2.5 goes to −3", arguments: { value: -2.5 }, result: -3 },
    { summary: "29 cm are 29 steps of 1 cm", arguments: { value: 0.29, step: 0.01 }, result: 0.29 },
  ],
  elementwise: true,
  compute: ({ value, step }) => Math.floor(stepCount(value, step)) * step + 0,
});
