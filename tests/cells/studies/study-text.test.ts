import { describe, expect, test } from "vitest";
import { studyText } from "../../../src/cells/studies/study-text.ts";
import { told } from "../../../src/cells/told.ts";
import { outcome, type StudyFields } from "./study-cases.ts";

const design = `given a [mm] from 1 mm to 3 mm = 2 mm
given b from 0 to 2 = 1
area [mm^2] = a^2 * b
ratio = a / 1 mm / b
check small = area < 5 mm^2`;
const text = (fields: StudyFields, trials: Parameters<typeof outcome>[2] = []): string =>
  studyText(outcome(design, fields, trials), told).join("\n");
const [a, b] = [
  { input: "a", points: 3 },
  { input: "b", points: 3 },
];

describe("a study in plain text", () => {
  test("of a sweep has a table for each curve, with the reasons of gaps below", () => {
    const trials = [{ name: "wide", set: { a: "3 mm" } }];
    expect(text({ study: "sweep", inputs: [b], results: ["area", "ratio"], trials: ["wide"] }, trials)).toBe(`as it is
b    area  ratio  small
0  0 mm^2      —      ✓
1  4 mm^2      2      ✓
2  8 mm^2      1      ✕
— ratio at 0: ratio: The result of this is not a finite number: something is divided by zero, or is too large.

wide
b     area  ratio  small
0   0 mm^2      —      ✓
1   9 mm^2      3      ✕
2  18 mm^2    1.5      ✕
— ratio at 0: ratio: The result of this is not a finite number: something is divided by zero, or is too large.
`);
  });

  test("of a map has a grid for each result and check", () => {
    expect(text({ study: "map", inputs: [a, b], results: ["area"] })).toBe(`area
b \\ a    1 mm    2 mm     3 mm
0      0 mm^2  0 mm^2   0 mm^2
1      1 mm^2  4 mm^2   9 mm^2
2      2 mm^2  8 mm^2  18 mm^2

small
b \\ a  1 mm  2 mm  3 mm
0         ✓     ✓     ✓
1         ✓     ✓     ✕
2         ✓     ✕     ✕
`);
  });

  test("of a sensitivity ranks the inputs of each result", () => {
    const inputs = [{ input: "a", plus_minus: "0.5 mm" }, { input: "b" }];
    expect(text({ study: "sensitivity", inputs, results: ["area"] })).toBe(`area: 4 mm^2
input    moved by       less       more  moves it by          slope
a         ±0.5 mm  2.25 mm^2  6.25 mm^2    2.25 mm^2  4 mm^2 per mm
b      ±0.01 (1%)  3.96 mm^2  4.04 mm^2    0.04 mm^2         4 mm^2

✕ small fails with more a`);
  });

  test("of a tolerance tells the spread, what passes and what to tighten", () => {
    const inputs = [
      { input: "a", plus_minus: "0.5 mm" },
      { input: "b", plus_minus: "0.05" },
    ];
    const lines = text({ study: "tolerance", inputs, results: ["area"], builds: 500, seed: 3 }).split("\n");
    expect(lines[0]).toBe("500 of 500 built, seed 3");
    expect(lines[2]).toMatch(/^ +mean +deviation +2.5% below +half below +97.5% below$/);
    expect(lines[3]).toMatch(/^area( +\d\.\d+ mm\^2){5}$/);
    expect(lines[5]).toMatch(/^area is spread by a 9\d\.\d+%, b 0\.\d+%$|^area is spread by a 9/);
    expect(lines[7]).toMatch(/^small: holds \d+, fails \d+$/);
    expect(lines[8]).toMatch(/^\d+\.\d+% pass every check \(at 95%: \d+\.\d+% to \d+\.\d+%\)$/);
    expect(lines[9]).toMatch(/^Tighten a first: with its ± halved \d+(\.\d+)?% would pass$/);
  });

  test("of a solve tells where, or that there is nowhere", () => {
    const solve = (target: string, input = a) =>
      text({ study: "solve", inputs: [{ input: input.input }], results: ["area"], target });
    expect(solve("4 mm^2")).toBe("area = 4 mm^2 is reached once\na = 2 mm");
    expect(solve("30 mm^2")).toBe("area = 30 mm^2 is not reached; it comes nearest with 9 mm^2 at a = 3 mm");
    expect(text({ study: "solve", inputs: [{ input: "a" }], results: ["(a - 2.3 mm)^2"], target: "0 mm^2" })).toContain(
      " (only just)",
    );
    expect(
      text({ study: "solve", inputs: [{ input: "a" }], results: ["1 mm / (a - 2.333 mm)"], target: "0" }),
    ).toContain("it jumps past at a = 2.333 mm");
  });

  test("of a best tells the design, what it fails, and where it stands at an end", () => {
    const inputs = [{ input: "a" }];
    expect(text({ study: "best", inputs, results: ["area"], goals: ["least"] })).toBe(`the best
a     least area    fails
1 mm      1 mm^2  nothing

a stands at an end of its range; there may be better beyond
3 of 3 searches came to the same`);
    expect(
      text({ study: "best", inputs: [{ input: "a", range: ["3 mm", "4 mm"] }], results: ["area"], goals: ["most"] }),
    ).toMatch(/^no design holds every check; the nearest\na +most area +fails\n3 mm +9 mm\^2 +small\n/);
  });
});
