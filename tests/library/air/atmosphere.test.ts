import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Atmosphere, atmosphere } from "../../../src/library/air/atmosphere.ts";
import { geopotentialAltitude } from "../../../src/library/air/geopotential-altitude.ts";
import { call, Refusal } from "../call.ts";
import { runs } from "../panel-arbitraries.ts";

const air = (altitude: number) => call(atmosphere, { altitude }) as Atmosphere;
const altitudes = fc.double({ min: -1900, max: 10900, noNaN: true });

describe("the atmosphere", () => {
  test("is a perfect gas at every altitude, and its viscosities fit its density", () => {
    fc.assert(
      fc.property(altitudes, (altitude) => {
        const { pressure, density, temperature, viscosity, kinematic_viscosity } = air(altitude);
        expect(pressure / (density * temperature)).toBeCloseTo(287.05287, 8);
        expect(kinematic_viscosity * density).toBeCloseTo(viscosity, 15);
      }),
      runs,
    );
  });
  test("rests on itself: pressure falls by the weight of the air between", () => {
    fc.assert(
      fc.property(altitudes, (altitude) => {
        const slope = (air(altitude + 1).pressure - air(altitude - 1).pressure) / 2;
        expect(slope / (-air(altitude).density * 9.80665)).toBeCloseTo(1, 6);
      }),
      runs,
    );
  });
  test("grows thinner and colder with height", () => {
    fc.assert(
      fc.property(altitudes, (altitude) => {
        const [low, high] = [air(altitude), air(altitude + 50)];
        expect(high.density).toBeLessThan(low.density);
        expect(high.temperature).toBeLessThan(low.temperature);
        expect(high.kinematic_viscosity).toBeGreaterThan(low.kinematic_viscosity);
      }),
      runs,
    );
  });
  test("is refused above the troposphere and far below the sea", () => {
    expect(() => air(11001)).toThrow(Refusal);
    expect(() => air(-2001)).toThrow(Refusal);
  });
});

test("geopotential altitude is a little less than the height, by the height squared over the earth's radius", () => {
  for (const height of [-1000, 500, 3000, 11019]) {
    const altitude = call(geopotentialAltitude, { height }) as number;
    expect(height - altitude).toBeCloseTo(height ** 2 / 6_356_766, 0);
    expect(altitude).toBeLessThan(height);
  }
});
