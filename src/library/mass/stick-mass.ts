import { between, type Vector } from "../numerics/vector3.ts";
import { define, number } from "../spec.ts";
import { gather } from "./gather.ts";
import { partRecord } from "./part-record.ts";
import { solid } from "./solid.ts";

/** `stick_mass(density, front_x, rear_x, width, height, …)`: a fuselage stick as one part. */
export const stickMass = define({
  name: "stick_mass",
  summary: "A fuselage stick as one part: a straight rod of rectangular section that may taper in width and height.",
  topic: "mass",
  parameters: {
    density: number("kg/m^3", "density of the wood", { above: 0 }),
    front_x: number("mm", "its front end, aft of the wing root's leading edge; negative ahead of it"),
    rear_x: number("mm", "its rear end, aft of the wing root's leading edge"),
    width: number("mm", "width at the front", { above: 0 }),
    height: number("mm", "height at the front", { above: 0 }),
    end_width: number("mm", "width at the rear; left out, as at the front", { min: 0, optional: true }),
    end_height: number("mm", "height at the rear; left out, as at the front", { min: 0, optional: true }),
    y: number("mm", "how far its middle line lies to the right", { default: 0 }),
    z: number("mm", "height of its middle line", { default: 0 }),
  },
  result: partRecord,
  formula:
    "mass = density · length · (2·w₁·h₁ + w₁·h₂ + w₂·h₁ + 2·w₂·h₂) / 6; balance point and inertia by integrals along the stick",
  errors: ["The rear end does not lie behind the front end."],
  assumptions: [
    "Width and height change evenly from front to rear, about a straight middle line along x.",
    "Where both taper, the middle section is smaller than the mean of the end sections: so is the mass.",
  ],
  sources: [{ text: "Volume and moments of a straight-tapered rod (prismoid), exact", mark: "derived" }],
  examples: [
    {
      summary: "190 kg/m³, 380 mm long from 85 mm ahead of the wing root, 9 by 6 mm tapering to 5 by 4 mm",
      arguments: {
        density: 190,
        front_x: -0.085,
        rear_x: 0.295,
        width: 0.006,
        height: 0.009,
        end_width: 0.004,
        end_height: 0.005,
      },
      result: { mass: (190 * 0.38 * (2 * 54 + 30 + 36 + 2 * 20) * 1e-6) / 6, y: 0, z: 0, ixz: 0 },
    },
    {
      summary: "an even rod of 6 g, 300 by 10 by 5 mm: m·(L² + h²)/12 and its like",
      arguments: { density: 400, front_x: 0, rear_x: 0.3, width: 0.01, height: 0.005, z: 0.002, y: 0.001 },
      result: {
        mass: 0.006,
        x: 0.15,
        y: 0.001,
        z: 0.002,
        ixx: (0.006 * (1e-4 + 0.25e-4)) / 12,
        iyy: (0.006 * (0.09 + 0.25e-4)) / 12,
        izz: (0.006 * (0.09 + 1e-4)) / 12,
      },
    },
  ],
  compute: (given, refuse) => {
    const { density, front_x, rear_x, width, height, end_width = width, end_height = height, y, z } = given;
    const length = rear_x - front_x;
    if (!(length > 0)) refuse("rear_x", "The rear end must lie behind the front end: give it the larger x.");
    const ends: readonly [Vector, Vector] = [
      [front_x, y, z],
      [rear_x, y, z],
    ];
    return gather(
      solid(length, (share) => {
        const [wide, high] = [width + (end_width - width) * share, height + (end_height - height) * share];
        return {
          mass: density * wide * high,
          centre: between(...ends, share),
          scatter: [
            { mean: wide ** 2 / 12, a: [0, 1, 0], b: [0, 1, 0] },
            { mean: high ** 2 / 12, a: [0, 0, 1], b: [0, 0, 1] },
          ],
        };
      }),
    );
  },
});
