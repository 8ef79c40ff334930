import { anyNumber, define } from "../spec.ts";
import { elementary } from "./elementary.ts";
import { step, stepAssumptions, stepCount } from "./step-parameter.ts";

/** `round(value, step)`. */
export const round = define({
  name: "round",
  summary: "The nearest multiple of a step; a half goes away from zero.",
  topic: "arithmetic",
  parameters: { value: anyNumber("any number"), step },
  result: anyNumber("the multiple"),
  formula: "sign of x · ⌊|x| / step + ½⌋ · step",
  errors: [],
  assumptions: ["A half goes away from zero: 2.5 to 3, −2.5 to −3.", ...stepAssumptions],
  sources: elementary,
  examples: [
    { summary: "−2.5 goes to −3", arguments: { value: -2.5 }, result: -3 },
    { summary: "4.5 mm to whole millimetres", arguments: { value: 0.0045, step: 0.001 }, result: 0.005 },
  ],
  elementwise: true,
  compute: ({ value, step }) => Math.sign(value) * Math.floor(stepCount(Math.abs(value), step) + 0.5) * step + 0,
});
