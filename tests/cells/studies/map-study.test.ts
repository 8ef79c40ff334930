import { describe, expect, test } from "vitest";
import { levelsOf } from "../../../src/cells/studies/map-study.ts";
import { outcome, refusal } from "./study-cases.ts";

const design = `given a [mm] from 0 mm to 4 mm = 1 mm
given b [s] from 0 s to 2 s = 2 s
area [mm^2] = a^2
speed [m/s] = a / b
check slow = speed < 0.001 m/s
check even = a = 1 mm`;
const map = {
  study: "map",
  inputs: [
    { input: "a", points: 5 },
    { input: "b", points: 3 },
  ],
  results: ["area", "speed"],
} as const;

describe("a map", () => {
  const found = outcome(design, map, [
    { name: "far", set: { a: "3 mm" } },
    { name: "broken", set: { c: "1" } },
    { name: "empty", set: { a: "" } },
  ]);

  test("has the heights of each result over the grid, row by row", () => {
    expect(found.inputs.map(({ values }) => values)).toEqual([
      [0, 0.001, 0.002, 0.003, 0.004].map((each) => expect.closeTo(each, 12)),
      [0, 1, 2],
    ]);
    const squares = [0, 1, 4, 9, 16].map((each) => expect.closeTo(each * 1e-6, 15));
    expect(found.results[0]?.heights).toEqual([...squares, ...squares, ...squares]);
    expect(found.results[1]?.heights.slice(5)).toEqual(
      [0, 1, 2, 3, 4, 0, 0.5, 1, 1.5, 2].map((each) => expect.closeTo(each * 1e-3, 12)),
    );
  });

  test("says where each check fails, and how far it is from its limit", () => {
    const [slow, even] = found.checks;
    expect(slow?.holds.slice(5)).toEqual([true, false, false, false, false, true, true, false, false, false]);
    expect(slow?.margin.slice(10)).toEqual([1, 0.5, 0, -0.5, -1].map((each) => expect.closeTo(each * 1e-3, 12)));
    expect(even?.holds.slice(0, 5)).toEqual([false, true, false, false, false]);
    expect(even?.margin[0]).toBeNull();
  });

  test("keeps gaps with their place and reason", () => {
    expect(found.results[1]?.heights.slice(0, 5)).toEqual([null, null, null, null, null]);
    expect(found.gaps).toContainEqual({
      point: [1, 0],
      of: "speed",
      reason: expect.stringContaining("not a finite number"),
    });
  });

  test("marks the present design and every trial that has a place", () => {
    expect(found.marks).toEqual([
      { trial: null, at: [expect.closeTo(0.001, 12), 2] },
      { trial: "far", at: [expect.closeTo(0.003, 12), 2] },
    ]);
  });

  test("of one given against itself, or with one input, is refused", () => {
    const twice = refusal(design, { ...map, inputs: [{ input: "a" }, { input: " a " }] });
    expect(twice).toContain("a stands twice. Take one of the two out.");
    expect(refusal(design, { ...map, inputs: [{ input: "a" }] })).toContain("A map takes two inputs; here is one.");
    const large = [
      { input: "a", points: 400 },
      { input: "b", points: 300 },
    ];
    expect(refusal(design, { ...map, inputs: large })).toMatch(/120.000 variants; 100.000 is the most/);
  });
});

test("contours stand at round heights, five to twelve of them", () => {
  expect(levelsOf([0, 1, null, 0.2])).toEqual(
    [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1].map((each) => expect.closeTo(each, 12)),
  );
  expect(levelsOf([-33, 51])).toEqual([-30, -20, -10, 0, 10, 20, 30, 40, 50]);
  const degree = Math.PI / 180;
  expect(levelsOf([0, 9.4 * degree, 4.1 * degree], "deg").map((each) => each / degree)).toEqual(
    [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((each) => expect.closeTo(each, 12)),
  );
  expect(levelsOf([2, 2, null])).toEqual([]);
  expect(levelsOf([])).toEqual([]);
});
