import { describe, expect, test } from "vitest";
import { circle } from "../../../src/library/motion/circle.ts";
import { rollingTendency } from "../../../src/library/motion/rolling-tendency.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { buildTailplane } from "../../../src/library/shape/tailplane.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { call, refuse } from "../call.ts";
import { ploverWith } from "../glide/plover-glider.ts";
import { ploverPanels, ploverTailplane } from "../plover.ts";

type Tendency = ReturnType<typeof rollingTendency.compute>;
type Circle = ReturnType<typeof circle.compute>;
const given = { shape: "flat-bottomed", other_area: 0 };
const tendency = (glider: ReturnType<typeof ploverWith>) => call(rollingTendency, { ...given, glider }) as Tendency;
/** Plover with its left half changed. */
const crooked = (left: Partial<typeof ploverPanels>, right: Partial<typeof ploverPanels> = {}) =>
  ploverWith({ wing: buildWing({ ...ploverPanels, ...right }, { ...ploverPanels, ...left }, refuse) });

describe("the rolling of a wing built crooked", () => {
  const washout = ploverPanels.washout.map((each, i) => (i === 0 ? each + degrees(1) : each));

  test("goes towards the half that is washed out more, and the mirrored wing rolls the other way", () => {
    const [left, right] = [tendency(crooked({ washout })), tendency(crooked({}, { washout }))];
    expect(left.roll_rate).toBeLessThan(-degrees(5));
    expect(right.roll_rate).toBeCloseTo(-left.roll_rate, 8);
    expect(right.cure / -left.cure).toBeCloseTo(1, 2);
  });

  test("is cured by as much washout of the other half as it was crooked by", () => {
    expect(tendency(crooked({ washout })).cure / degrees(1)).toBeCloseTo(1, 1);
    expect(tendency(crooked({ washout }, { washout })).roll_rate).toBeCloseTo(0, 9);
  });

  test("goes towards the half whose tip is steeper and lifts less upwards, and ends in a circle", () => {
    const steeper = ploverPanels.break.map((each, i) => (i === 2 ? each + degrees(4) : each));
    const { roll_rate } = tendency(crooked({ break: steeper }));
    expect(roll_rate).toBeLessThan(0);
    expect((call(circle, { ...given, glider: crooked({ break: steeper }) }) as Circle).bank).not.toBeCloseTo(0, 3);
  });
});

describe("a tilted tailplane", () => {
  const tilted = (tilt: number, incidence: number) =>
    ploverWith({ tailplane: buildTailplane({ ...ploverTailplane, incidence, tilt }) });
  const circleOf = (glider: ReturnType<typeof ploverWith>) => call(circle, { ...given, glider }) as Circle;

  test("circles to one side, and tilted the other way to the other", () => {
    const { incidence } = ploverTailplane;
    const [right, left] = [degrees(8), -degrees(8)].map((tilt) => circleOf(tilted(tilt, incidence)));
    expect(Math.abs(right?.bank ?? 0)).toBeGreaterThan(degrees(0.2));
    expect(left?.bank).toBeCloseTo(-(right?.bank ?? Number.NaN), 6);
    expect(left?.radius).toBeCloseTo(right?.radius ?? Number.NaN, 3);
  });

  test("left level is the same glider", () => {
    expect(circleOf(tilted(0, ploverTailplane.incidence)).sink).toBe(circleOf(ploverWith()).sink);
  });
});
