import { describe, expect, it } from "vitest";
import { axisFor, axisTitle } from "../../../src/views/charts/axis.ts";

const axis = (values: readonly number[], unit = "", limits: readonly number[] = [], count = 5) =>
  axisFor(values, limits, { range: [0, 100], unit, count });
const texts = (...of: Parameters<typeof axis>) => axis(...of).ticks.map(({ text }) => text);

describe("an axis", () => {
  it("runs over its values in round numbers of its unit", () => {
    expect(texts([0.017, 0.059], "%")).toEqual(["1", "2", "3", "4", "5", "6"]);
    expect(axis([0.01, 0.06], "%").place(0.035)).toBeCloseTo(50, 6);
  });
  it("gives all ticks the same decimals, and a true minus", () => {
    expect(texts([-1, 0.9])).toEqual(["−1.0", "−0.5", "0.0", "0.5", "1.0"]);
  });
  it("puts a single value in the middle", () => {
    expect(axis([4]).place(4)).toBeCloseTo(50, 6);
    expect(axis([0]).place(0)).toBeCloseTo(50, 6);
    expect(axis([0.1 + 0.2, 0.3]).ticks.length).toBeGreaterThan(1);
  });
  it("runs from 0 to 1 without any value", () => expect(texts([])[0]).toBe("0.0"));
  it("shows a limit that is near, and leaves out one that is far", () => {
    expect(axis([10, 20], "", [8]).place(8)).toBeGreaterThanOrEqual(0);
    expect(axis([10, 20], "", [-500]).place(10)).toBeLessThan(10);
  });
  it("tells very small and very large values with an exponent", () => {
    expect(texts([1e-7, 3e-7], "", [], 2)).toEqual(["1e-7", "2e-7", "3e-7"]);
    expect(texts([1e8, 3e8], "", [], 2)).toEqual(["1e8", "2e8", "3e8"]);
  });
  it("draws fewer ticks where their texts would run together", () => {
    const room = () => 45;
    expect(axisFor([0, 10], [], { range: [0, 100], unit: "", count: 10, room }).ticks).toHaveLength(3);
  });
  it("minds the zero point of °C", () => expect(texts([273.15, 283.15], "°C", [], 2)).toEqual(["0", "5", "10"]));
});

describe("the title of an axis", () => {
  it("says what and in which unit", () => expect(axisTitle("tilt loss", "%")).toBe("tilt loss, %"));
  it("says nothing of a unit where there is none", () => expect(axisTitle("spiral", "")).toBe("spiral"));
});
