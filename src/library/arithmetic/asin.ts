import { define, number } from "../spec.ts";
import { elementary } from "./elementary.ts";

/** `asin(value)`. */
export const asin = define({
  name: "asin",
  summary: "The angle whose sine is a number.",
  topic: "arithmetic",
  parameters: { value: number("1", "a sine", { min: -1, max: 1 }) },
  result: number("deg", "angle from −90 to 90 deg"),
  formula: "arcsin x",
  errors: [],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "of a half: 30 deg", arguments: { value: 0.5 }, result: Math.PI / 6 }],
  elementwise: true,
  compute: ({ value }) => Math.asin(value),
});
