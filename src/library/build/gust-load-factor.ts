import { numberText } from "../number-text.ts";
import { define, number, record } from "../spec.ts";
import { freeFall } from "../units.ts";
import { alleviation } from "./load-factors.ts";
import { airDensity, loadParameters } from "./toss-load-factor.ts";

/** `gust_load_factor(speed, gust, mass, area, chord, …)`. */
export const gustLoadFactor = define({
  name: "gust_load_factor",
  summary: "How many times its weight a wing must bear when it flies into an upward gust.",
  topic: "build",
  parameters: {
    speed: number("m/s", "speed of flight", { above: 0 }),
    gust: number("m/s", "speed of the gust, upward", { min: 0 }),
    ...loadParameters,
    chord: number("mm", "mean chord of the wing", { above: 0 }),
    lift_slope: number("1/rad", "lift slope of the wing", { above: 0, default: 4.5 }),
    air_density: airDensity,
  },
  result: record(
    "gust_load_factor",
    "load factor in a gust",
    {
      load_factor: number("1", "times its weight, level flight included"),
      added: number("1", "what the gust adds"),
      sharp_edged: number("1", "what a gust without any slope would add"),
      alleviation: number("1", "share of that which reaches a light glider"),
    },
    ({ load_factor, alleviation }) =>
      `${numberText(load_factor, "1")} times its weight, ${numberText(alleviation, "1")} of a sharp-edged gust`,
  ),
  formula: "added = K·ρ·V·U·a·S/(2·W), K = 0.88·μ/(5.3 + μ), μ = 2·(W/S)/(ρ·g·c·a); load_factor = 1 + added",
  errors: [],
  assumptions: [
    "A light glider rides a gust before all of it has come: a sharp-edged gust overstates the load two or three times.",
    "The wing does not stall; where lift ends first, toss_load_factor tells the most there can be.",
  ],
  sources: [{ text: "K. G. Pratt, W. G. Walker, NACA TR 1206, 1954: gust alleviation factor", mark: "from memory" }],
  examples: [
    {
      summary: "50 g on 460 cm² at 40 m/s into 3 m/s: 10.66 N/m² on a chord of 100 mm",
      arguments: { speed: 40, gust: 3, mass: 0.05, area: 0.046, chord: 0.1 },
      result: { added: 11.63, sharp_edged: 31.03, alleviation: 0.375 },
      tolerance: 2e-3,
    },
  ],
  compute: ({ speed, gust, mass, area, air_density, chord, lift_slope }) => {
    const sharp_edged = (air_density * speed * gust * lift_slope * area) / (2 * mass * freeFall);
    const share = alleviation(mass, area, chord, lift_slope, air_density);
    const added = share * sharp_edged;
    return { load_factor: 1 + added, added, sharp_edged, alleviation: share };
  },
});
