import { define, number } from "../spec.ts";
import { turbulent } from "./friction.ts";

/** `turbulent_friction(reynolds)`. */
export const turbulentFriction = define({
  name: "turbulent_friction",
  summary: "The friction coefficient of one side of a smooth plate along which the flow is turbulent from the front.",
  topic: "air",
  parameters: { reynolds: number("1", "Reynolds number of the plate's length", { min: 1000, max: 1e9 }) },
  result: number("1", "friction coefficient of one side; double it for a plate wetted on both"),
  formula: "0.455 / (log₁₀ Re)^2.58",
  errors: [],
  assumptions: [
    "A smooth, thin, flat plate along the flow. At Reynolds numbers of small gliders it stands for a rough surface and a flow that parts from it and comes back.",
  ],
  sources: [
    { text: "L. Prandtl, H. Schlichting, 1932: turbulent boundary layer of a flat plate", mark: "from memory" },
  ],
  examples: [
    {
      summary: "at a Reynolds number whose logarithm is 5",
      arguments: { reynolds: 100_000 },
      result: 0.455 / 5 ** 2.58,
    },
  ],
  elementwise: true,
  compute: ({ reynolds }) => turbulent(reynolds),
});
