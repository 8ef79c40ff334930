import { define, number } from "../spec.ts";
import { elementary } from "./elementary.ts";

/** `tan(angle)`. */
export const tan = define({
  name: "tan",
  summary: "The tangent of an angle.",
  topic: "arithmetic",
  parameters: { angle: number("rad", "an angle") },
  result: number("1", "its tangent"),
  formula: "tan α",
  errors: ["The angle is 90 deg or an odd multiple of it."],
  assumptions: [],
  sources: elementary,
  examples: [{ summary: "of −45 deg", arguments: { angle: -Math.PI / 4 }, result: -1 }],
  elementwise: true,
  compute: ({ angle }, refuse) => {
    // 90 deg is no exact float: its cosine comes out as 6e-17, and its tangent as a number without meaning.
    if (Math.abs(Math.cos(angle)) < 1e-15) refuse("angle", "An angle of 90 deg has no tangent. Take a smaller one.");
    return Math.tan(angle);
  },
});
