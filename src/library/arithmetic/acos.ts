import { define, number } from "../spec.ts";
import { elementary } from "./elementary.ts";

/** `acos(value)`. */
export const acos = define({
  name: "acos",
  summary: "The angle whose cosine is a number.",
  topic: "arithmetic",
  parameters: { value: number("1", "a cosine", { min: -1, max: 1 }) },
  result: number("deg", "angle from 0 to 180 deg"),
  formula: "arccos x",
  errors: [],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "of minus a half: 120 deg", arguments: { value: -0.5 }, result: (2 * Math.PI) / 3 }],
  elementwise: true,
  compute: ({ value }) => Math.acos(value),
});
