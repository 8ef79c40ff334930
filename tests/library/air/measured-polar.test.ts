import { describe, expect, test } from "vitest";
import { type MeasuredTable, measuredPolar } from "../../../src/library/air/measured-polar.ts";
import { profileDrag } from "../../../src/library/air/profile-drag.ts";
import { type Section, thinPolar } from "../../../src/library/air/section.ts";
import { sectionPolar } from "../../../src/library/air/section-polar.ts";
import { glide } from "../../../src/library/glide/glide.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { call, refuse } from "../call.ts";
import { ploverWing } from "../plover.ts";

const section: Section = { thickness: 0.04, camber: 0.02, suction: 0.6 };
const thin = thinPolar(section);
const lifts = [-0.2, 0, 0.2, 0.4, 0.6, 0.8, 0.88];
/** The model itself as a table, at some Reynolds numbers. */
const tabled = (...reynolds: readonly number[]): MeasuredTable => ({
  reynolds: reynolds.flatMap((re) => lifts.map(() => re)),
  lift_coefficient: reynolds.flatMap(() => lifts),
  drag_coefficient: reynolds.flatMap((re) => lifts.map((lift) => thin.drag(lift, re))),
  angle: reynolds.flatMap((re) => lifts.map((lift) => lift / thin.slope(re) + thin.zeroLiftAngle)),
});
const read = (table: MeasuredTable) => measuredPolar(table, thin, refuse);

describe("a measured polar", () => {
  test("gives back its own rows, whatever their order", () => {
    const table = tabled(20_000, 60_000);
    const backwards = Object.fromEntries(
      Object.entries(table).map(([name, column]) => [name, [...(column ?? [])].reverse()]),
    ) as unknown as MeasuredTable;
    for (const polar of [read(table), read(backwards)]) {
      for (const re of [20_000, 60_000]) {
        for (const lift of lifts) expect(polar.drag(lift, re)).toBeCloseTo(thin.drag(lift, re), 12);
        expect(polar.maxLift(re)).toBe(0.88);
        expect(polar.slope(re)).toBeCloseTo(thin.slope(re), 10);
      }
      expect(polar.zeroLiftAngle).toBeCloseTo(-0.04, 12);
    }
  });
  test("is within 2 % of the model where that is what was tabled: between rows, between and beyond Reynolds numbers", () => {
    const polar = read(tabled(20_000, 60_000));
    for (const re of [12_000, 20_000, 35_000, 60_000, 90_000]) {
      for (const lift of [0.1, 0.33, 0.7])
        expect(Math.abs(polar.drag(lift, re) / thin.drag(lift, re) - 1)).toBeLessThan(0.02);
    }
  });
  test("has drag without jumps in its slope, also below its lowest row", () => {
    const polar = read(tabled(20_000, 60_000));
    for (const lift of [...lifts, 0.05, -0.4]) {
      const slope = (side: number) => (polar.drag(lift + side, 30_000) - polar.drag(lift, 30_000)) / side;
      expect(slope(1e-6)).toBeCloseTo(slope(-1e-6), 4);
    }
    expect(polar.drag(-0.6, 30_000)).toBeGreaterThan(polar.drag(-0.2, 30_000));
  });
  test("leaves out rows past its largest lift where it has angles", () => {
    const table: MeasuredTable = {
      reynolds: [4e4, 4e4, 4e4, 4e4],
      angle: [0, 0.06, 0.14, 0.2],
      lift_coefficient: [0.2, 0.5, 0.9, 0.7],
      drag_coefficient: [0.03, 0.03, 0.06, 0.2],
    };
    const polar = read(table);
    expect(polar.maxLift(4e4)).toBe(0.9);
    expect(polar.drag(0.7, 4e4)).toBeLessThan(0.06);
    expect(polar.slope(4e4)).toBeCloseTo(5, 12);
  });
  test("keeps the model's lift slope and zero-lift angle where it has no angles, and takes its moments", () => {
    const { angle: _, ...rest } = tabled(40_000);
    const polar = read({ ...rest, moment_coefficient: lifts.map((_lift, i) => (i % 2 ? -0.05 : -0.05)) });
    expect(polar.slope(20_000)).toBe(thin.slope(20_000));
    expect(polar.zeroLiftAngle).toBe(thin.zeroLiftAngle);
    expect(polar.moment).toBeCloseTo(-0.05, 12);
  });
  test("takes the place of the model in section_polar, profile_drag and glide", () => {
    const double = { ...tabled(15_000), drag_coefficient: tabled(15_000).drag_coefficient.map((drag) => 2 * drag) };
    const polar = call(sectionPolar, {
      section: { ...section, zero_lift_angle: -0.04, ideal_lift: 0, max_lift: 0.88, moment: -0.05 },
      reynolds: 15_000,
      measured: double,
    }) as { readonly max_lift: number; readonly drag_coefficient: readonly number[] };
    expect(polar.max_lift).toBe(0.88);
    expect(Math.min(...polar.drag_coefficient)).toBeCloseTo(2 * thin.leastDrag(15_000), 2);
    const wing = { wing: ploverWing, lift_coefficient: 0.6 };
    const drag = (more: object) =>
      (call(profileDrag, { ...wing, speed: 4, ...more }) as { readonly drag_coefficient: number }).drag_coefficient;
    expect(drag({ measured: double }) / drag({})).toBeGreaterThan(1.7);
    const sink = (more: object) => (call(glide, { ...wing, mass: 0.017, ...more }) as { readonly sink: number }).sink;
    expect(sink({ measured: double })).toBeGreaterThan(1.3 * sink({}));
  });
});

describe("a measured polar is refused", () => {
  const table = tabled(40_000);
  const column = (name: keyof MeasuredTable, values: readonly number[]) => () => read({ ...table, [name]: values });
  test("with columns of different lengths, without rows, or with too few at a Reynolds number", () => {
    expect(column("lift_coefficient", [1])).toThrow(/lift_coefficient has 1 entries, reynolds has 7/);
    expect(() => read({ reynolds: [], lift_coefficient: [], drag_coefficient: [] })).toThrow(/no rows/);
    expect(column("reynolds", [4e4, 4e4, 4e4, 4e4, 4e4, 6e4, 6e4])).toThrow(/Reynolds number of 60000.*has 2 rows/);
  });
  test("with two rows of one lift, or without any lift worth the name", () => {
    expect(column("lift_coefficient", [0, 0.2, 0.2, 0.4, 0.6, 0.7, 0.8])).toThrow(/two rows.*lift coefficient of 0.2/);
    expect(column("lift_coefficient", [-0.5, -0.4, -0.3, -0.2, -0.1, 0, 0.05])).toThrow(/largest lift/);
  });
  test("with angles in a wrong unit", () => {
    expect(column("angle", table.angle?.map((each) => (each * 180) / Math.PI) ?? [])).toThrow(
      /column angle and its unit/,
    );
    expect(
      column(
        "angle",
        lifts.map((lift) => degrees(-10 * lift)),
      ),
    ).toThrow(/does not rise|has \d rows?/);
  });
});
