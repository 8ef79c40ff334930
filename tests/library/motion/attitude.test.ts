import fc from "fast-check";
import { expect, test } from "vitest";
import { anglesOf, attitudeOf } from "../../../src/library/motion/attitude.ts";

test("angles come back from their attitude", () => {
  const angle = (limit: number) => fc.double({ min: -limit, max: limit, noNaN: true });
  fc.assert(
    fc.property(angle(3.1), angle(1.55), angle(3.1), (bank, pitch, heading) => {
      const back = anglesOf(attitudeOf({ bank, pitch, heading }));
      expect(back.bank).toBeCloseTo(bank, 9);
      expect(back.pitch).toBeCloseTo(pitch, 9);
      expect(back.heading).toBeCloseTo(heading, 9);
    }),
    { seed: 7 },
  );
});

test("straight down, bank and heading are one turn", () => {
  const back = anglesOf(attitudeOf({ bank: 0.4, pitch: -Math.PI / 2, heading: 0 }));
  expect(back.pitch).toBeCloseTo(-Math.PI / 2, 12);
  expect(back.bank).toBeCloseTo(0.4, 6);
});
