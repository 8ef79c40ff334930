import { degrees } from "../numerics/degrees.ts";
import { define, number } from "../spec.ts";
import { slopeOfFlat } from "./finite-wing.ts";
import { sectionSlope, sectionSlopeSource } from "./section-slope.ts";

/** `finite_lift_slope(aspect_ratio, sweep, section_slope)`. */
export const finiteLiftSlope = define({
  name: "finite_lift_slope",
  summary: "The lift slope of a flat wing or tail of so much aspect ratio, in closed form.",
  topic: "flow",
  parameters: {
    aspect_ratio: number("1", "span squared over area", { above: 0 }),
    sweep: number("deg", "sweep of the line of half chords", { above: -degrees(80), below: degrees(80), default: 0 }),
    section_slope: sectionSlope,
  },
  result: number("1/rad", "lift slope"),
  formula: "2π·A / (2 + √((A/κ)²·(1 + tan² Λ) + 4)), with κ = section_slope / 2π",
  errors: [],
  assumptions: [
    "About 7 % more than a rectangular lifting surface gives at aspect ratios of 4 to 8; right for very slender and very stubby wings.",
    "Still air, low speed, no stall.",
  ],
  sources: [
    {
      text: "E. C. Polhamus 1950, USAF DATCOM section 4.1.3.2; unswept H. B. Helmbold 1942",
      mark: "from memory",
    },
    sectionSlopeSource,
  ],
  examples: [
    {
      summary: "aspect ratio 8, unswept, a section of 95 % of the theory's slope",
      arguments: { aspect_ratio: 8, section_slope: 0.95 * 2 * Math.PI },
      result: 4.7174,
      tolerance: 2e-5,
    },
    {
      summary: "aspect ratio 5, swept by 45 deg, a section of the theory's slope",
      arguments: { aspect_ratio: 5, sweep: degrees(45), section_slope: 2 * Math.PI },
      result: 3.3605,
      tolerance: 2e-5,
    },
  ],
  elementwise: true,
  compute: ({ aspect_ratio, sweep, section_slope }) => slopeOfFlat(aspect_ratio, Math.tan(sweep), section_slope),
});
