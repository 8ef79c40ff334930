import { define, number } from "../spec.ts";
import { airAt, airParameter } from "./atmosphere.ts";

/** `reynolds(speed, chord, air)`. */
export const reynolds = define({
  name: "reynolds",
  summary: "The Reynolds number of a chord at a speed: how much the air's inertia outweighs its stickiness.",
  topic: "air",
  parameters: {
    speed: number("m/s", "speed through the air", { min: 0 }),
    chord: number("mm", "chord, or length of a body", { above: 0 }),
    air: airParameter,
  },
  result: number("1", "Reynolds number; a small glider's wing flies at 15 000 to 80 000"),
  formula: "speed · chord / kinematic viscosity",
  errors: [],
  assumptions: [],
  sources: [{ text: "Definition of the Reynolds number", mark: "derived" }],
  examples: [
    {
      summary: "4 m/s on a chord of 65 mm at sea level",
      arguments: { speed: 4, chord: 0.065 },
      result: 17799,
      tolerance: 1e-4,
    },
  ],
  compute: ({ speed, chord, air = airAt(0) }) => (speed * chord) / air.kinematic_viscosity,
});
