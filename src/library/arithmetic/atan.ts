import { define, number } from "../spec.ts";
import { elementary } from "./elementary.ts";

/** `atan(value)`. */
export const atan = define({
  name: "atan",
  summary: "The angle whose tangent is a number.",
  topic: "arithmetic",
  parameters: { value: number("1", "a tangent") },
  result: number("deg", "angle between −90 and 90 deg"),
  formula: "arctan x",
  errors: [],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "of minus one: −45 deg", arguments: { value: -1 }, result: -Math.PI / 4 }],
  elementwise: true,
  compute: ({ value }) => Math.atan(value),
});
