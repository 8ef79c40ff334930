import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bodyDragArea } from "../../../src/library/air/body-drag-area.ts";
import { profileDrag } from "../../../src/library/air/profile-drag.ts";
import {
  idealLift,
  liftSlopeAt,
  maxLift,
  type Section,
  sectionDrag,
  sectionLift,
} from "../../../src/library/air/section.ts";
import { thinSection } from "../../../src/library/air/thin-section.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { call, Refusal, refuse } from "../call.ts";
import { runs, withColumns } from "../panel-arbitraries.ts";
import { ploverPanels, ploverWing } from "../plover.ts";

const plate: Section = { thickness: 0.03, camber: 0, suction: 0.25 };
const arc = (camber: number): Section => ({ thickness: 0.03, camber, suction: 0.25 });
const bottomed = (thickness: number): Section => ({ thickness, camber: thickness / 2, suction: 0.6 });
const speeds = fc.double({ min: 15_000, max: 80_000, noNaN: true });

/** The best glide ratio of a section, over all lifts that it can give. */
const bestRatio = (section: Section, reynolds: number) =>
  Math.max(
    ...Array.from({ length: 60 }, (_, i) => 0.02 * (i + 1))
      .filter((lift) => lift <= maxLift(section))
      .map((lift) => lift / sectionDrag(section, lift, reynolds)),
  );

describe("thin sections rank as wind tunnels found them", () => {
  // E. V. Laitone, Experiments in Fluids 23 (1997) 405–409.
  test("a thin plate bent to 5 % is better than a flat plate or a flat-bottomed section below 70 000", () => {
    for (const reynolds of [20_000, 40_000, 60_000]) {
      expect(bestRatio(arc(0.05), reynolds)).toBeGreaterThan(bestRatio(plate, reynolds));
      expect(bestRatio(arc(0.05), reynolds)).toBeGreaterThan(bestRatio(bottomed(0.05), reynolds));
    }
  });
  // Winslow and others, Journal of Aircraft, doi 10.2514/1.C034415; Pelletier and Mueller, Journal of Aircraft 37 (2000).
  test("cambered plates beat flat ones, and of flat plates the thinner has less drag", () => {
    fc.assert(
      fc.property(speeds, fc.double({ min: 0.03, max: 0.09, noNaN: true }), (reynolds, camber) => {
        expect(bestRatio(arc(camber), reynolds)).toBeGreaterThan(bestRatio(plate, reynolds));
        const thick = { ...plate, thickness: 0.05 };
        const thin = { ...plate, thickness: 0.01 };
        expect(sectionDrag(thin, 0.3, reynolds)).toBeLessThan(sectionDrag(thick, 0.3, reynolds));
      }),
      runs,
    );
  });
});

describe("the drag of a section", () => {
  test("falls as the Reynolds number grows and rises away from its ideal lift", () => {
    fc.assert(
      fc.property(speeds, fc.double({ min: 0, max: 0.06, noNaN: true }), (reynolds, camber) => {
        const section = arc(camber);
        const ideal = idealLift(section);
        expect(sectionDrag(section, ideal, reynolds)).toBeGreaterThan(sectionDrag(section, ideal, reynolds * 1.1));
        for (const off of [-0.2, 0.2]) {
          expect(sectionDrag(section, ideal + off, reynolds)).toBeGreaterThan(sectionDrag(section, ideal, reynolds));
        }
      }),
      runs,
    );
  });
  test("past the largest lift grows by all that is wanted beyond it", () => {
    const most = maxLift(plate);
    const edge = (lift: number) => (0.75 * lift ** 2) / (2 * Math.PI);
    const more = sectionDrag(plate, most + 0.1, 40_000) - sectionDrag(plate, most, 40_000);
    expect(more).toBeCloseTo(0.1 + edge(most + 0.1) - edge(most), 12);
  });
});

