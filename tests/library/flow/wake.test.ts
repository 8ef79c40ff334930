import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { downwash } from "../../../src/library/flow/downwash.ts";
import { downwashPerLift, ellipticShare } from "../../../src/library/flow/wake.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import type { Wing } from "../../../src/library/shape/wing-record.ts";
import { call, refuse } from "../call.ts";
import { runs, scaled } from "../panel-arbitraries.ts";
import { ploverPanels, ploverWing } from "../plover.ts";

/** A flat wing of 1 m span whose chord at a share of the half span is told. */
function flat(chord: (share: number) => number, count = 80) {
  const at = (i: number) => Math.sin((i / count) * (Math.PI / 2));
  const each = <T>(value: (i: number) => T) => Array.from({ length: count }, (_, i) => value(i));
  return buildWing(
    {
      length: each((i) => (at(i + 1) - at(i)) / 2),
      root_chord: each((i) => chord(at(i))),
      tip_chord: each((i) => Math.max(1e-6, chord(at(i + 1)))),
      sweep: each(() => 0),
      break: each(() => 0),
      washout: each(() => 0),
      thickness: each(() => 0.003),
    },
    undefined,
    refuse,
  );
}
const even = flat(() => 0.1, 1);
const ellipse = flat((share) => 0.12 * Math.sqrt(1 - share ** 2));
const place = fc.double({ min: 0.15, max: 1.5, noNaN: true });
const height = fc.double({ min: -0.15, max: 0.15, noNaN: true });

/** Complete elliptic integral of the second kind, by the arithmetic-geometric mean (Abramowitz and Stegun, 17.6). */
function ellipticE(k: number): number {
  let [a, b, sum, power] = [1, Math.sqrt(1 - k ** 2), k ** 2 / 2, 1];
  for (let i = 0; i < 30; i++) {
    const c = (a - b) / 2;
    [a, b] = [(a + b) / 2, Math.sqrt(a * b)];
    sum += power * c ** 2;
    power *= 2;
  }
  return (Math.PI / (2 * a)) * (1 - sum);
}

describe("the loading", () => {
  test("of even chords is half ellipse, of an elliptic wing all of it", () => {
    expect(ellipticShare(even)).toBeCloseTo(0.5, 12);
    expect(ellipticShare(ellipse)).toBeCloseTo(1, 2);
    expect(ellipticShare(flat((share) => 0.1 * (1 - 0.99 * share)))).toBe(1);
  });
});

describe("the downwash of a wing", () => {
  test("of elliptic loading is that of its sheet of vortices: CL/(πA)·(1 + (2/π)·√(1 + s²/x²)·E)", () => {
    fc.assert(
      fc.property(place, (x) => {
        const [half, aspect] = [0.5, ellipse.aspect_ratio];
        const away = Math.hypot(x, half);
        const sheet = (1 + (2 / Math.PI) * (away / x) * ellipticE(half / away)) / (Math.PI * aspect);
        expect(downwashPerLift(ellipse, x, 0) / sheet).toBeCloseTo(1, 2);
      }),
      runs,
    );
  });

  test("is that of many narrow horseshoe vortices laid side by side with the same loading", () => {
    // Each is worked out by the law of Biot and Savart on its three legs, far legs 1 km long.
    const leg = (from: number[], to: number[], at: number[]) => {
      const minus = (a: number[], b: number[]) => a.map((value, i) => value - (b[i] ?? 0)) as [number, number, number];
      const dot = (a: number[], b: number[]) => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
      const cross = ([a, b, c]: [number, number, number], [d, e, f]: [number, number, number]) => [
        b * f - c * e,
        c * d - a * f,
        a * e - b * d,
      ];
      const [r0, r1, r2] = [minus(to, from), minus(at, from), minus(at, to)];
      const across = cross(r1, r2);
      const size = dot(across, across);
      const turn = dot(r0, r1) / Math.hypot(...r1) - dot(r0, r2) / Math.hypot(...r2);
      return size < 1e-20 ? 0 : ((across[2] ?? 0) / size) * turn;
    };
    const count = 1200;
    for (const [x, z] of [
      [0.4, 0.06],
      [0.9, -0.1],
    ] as const) {
      let up = 0;
      for (let i = 0; i < count; i++) {
        const [left, right] = [i, i + 1].map((k) => 0.5 * Math.sin((k / count - 0.5) * Math.PI)) as [number, number];
        const middle = (left + right) / 2;
        const strength = 0.5 + 0.5 * (4 / Math.PI) * Math.sqrt(1 - (2 * middle) ** 2);
        const at = [x, 0, z];
        const corners = [
          [1000, left, 0],
          [0, left, 0],
          [0, right, 0],
          [1000, right, 0],
        ];
        for (let k = 0; k < 3; k++) up += strength * leg(corners[k] ?? [], corners[k + 1] ?? [], at);
      }
      const mean = even.area / (2 * even.span) / (4 * Math.PI);
      expect(Math.abs((up * mean) / downwashPerLift(even, x, z))).toBeCloseTo(1, 3);
    }
  });

  test("is the same above and below, and less the farther from the wake's plane", () => {
    fc.assert(
      fc.property(place, height, (x, z) => {
        expect(downwashPerLift(ploverWing, x, z)).toBeCloseTo(downwashPerLift(ploverWing, x, -z), 12);
        expect(downwashPerLift(ploverWing, x, z)).toBeGreaterThan(
          downwashPerLift(ploverWing, x, z * 1.1 + (z < 0 ? -0.01 : 0.01)),
        );
      }),
      runs,
    );
  });

  test("does not depend on the size of wing and distance together", () => {
    const [large, small] = [1, 0.1].map((size) => buildWing(scaled(ploverPanels, size), undefined, refuse)) as [
      Wing,
      Wing,
    ];
    expect(downwashPerLift(small, 0.04, 0.006)).toBeCloseTo(downwashPerLift(large, 0.4, 0.06), 12);
  });

  test("is refused ahead of the trailing edge", () => {
    expect(() => call(downwash, { wing: ploverWing, x: 0.05 })).toThrow(/must lie behind the wing/);
  });
});
