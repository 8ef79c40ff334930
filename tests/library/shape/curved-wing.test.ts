import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { equivalentDihedral } from "../../../src/library/dihedral/equivalent-dihedral.ts";
import { tiltLoss } from "../../../src/library/dihedral/tilt-loss.ts";
import type { Wing } from "../../../src/library/index.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { curvedWing } from "../../../src/library/shape/curved-wing.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { call, Refusal, refuse } from "../call.ts";
import { expectClose } from "../compare.ts";
import { runs } from "../panel-arbitraries.ts";

const curved = (change: Record<string, number>) =>
  call(curvedWing, {
    span: 0.6,
    root_chord: 0.1,
    tip_chord: 0.1,
    dihedral: degrees(10),
    panels: 3,
    thickness: 0.003,
    ...change,
  }) as Wing;
const lossOf = (wing: Wing) => call(tiltLoss, { wing }) as number;

/** Its tilt loss over that of the plain V of the same equivalent dihedral, at an angle so small that sines are angles. */
const saving = (change: Record<string, number>) =>
  lossOf(curved({ dihedral: 1e-4, ...change })) / lossOf(curved({ dihedral: 1e-4, ...change, bend: 0 }));

describe("a curved wing", () => {
  test("has the span, area and equivalent dihedral asked for, whatever its bend", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 2, noNaN: true }),
        fc.double({ min: 0.02, max: 0.3, noNaN: true }),
        fc.double({ min: 0.02, max: 0.3, noNaN: true }),
        fc.double({ min: 0.01, max: 0.25, noNaN: true }),
        fc.integer({ min: 1, max: 40 }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (span, root_chord, tip_chord, dihedral, panels, bend) => {
          const wing = curved({ span, root_chord, tip_chord, dihedral, panels, bend });
          expectClose(wing.span, span, 1e-11);
          expectClose(wing.area, (span * (root_chord + tip_chord)) / 2, 1e-11);
          expectClose(call(equivalentDihedral, { wing }), dihedral, 1e-11);
          expect(wing.panels).toBe(panels);
        },
      ),
      runs,
    );
  });

  // Equal panels, constant chord: least loss over the plain V's is (1/4) / Σ ((i − ½)/n)²/n (derived).
  test.each([
    [1, 1],
    [2, 0.8],
    [3, 0.7714],
    [4, 0.7619],
    [6, 0.7552],
  ])("of %i panels a side and constant chord loses %f of what the plain V loses", (panels, share) => {
    expect(saving({ panels })).toBeCloseTo(share, 4);
  });

  test("comes to 3/4 of the plain V's loss with ever more panels, and to 0.711 at a taper of one half", () => {
    expect(saving({ panels: 200 })).toBeCloseTo(0.75, 4);
    expect(saving({ panels: 200, tip_chord: 0.05 })).toBeCloseTo(0.711, 3);
  });

  test("loses less with every panel more", () => {
    const losses = [1, 2, 3, 4, 5, 6, 8, 12].map((panels) => saving({ panels }));
    losses.slice(1).forEach((loss, i) => {
      expect(loss).toBeLessThan(losses[i] ?? 0);
    });
  });

  test("loses least as a parabola: every other bend of the same equivalent dihedral loses more", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 12 }),
        fc.double({ min: 0, max: 4, noNaN: true }).filter((bend) => Math.abs(bend - 1) > 0.05),
        (panels, bend) => {
          expect(saving({ panels, bend })).toBeGreaterThan(saving({ panels }));
        },
      ),
      runs,
    );
  });

  test("as an ellipse of many panels loses 64/(9π²) of what the plain V loses", () => {
    const count = 400;
    const each = (value: (share: number) => number) =>
      Array.from({ length: count }, (_, i) => value((i + 0.5) / count));
    const ellipse = (cant: (share: number) => number) => {
      const cants = each(cant);
      const chords = each((share) => 0.1 * Math.sqrt(1 - share ** 2));
      return buildWing(
        {
          length: cants.map((angle) => 0.3 / count / Math.cos(angle)),
          root_chord: chords,
          tip_chord: chords,
          sweep: cants.map(() => 0),
          break: cants.map((angle, i) => angle - (cants[i - 1] ?? 0)),
          washout: cants.map(() => 0),
          thickness: cants.map(() => 0.003),
        },
        undefined,
        refuse,
      );
    };
    const parabola = ellipse((share) => 1e-4 * share);
    const plain = ellipse(() => call(equivalentDihedral, { wing: parabola }) as number);
    expect(lossOf(parabola) / lossOf(plain)).toBeCloseTo(64 / (9 * Math.PI ** 2), 3);
  });

  test("bends down where a negative dihedral is asked for", () => {
    expect(curved({ dihedral: -degrees(5) }).tip_height).toBeCloseTo(-curved({ dihedral: degrees(5) }).tip_height, 12);
  });

  test("is refused where its tips would stand upright, or its panels cannot be counted", () => {
    expect(() => curved({ dihedral: degrees(80), panels: 4 })).toThrow(/tip panel would stand at/);
    expect(() => curved({ panels: 2.5 })).toThrow(/no whole number/);
    expect(() => curved({ panels: 0 })).toThrow(Refusal);
  });
});
