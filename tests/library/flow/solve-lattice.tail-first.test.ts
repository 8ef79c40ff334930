/** A tailplane ahead of the wing, whose wake passes the wing. */
import { describe, expect, test } from "vitest";
import { nearFieldDrag } from "../../../src/library/flow/near-field.ts";
import { straightFlight } from "../../../src/library/flow/wind-axes.ts";
import type { Glider } from "../../../src/library/shape/glider-record.ts";
import { derivatives, farDrag, near, plover, solved } from "./sample-flows.ts";

/** Height of the wing's root above that of the tailplane's middle where z is 0. */
const level = 0.012 - 0.0015 / 2;
const tailFirst = (tailplane: { z?: number; span?: number }, bent = true): Glider =>
  plover({
    ...(!bent && { panels: { break: [0, 0, 0] } }),
    seatAngle: 0,
    tailplane: { x: -0.2, z: level, ...tailplane },
  });
const neutral = (glider: Glider, strips = 12) => {
  const { pitch_alpha, lift_alpha } = derivatives(glider, 0.05, { strips });
  return -pitch_alpha / lift_alpha;
};

describe("a tailplane ahead of the wing", () => {
  test("moved up and down through the height of the wing shifts the neutral point smoothly", () => {
    const places = Array.from({ length: 25 }, (_, i) => neutral(tailFirst({ z: level + (i - 12) * 0.001 })));
    for (let i = 1; i < places.length; i++) {
      expect(Math.abs((places[i] ?? Number.NaN) - (places[i - 1] ?? Number.NaN))).toBeLessThan(0.001);
    }
  });

  test("made wider in the plane of a flat wing shifts it forward evenly, wherever its tips pass", () => {
    const places = Array.from({ length: 21 }, (_, i) => neutral(tailFirst({ span: 0.1 + i * 0.005 }, false)));
    const steps = places.slice(1).map((place, i) => place - (places[i] ?? Number.NaN));
    const mean = steps.reduce((sum, step) => sum + step, 0) / steps.length;
    expect(mean).toBeLessThan(0);
    for (const step of steps) expect(Math.abs(step / mean - 1)).toBeLessThan(0.15);
  });

  test("has in its wake's plane the neutral point of a fine lattice, too, and the drag of the far field", () => {
    const glider = tailFirst({}, false);
    expect(Math.abs(neutral(glider) - neutral(glider, 40))).toBeLessThan(0.005);
    const nearField = (2 * nearFieldDrag(solved(glider), straightFlight(0.05))) / glider.wing.area;
    near(nearField, farDrag(glider, 0.05), 0.02);
  });

  test("is the same by halves as by the whole matrix", () => {
    const glider = tailFirst({});
    const half = solved(glider).loads;
    const whole = solved({ ...glider, wing: { ...glider.wing, mirrored: false } }).loads;
    const largest = Math.max(...half.form.map(Math.abs));
    half.form.forEach((value, i) => {
      expect(Math.abs(value - (whole.form[i] ?? 0))).toBeLessThan(1e-10 * largest);
    });
  });
});