describe("the lift of a section", () => {
  test("has no jump anywhere through either stall", () => {
    fc.assert(
      fc.property(fc.double({ min: -0.35, max: 0.35, noNaN: true }), speeds, (angle, reynolds) => {
        for (const section of [plate, bottomed(0.045), arc(0.06)]) {
          const step = sectionLift(section, angle + 1e-6, reynolds) - sectionLift(section, angle, reynolds);
          expect(Math.abs(step)).toBeLessThan(1e-5);
        }
      }),
      runs,
    );
  });
  test("of a flat plate is the same upside down, and falls by 15 % over the 5 deg past its stall", () => {
    for (const angle of [0.03, 0.1, 0.16, 0.3]) {
      expect(sectionLift(plate, -angle, 40_000)).toBeCloseTo(-sectionLift(plate, angle, 40_000), 12);
    }
    // The corner is rounded by ±0.1 of lift, so that the largest lift comes a little later.
    const stall = 0.8 / 5.7;
    expect(sectionLift(plate, 0.6 / 5.7, 40_000)).toBeCloseTo(0.6, 12);
    expect(sectionLift(plate, stall, 40_000)).toBeCloseTo(0.7, 12);
    expect(sectionLift(plate, stall + degrees(5), 40_000)).toBeCloseTo(0.595, 12);
    expect(sectionLift(plate, stall + degrees(9), 40_000)).toBeCloseTo(0.595, 12);
  });
  test("rises less steeply at 15 000 than from 40 000 on", () => {
    expect(liftSlopeAt(10_000)).toBe(5.2);
    expect(liftSlopeAt(15_000)).toBe(5.2);
    expect(liftSlopeAt(40_000)).toBe(5.7);
    expect(liftSlopeAt(90_000)).toBe(5.7);
    expect(liftSlopeAt(25_000)).toBeGreaterThan(5.2);
    expect(liftSlopeAt(25_000)).toBeLessThan(5.7);
  });
});

describe("a thin section is refused", () => {
  test("of an unknown shape, with the list and the nearest", () => {
    expect(() => call(thinSection, { shape: "flat plat", thickness: 0.03 })).toThrow(/Did you mean "flat plate"\?/);
    expect(() => call(thinSection, { shape: "bottomed", thickness: 0.03 })).toThrow(/Did you mean "flat-bottomed"\?/);
  });
  test("as an arc without camber", () => {
    expect(() => call(thinSection, { shape: "arc", thickness: 0.03 })).toThrow(/needs its camber/);
  });
});

interface ProfileDrag {
  readonly drag_coefficient: number;
  readonly reynolds: number;
  readonly lowest_reynolds: number;
  readonly max_lift: number;
}
const drag = (given: Record<string, unknown>) =>
  call(profileDrag, { wing: ploverWing, lift_coefficient: 0.6, speed: 4, ...given }) as ProfileDrag;

describe("the profile drag of a wing", () => {
  test("is that of its strips, each at its own Reynolds number", () => {
    const strips = 400;
    const sum = [0, 1, 2].reduce((total, panel) => {
      const of = (list: readonly number[]) => list[panel] ?? Number.NaN;
      for (let i = 0; i < strips; i++) {
        const share = (i + 0.5) / strips;
        const chord = of(ploverPanels.root_chord) * (1 - share) + of(ploverPanels.tip_chord) * share;
        const section = bottomed(of(ploverPanels.thickness) / chord);
        const area = (2 * of(ploverPanels.length) * chord) / strips;
        total += area * sectionDrag(section, 0.6, (4 * chord) / 1.46075e-5);
      }
      return total;
    }, 0);
    expect(drag({}).drag_coefficient / (sum / ploverWing.area)).toBeCloseTo(1, 5);
  });
  test("takes the camber of the table where it has one, and needs it for arcs", () => {
    const bent = buildWing(withColumns(ploverPanels, { camber: [0.05, 0.05, 0.04] }), undefined, refuse);
    expect(drag({ wing: bent, shape: "arc" }).max_lift).toBeCloseTo(1.09, 12);
    expect(drag({ wing: bent }).max_lift).toBeCloseTo(1.09, 12);
    expect(() => drag({ shape: "arc" })).toThrow(/needs its camber/);
    expect(drag({ shape: "flat plate" }).max_lift).toBe(0.7);
  });
  test("of Plover lies where tests of small wings lie: 0.03 to 0.045, at 10 000 to 20 000", () => {
    const found = drag({});
    expect(found.drag_coefficient).toBeGreaterThan(0.03);
    expect(found.drag_coefficient).toBeLessThan(0.045);
    expect(found.lowest_reynolds).toBeGreaterThan(10_000);
    expect(found.reynolds).toBeLessThan(20_000);
  });
  test("is refused where the sections are not known: too slow or too fast", () => {
    expect(() => drag({ speed: 1 })).toThrow(/Reynolds number of 2738.*higher speed/);
    expect(() => drag({ speed: 100 })).toThrow(/lower speed/);
    expect(() => drag({ shape: "round" })).toThrow(Refusal);
  });
});

describe("the drag area of a body", () => {
  const stick = { length: 0.38, width: 0.005, height: 0.007, speed: 4 };
  test("is at least its turbulent friction, and refused for a lump or in still air", () => {
    const area = call(bodyDragArea, stick) as number;
    expect(area).toBeGreaterThan(2 * 0.012 * 0.38 * 0.007);
    expect(() => call(bodyDragArea, { ...stick, length: 0.01 })).toThrow(/no slender body/);
    expect(() => call(bodyDragArea, { ...stick, speed: 0.01 })).toThrow(/friction law ends/);
  });
});
