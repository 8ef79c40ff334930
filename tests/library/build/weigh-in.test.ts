import { describe, expect, test } from "vitest";
import { type WeighIn, weighIn } from "../../../src/library/build/weigh-in.ts";
import { call } from "../call.ts";

const parts = {
  part: ["right wing", "left wing", "stick", "tail"],
  budget: [0.004, 0.004, 0.004, 0.002],
  weighed: [0.0044, 0.0041, 0.0041, 0],
  x: [0.035, 0.035, 0.08, 0.26],
  y: [0.1, -0.1, 0, 0],
};
const weigh = (given: Record<string, unknown> = {}) => call(weighIn, { parts, ...given }) as WeighIn;

describe("weighing as you build", () => {
  test("expects the rest to come out as what is weighed, and is sure of it once all is", () => {
    const now = weigh();
    expect(now.parts.expected[3]).toBeCloseTo((0.002 * 0.0126) / 0.012, 12);
    expect(now.expected_low).toBeLessThan(now.expected);
    const done = weigh({ parts: { ...parts, weighed: [0.0044, 0.0041, 0.0041, 0.002] } });
    expect(done.expected_low).toBeCloseTo(done.expected, 12);
    expect(done.left).toBe(0);
  });
  test("says which part is over its budget, and how much heavier one side hangs", () => {
    const now = weigh();
    expect(now.heaviest).toBe("right wing");
    expect(now.parts.state).toEqual(["over its budget", "over its budget", "over its budget", "to be weighed"]);
    expect(now.side_moment).toBeCloseTo(0.0003 * 0.1, 12);
  });
  test("finds the clay that brings the moments about the wanted balance point to nothing", () => {
    const { clay = 0, parts: rows } = weigh({ wanted_x: 0.03, clay_x: -0.08 });
    const moment = rows.expected.reduce(
      (sum, mass, i) => sum + mass * ((parts.x[i] ?? 0) - 0.03),
      clay * (-0.08 - 0.03),
    );
    expect(moment).toBeCloseTo(0, 12);
  });
  test("is refused with what to give where something is missing, and where clay would do harm", () => {
    expect(() => weigh({ wanted_x: 0.03 })).toThrow(/clay_x/);
    expect(() => weigh({ clay_x: -0.08 })).toThrow(/wanted_x/);
    const { x: _x, ...placeless } = parts;
    expect(() => weigh({ parts: placeless, wanted_x: 0.03, clay_x: -0.08 })).toThrow(/column x/);
    expect(() => weigh({ wanted_x: 0.2, clay_x: -0.08 })).toThrow(/other side/);
    expect(() => weigh({ wanted_x: 0.03, clay_x: 0.0305 })).toThrow(/no amount of it moves the balance/);
    expect(() => weigh({ parts: { part: [], budget: [], weighed: [] } })).toThrow(/No part is listed/);
  });
});
