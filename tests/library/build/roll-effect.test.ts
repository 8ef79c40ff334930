import { describe, expect, test } from "vitest";
import { rollEffect } from "../../../src/library/build/roll-effect.ts";
import { rectangularWing } from "../../../src/library/shape/sample-wings.ts";
import { ploverWing } from "../plover.ts";

describe("what errors of a panel do in roll", () => {
  test("is 1.5·δ·V/b for a half of constant chord whose incidence is off", () => {
    // 800 mm by 100 mm.
    expect(rollEffect(rectangularWing).ofTwist(0)).toBeCloseTo(1.5 / 0.8, 12);
  });
  test("adds up: all panels of a half off alike are the half off", () => {
    const { ofTwist } = rollEffect(ploverWing);
    const { y, chord } = ploverWing.right.stations;
    // Strip by strip, both halves damping.
    let [moment, damping] = [0, 0];
    const count = 100_000;
    const tip = y.at(-1) ?? 0;
    for (let k = 0; k < count; k++) {
      const at = ((k + 0.5) / count) * tip;
      const panel = y.findIndex((far, i) => i > 0 && far >= at) - 1;
      const [from, to] = [y[panel] ?? 0, y[panel + 1] ?? 0];
      const [root, end] = [chord[panel] ?? 0, ploverWing.right.tip_chord[panel] ?? 0];
      const c = root + ((end - root) * (at - from)) / (to - from);
      moment += (c * at * tip) / count;
      damping += (2 * c * at ** 2 * tip) / count;
    }
    expect(ofTwist(0) + ofTwist(1) + ofTwist(2)).toBeCloseTo(moment / damping, 6);
  });
  test("of lost lift is that of the incidence which would lose as much", () => {
    const effect = rollEffect(ploverWing);
    expect(effect.ofLift(1, 0.6, 4.5)).toBeCloseTo(effect.ofTwist(1) * (0.6 / 4.5), 12);
  });
});
