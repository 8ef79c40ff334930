import { define } from "../spec.ts";
import { furtherParts, partsIn } from "./further-parts.ts";
import { gather } from "./gather.ts";
import { partRecord } from "./part-record.ts";

/** Two parts of a notebook for the example: a wing and a stick. */
const pair = {
  part_1: {
    mass: 0.008,
    x: 0.032,
    y: 0,
    z: 0.02,
    ixx: 1.2e-4,
    iyy: 3e-6,
    izz: 1.22e-4,
    ixy: 0,
    ixz: 1e-8,
    iyz: 0,
  },
  part_2: {
    mass: 0.002,
    x: 0.082,
    y: 0,
    z: 0.005,
    ixx: 1e-8,
    iyy: 2.6e-5,
    izz: 2.6e-5,
    ixy: 0,
    ixz: 0,
    iyz: 0,
  },
};

/** `combine(part_1, part_2, …)`: parts taken as one. */
export const combine = define({
  name: "combine",
  summary: "Several parts taken as one, with their inertias: a tail of tailplane and fin, a pod with its motor.",
  topic: "mass",
  parameters: furtherParts,
  result: partRecord,
  formula: "as in balance: x = Σ m·x / Σ m; ixx = Σ (own + m·(Δy² + Δz²)), ixy = Σ (own + m·Δx·Δy) and their like",
  errors: ["There is no part, or the parts have no mass together."],
  assumptions: ["x aft, y to the right tip, z up, from one origin for all parts."],
  sources: [{ text: "Moments of first and second order of mass; parallel-axis theorem", mark: "derived" }],
  examples: [
    {
      summary: "a wing of 8 g and, 50 mm behind and 15 mm below it, a stick of 2 g",
      arguments: pair,
      result: {
        mass: 0.01,
        x: 0.042,
        z: 0.017,
        ixx: 1.2001e-4 + 0.0016 * 0.015 ** 2,
        iyy: 2.9e-5 + 0.0016 * (0.05 ** 2 + 0.015 ** 2),
        ixz: 1e-8 - 0.0016 * 0.05 * 0.015,
      },
    },
  ],
  compute: (values, refuse) => {
    const parts = partsIn(values);
    if (!parts.some((part) => part.mass > 0)) {
      refuse(null, "The parts have no mass together. Give at least one part with a mass.");
    }
    return gather(parts);
  },
});
