import { define, number } from "../spec.ts";
import { laminar } from "./friction.ts";

/** `laminar_friction(reynolds)`. */
export const laminarFriction = define({
  name: "laminar_friction",
  summary: "The friction coefficient of one side of a smooth plate along which the flow stays laminar.",
  topic: "air",
  parameters: { reynolds: number("1", "Reynolds number of the plate's length", { min: 1000, max: 1e7 }) },
  result: number("1", "friction coefficient of one side; double it for a plate wetted on both"),
  formula: "1.328 / √Re",
  errors: [],
  assumptions: [
    "A smooth, thin, flat plate along the flow. Above about half a million the flow does not stay laminar by itself.",
  ],
  sources: [{ text: "H. Blasius, 1908: laminar boundary layer of a flat plate", mark: "from memory" }],
  examples: [{ summary: "a chord of a small glider", arguments: { reynolds: 40_000 }, result: 0.00664 }],
  elementwise: true,
  compute: ({ reynolds }) => laminar(reynolds),
});
