import { define, number } from "../spec.ts";
import { partRecord } from "./part-record.ts";

/** `point_mass(mass, x, y, z)`: a small thing as a part. */
export const pointMass = define({
  name: "point_mass",
  summary: "A small thing as a part: nose clay, a hook, a motor whose size does not matter.",
  topic: "mass",
  parameters: {
    mass: number("g", "mass", { above: 0 }),
    x: number("mm", "its place, aft of the wing root's leading edge"),
    y: number("mm", "its place, to the right", { default: 0 }),
    z: number("mm", "its place, up", { default: 0 }),
  },
  result: partRecord,
  formula: "no inertia of its own; what it adds comes from its distance to the balance point of the whole",
  errors: [],
  assumptions: ["It is small against its distance from the balance point."],
  sources: [{ text: "Mechanics of a point mass", mark: "derived" }],
  examples: [
    {
      summary: "3.4 g of clay 80 mm ahead of the wing root, 2 mm up",
      arguments: { mass: 0.0034, x: -0.08, z: 0.002 },
      result: { mass: 0.0034, x: -0.08, y: 0, z: 0.002, ixx: 0, iyy: 0, izz: 0, ixy: 0, ixz: 0, iyz: 0 },
    },
  ],
  compute: (at) => ({ ...at, ixx: 0, iyy: 0, izz: 0, ixy: 0, ixz: 0, iyz: 0 }),
});
