import { numberText } from "../number-text.ts";
import { define, number, record, type ValueOf } from "../spec.ts";

const atmosphereRecord = record(
  "atmosphere",
  "the still air of the standard atmosphere at a height",
  {
    temperature: number("K", "temperature"),
    pressure: number("Pa", "pressure"),
    density: number("kg/m^3", "density"),
    viscosity: number("Pa s", "dynamic viscosity"),
    kinematic_viscosity: number("m^2/s", "viscosity over density"),
    speed_of_sound: number("m/s", "speed of sound"),
  },
  (air) => `${numberText(air.density, "kg/m^3")} at ${numberText(air.temperature, "K")}`,
);

/** The value of an atmosphere in SI. */
export type Atmosphere = ValueOf<typeof atmosphereRecord>;

/** Defining constants of the standard atmosphere, SI. */
const seaLevelTemperature = 288.15;
const seaLevelPressure = 101325;
const lapse = 0.0065;
const freeFall = 9.80665;
/** Specific gas constant of dry air, J/(kg K). */
const gas = 287.05287;
const heatRatio = 1.4;

/** `atmosphere(altitude)`: the standard atmosphere below 11 km. */
export const atmosphere = define({
  name: "atmosphere",
  summary: "The air of the standard atmosphere at an altitude above sea level.",
  topic: "air",
  parameters: { altitude: number("m", "altitude above sea level, geopotential", { min: -2000, max: 11000 }) },
  result: atmosphereRecord,
  formula:
    "T = 288.15 K − 6.5 K/km · H; p = 101 325 Pa · (T / 288.15 K)^(g/(R·6.5 K/km)); ρ = p/(R·T); " +
    "μ = 1.458e−6 · T^1.5 / (T + 110.4); a = √(1.4·R·T); R = 287.05287 J/(kg K)",
  errors: [],
  assumptions: [
    "Dry, still air on a standard day; a warm day is thinner.",
    "Altitude is geopotential, as in the tables of ICAO. geopotential_altitude turns a height in true metres into it: 1.4 m less at 3 km.",
    "Troposphere only.",
  ],
  sources: [
    {
      text: "ICAO Doc 7488, Manual of the ICAO Standard Atmosphere; U.S. Standard Atmosphere, 1976",
      mark: "from memory",
    },
    {
      text: "Viscosity: Sutherland's law with the constants of the U.S. Standard Atmosphere, 1976",
      mark: "from memory",
    },
  ],
  examples: [
    {
      summary: "sea level",
      arguments: { altitude: 0 },
      result: { temperature: 288.15, pressure: 101325, density: 1.225, viscosity: 1.7894e-5, speed_of_sound: 340.294 },
      tolerance: 5e-5,
    },
    {
      summary: "a field at 1500 m",
      arguments: { altitude: 1500 },
      result: {
        temperature: 278.4,
        pressure: 84556,
        density: 1.05807,
        viscosity: 1.7419e-5,
        kinematic_viscosity: 1.6463e-5,
        speed_of_sound: 334.487,
      },
      tolerance: 5e-5,
    },
  ],
  compute: ({ altitude }) => airAt(altitude),
});

/** The air of the standard atmosphere at a geopotential altitude. */
export function airAt(altitude: number): Atmosphere {
  const temperature = seaLevelTemperature - lapse * altitude;
  // Hydrostatic balance under a constant lapse rate (U.S. Standard Atmosphere 1976, equation 33a, from memory).
  const pressure = seaLevelPressure * (temperature / seaLevelTemperature) ** (freeFall / (gas * lapse));
  const density = pressure / (gas * temperature);
  // Sutherland's law (U.S. Standard Atmosphere 1976, equation 51, from memory).
  const viscosity = (1.458e-6 * temperature ** 1.5) / (temperature + 110.4);
  return {
    temperature,
    pressure,
    density,
    viscosity,
    kinematic_viscosity: viscosity / density,
    speed_of_sound: Math.sqrt(heatRatio * gas * temperature),
  };
}

/** The air as a parameter that may be left out; `?? airAt(0)` then stands for it. */
export const airParameter = {
  ...atmosphereRecord,
  summary: "the air, as atmosphere gives it; left out, that of the standard atmosphere at sea level",
  optional: true,
} as const;
