import { define, number } from "../spec.ts";

/** Radius of the earth at which the standard atmosphere's gravity holds, m. */
const earthRadius = 6_356_766;

/** `geopotential_altitude(height)`. */
export const geopotentialAltitude = define({
  name: "geopotential_altitude",
  summary: "The geopotential altitude of a height in true metres, as gravity falls off with height.",
  topic: "air",
  parameters: { height: number("m", "height above sea level in true metres", { min: -5000, max: 86000 }) },
  result: number("m", "geopotential altitude, as atmosphere takes it"),
  formula: "H = r·Z / (r + Z) with the earth's radius r = 6 356 766 m",
  errors: [],
  assumptions: ["Latitude 45.5 deg, where gravity at sea level is the standard one."],
  sources: [{ text: "U.S. Standard Atmosphere, 1976, equation 18", mark: "from memory" }],
  examples: [{ summary: "3000 m", arguments: { height: 3000 }, result: 2998.58485, tolerance: 5e-9 }],
  compute: ({ height }) => (earthRadius * height) / (earthRadius + height),
});
