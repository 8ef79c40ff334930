import { expect, test } from "vitest";
import { rungeKutta } from "../../../src/library/numerics/runge-kutta.ts";

/** A swing without loss: x = cos t. */
const swing = (steps: number): number => {
  const state = new Float64Array([1, 0]);
  const move = rungeKutta(2, (at, slope) => {
    slope[0] = at[1] as number;
    slope[1] = -(at[0] as number);
  });
  for (let i = 0; i < steps; i++) move(state, 2 / steps);
  return (state[0] as number) - Math.cos(2);
};

test("the error falls with the fourth power of the step", () => {
  expect(Math.abs(swing(40))).toBeLessThan(1e-7);
  expect(swing(20) / swing(40)).toBeCloseTo(16, 0);
});
