import { describe, expect, test } from "vitest";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { buildTailplane } from "../../../src/library/shape/tailplane.ts";
import {
  coefficients,
  derivatives,
  ellipticWing,
  farDrag,
  near,
  plainWing,
  solved,
  wingAlone,
} from "./sample-flows.ts";

describe("limits of the lattice", () => {
  test("strips of 4 by 1 on a swept wing are those of the textbook (Bertin and Smith, Aerodynamics for Engineers)", () => {
    const glider = plainWing(5, { sweep: 0.5 });
    const { circulation, lattice } = solved(glider, { strips: 4, rows: 1, evenStrips: true });
    const strengths = [...circulation.subarray(2 * lattice.count, 3 * lattice.count)].map((g) => g / (4 * Math.PI));
    [0.0273, 0.0287, 0.0286, 0.025].forEach((value, i) => {
      expect(strengths[i]).toBeCloseTo(value, 4);
    });
    near(derivatives(glider, 0, { strips: 4, rows: 1, evenStrips: true }).lift_alpha, 3.443, 0.001);
  });

  test("a strip of a very long wing with one row lifts by 2π about its quarter chord", () => {
    const d = derivatives(plainWing(20000), 0, { rows: 1, strips: 6 });
    near(d.lift_alpha, 2 * Math.PI, 1e-3);
    near(-d.pitch_alpha / d.lift_alpha, 0.25, 1e-9);
  });

  test("a very short wing lifts by π·A/2 (R. T. Jones, NACA TR 835)", () => {
    const d = derivatives(plainWing(0.25), 0, { rows: 12, strips: 8 });
    near(d.lift_alpha, (Math.PI * 0.25) / 2, 0.005);
    const slender = derivatives(plainWing(0.05), 0, { rows: 30, strips: 8 });
    near(slender.lift_alpha, (Math.PI * 0.05) / 2, 0.001);
  });

  test("an elliptic wing makes next to the least drag of its span", () => {
    const glider = ellipticWing(6, 16);
    const lift = coefficients(glider, 0.05).lift;
    near(lift ** 2 / (Math.PI * glider.wing.aspect_ratio * farDrag(glider, 0.05)), 1, 0.003);
  });

  test("an elliptic wing of aspect ratio 6 damps roll by 13 % less than by the lifting line (NACA ARR L5F23)", () => {
    near(derivatives(ellipticWing(6, 16), 0).roll_p / (-(Math.PI / 4) * 0.6), 0.87, 0.01);
  });

  test("the loads have the drag of the far field", () => {
    for (const glider of [plainWing(8), plainWing(6, { taper: 0.5 }), plainWing(8, { sweep: 0.1, cant: degrees(8) })]) {
      near(coefficients(glider, 0.02).drag, farDrag(glider, 0.02), 0.005);
    }
  });

  test("camber of a long wing turns its angle of zero lift down by twice its height (thin-aerofoil theory)", () => {
    const glider = plainWing(20000);
    const counts = { rows: 4, strips: 4, camber: 0.04 };
    const { lift } = coefficients(glider, 0, counts);
    near(lift / derivatives(glider, 0, counts).lift_alpha, 2 * 0.04, 0.005);
    // Moment about the quarter chord: −π·f, by the same theory. The narrow strips at the tips have a little less.
    const quarter = glider.wing.mac / 4;
    for (const rows of [2, 3, 4, 8]) {
      near(coefficients(glider, 0, { ...counts, rows }, [quarter, 0, 0]).pitch, -Math.PI * 0.04, 0.01);
    }
  });

  test("a section of less slope lifts less, by just that on a long wing", () => {
    const long = derivatives(plainWing(20000), 0, { rows: 3, strips: 6, sectionSlope: 5.2 });
    near(long.lift_alpha, 5.2, 1e-3);
    near(-long.pitch_alpha / long.lift_alpha, 0.25, 1e-3);
  });

  test("washout of a half turns the angle of zero lift up", () => {
    const panels = {
      length: [0.25, 0.25],
      root_chord: [0.1, 0.1],
      tip_chord: [0.1, 0.1],
      sweep: [0, 0],
      break: [0, 0],
      thickness: [0.003, 0.003],
    };
    const flat = coefficients(wingAlone({ ...panels, washout: [0, 0] }), 0.05);
    const washed = coefficients(wingAlone({ ...panels, washout: [0, degrees(3)] }), 0.05);
    expect(washed.lift).toBeLessThan(flat.lift);
    expect(washed.lift).toBeGreaterThan(flat.lift * 0.5);
  });

  test("a tail moved through the wing's wake feels no step", () => {
    const layout = (z: number) => ({
      ...plainWing(8),
      tailplane: tailAt(z),
    });
    const point = (z: number) => {
      const d = derivatives(layout(z), 0.05);
      return -d.pitch_alpha / d.lift_alpha;
    };
    const heights = [-0.02, -0.01, -0.005, -0.002, -0.001, 0, 0.001, 0.002, 0.005, 0.01, 0.02];
    const places = heights.map(point);
    // A tenth of a chord higher or lower moves the neutral point by no more than 0.3 % of the chord.
    for (let i = 1; i < places.length; i++) {
      const way = (heights[i] ?? 0) - (heights[i - 1] ?? 0);
      expect(Math.abs((places[i] ?? 0) - (places[i - 1] ?? 0))).toBeLessThan(0.03 * way * 8);
    }
    expect(Math.abs(point(0.0001) - point(0))).toBeLessThan(1e-5);
  });
});

const tailAt = (z: number) =>
  buildTailplane({
    span: 0.3,
    root_chord: 0.075,
    tip_chord: 0.075,
    x: 0.5125,
    thickness: 1e-6,
    sweep: 0,
    z,
    incidence: 0,
  });
