import { describe, expect, test } from "vitest";
import { coefficients, derivatives, ellipticWing, farDrag, near, plainWing } from "./sample-flows.ts";

/** An aspect ratio of next to no chord. */
const thin = 1e5;
/** Chord and slope trade places in a lifting line: a thin wing of a large slope stands for a wing of this aspect ratio. */
const asLine = (aspectRatio: number, slope: number) => ({
  counts: { rows: 1, strips: 30, sectionSlope: (slope * thin) / aspectRatio },
  of: (coefficient: number) => (coefficient * aspectRatio) / thin,
});

// Where the slope of the section is as large as the aspect ratio, next to no chord leaves of the lattice the lifting line.
describe("a lattice of next to no chord", () => {
  // Values of a sine series.
  test.each([
    [0.5, 0.099, 0.0202],
    [0.75, 0.135, 0.0355],
    [1, 0.166, 0.0511],
    [1.25, 0.193, 0.0662],
    [1.5, 0.217, 0.0808],
    [1.75, 0.238, 0.0946],
  ])("is the lifting line of a rectangle: at A/a0 %f τ is %f and δ %f", (ratio, tau, delta) => {
    const aspectRatio = 1e5;
    const slope = aspectRatio / ratio;
    const glider = plainWing(aspectRatio);
    const counts = { rows: 1, strips: 30, sectionSlope: slope };
    const { lift_alpha } = derivatives(glider, 0, counts);
    expect((slope / lift_alpha - 1) * Math.PI * ratio - 1).toBeCloseTo(tau, 2);
    const lift = coefficients(glider, 0.01, counts).lift;
    expect((Math.PI * aspectRatio * farDrag(glider, 0.01, counts)) / lift ** 2 - 1).toBeCloseTo(delta, 3);
  });

  // The tapers and aspect ratios of H. A. Pearson and R. T. Jones, NACA TR 635 (1938), section slope 5.67 (from memory); an
  // independent lifting line of 301 terms.
  test.each([
    [6, 1, -0.4943, -0.802],
    [6, 0.5, -0.4579, -0.761],
    [6, 0.25, -0.4182, -0.713],
    [10, 1, -0.5998, -0.96],
    [10, 0.5, -0.5446, -0.899],
    [10, 0.25, -0.4882, -0.834],
    [16, 1, -0.6847, -1.081],
    [16, 0.5, -0.6109, -1.002],
    [16, 0.25, -0.5395, -0.923],
  ])("is that of aspect ratio %d and taper %f: C_lp %f, C_lβ/Γ %f", (aspectRatio, taper, damping, slip) => {
    const line = asLine(aspectRatio, 5.67);
    near(line.of(derivatives(plainWing(thin, { taper }), 0, line.counts).roll_p), damping, 0.001);
    const cant = 0.001;
    near(line.of(derivatives(plainWing(thin, { taper, cant }), 0, line.counts).roll_beta) / cant, slip, 0.002);
  });

  test.each([
    [6, 0.5, 4.6532, 0.0117],
    [6, 0.4, 4.6677, 0.0088],
    [10, 0.4, 5.1879, 0.0172],
    [6, 0.25, 4.6679, 0.0129],
    [8, 0.8, 4.8918, 0.0444],
    [8, 0.6, 4.9426, 0.0245],
  ])("is that of aspect ratio %d and taper %f: C_Lα %f, δ %f", (aspectRatio, taper, slope, delta) => {
    const line = asLine(aspectRatio, 2 * Math.PI);
    const glider = plainWing(thin, { taper });
    near(line.of(derivatives(glider, 0, line.counts).lift_alpha), slope, 0.0005);
    const { lift } = coefficients(glider, 0.01, line.counts);
    expect((Math.PI * thin * farDrag(glider, 0.01, line.counts)) / lift ** 2 - 1).toBeCloseTo(delta, 3);
  });

  // Prandtl's equation for an ellipse, solved for even twist, twist that grows with y, and twist of one size to both sides (derived).
  test.each([6, 10])(
    "is that of an ellipse of aspect ratio %d: its closed forms for lift, damping and slip",
    (aspectRatio) => {
      const line = asLine(aspectRatio, 2 * Math.PI);
      const counts = { ...line.counts, strips: 80 };
      const { lift_alpha, roll_p } = derivatives(ellipticWing(thin, 40), 0, counts);
      near(line.of(lift_alpha), (2 * Math.PI * aspectRatio) / (aspectRatio + 2), 0.002);
      near(line.of(roll_p), (-(Math.PI / 4) * aspectRatio) / (aspectRatio + 4), 0.002);
      const cant = 0.001;
      const { roll_beta } = derivatives(ellipticWing(thin, 40, cant), 0, counts);
      near(line.of(roll_beta) / cant, (-(4 / 3) * aspectRatio) / (aspectRatio + 4), 0.002);
    },
  );
});
