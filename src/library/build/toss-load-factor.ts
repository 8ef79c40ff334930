import { numberText } from "../number-text.ts";
import { define, number, record } from "../spec.ts";
import { loadAt } from "./load-factors.ts";

/** What functions of loads take. */
export const loadParameters = {
  mass: number("g", "mass of the glider as it is then", { above: 0 }),
  area: number("cm^2", "wing area in the plan view", { above: 0 }),
};
export const airDensity = number("kg/m^3", "density of the air", { above: 0, default: 1.225 });

/** `toss_load_factor(speed, mass, area, …)`: also for a pull-up under boost. */
export const tossLoadFactor = define({
  name: "toss_load_factor",
  summary: "How many times its weight a wing must bear when the glider is thrown, or boosted, faster than it glides.",
  topic: "build",
  parameters: {
    speed: number("m/s", "speed of the toss, or of the pull-up", { above: 0 }),
    ...loadParameters,
    lift_coefficient: number("1", "lift coefficient that it is trimmed to glide at", { above: 0, default: 0.6 }),
    max_lift: number("1", "largest lift coefficient of the wing: no more can come", { above: 0, default: 0.9 }),
    air_density: airDensity,
  },
  result: record(
    "toss_load_factor",
    "load factor of a toss",
    {
      load_factor: number("1", "times its weight, at the lift it is trimmed for"),
      most: number("1", "times its weight at the largest lift there is"),
      glide_speed: number("m/s", "speed at which it would glide level"),
    },
    ({ load_factor, most }) => `${numberText(load_factor, "1")} times its weight, ${numberText(most, "1")} at most`,
  ),
  formula: "load_factor = (speed / glide_speed)²; most = ½·density·speed²·max_lift·area / weight",
  errors: [],
  assumptions: ["The trim keeps the lift coefficient, so lift grows with the square of the speed."],
  sources: [{ text: "Lift over weight", mark: "derived" }],
  examples: [
    {
      summary: "18 g on 300 cm² thrown at 8 m/s",
      arguments: { speed: 8, mass: 0.018, area: 0.03, lift_coefficient: 0.5, max_lift: 0.85 },
      result: {
        load_factor: (0.5 * 1.225 * 64 * 0.5 * 0.03) / (0.018 * 9.80665),
        most: (0.5 * 1.225 * 64 * 0.85 * 0.03) / (0.018 * 9.80665),
        glide_speed: Math.sqrt((2 * 0.018 * 9.80665) / (1.225 * 0.5 * 0.03)),
      },
    },
  ],
  compute: ({ speed, mass, area, air_density, lift_coefficient, max_lift }) => {
    const most = loadAt(speed, max_lift, mass, area, air_density);
    const atTrim = loadAt(speed, lift_coefficient, mass, area, air_density);
    return { load_factor: Math.min(atTrim, most), most, glide_speed: speed / Math.sqrt(atTrim) };
  },
});
