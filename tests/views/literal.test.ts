import { describe, expect, test } from "vitest";
import { compile, type GivenCell } from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";
import {
  formulaAt,
  positionOf,
  positionsOver,
  rangeTrackOf,
  readLiteral,
  type Track,
  trackOf,
  valueAt,
  writtenPosition,
} from "../../src/views/literal.ts";

const stepOf = (cell: Omit<GivenCell, "id" | "kind" | "name">) =>
  compile([{ id: "a1", kind: "given", name: "tip", ...cell }], functions).byId.get("a1");

function track(cell: Omit<GivenCell, "id" | "kind" | "name">): Track {
  const found = trackOf(stepOf(cell));
  if (!found) throw new Error("got no track, expected one");
  return found;
}

describe("reading a literal", () => {
  test("a number with its unit and sign is one, anything that computes is none", () => {
    expect(readLiteral("11 deg")).toEqual({ number: 11, unit: "deg" });
    expect(readLiteral("-2.5 deg")).toEqual({ number: -2.5, unit: "deg" });
    expect(readLiteral("0.78")).toEqual({ number: 0.78, unit: null });
    expect(readLiteral("3/32 in")).toEqual({ number: 0.09375, unit: "in" });
    for (const formula of ["2 * 3 deg", "[1, 2]", "", "11 dog", "sqrt(4)"]) expect(readLiteral(formula)).toBeNull();
  });
});

describe("the position that is written", () => {
  test("is told in the unit of the track, whatever the literal's own, and is none where something is computed", () => {
    const length = track({ formula: "200 mm", unit: "mm", range: ["0 mm", "300 mm", "1 mm"] });
    expect(writtenPosition(length, "20 cm")).toBe(200);
    expect(writtenPosition(length, "1 1/2 in")).toBeCloseTo(38.1, 12);
    const share = track({ formula: "25%", unit: "%", range: ["0%", "50%", "1%"] });
    expect(writtenPosition(share, "0.3")).toBe(30);
    expect(writtenPosition(length, "2 * 100 mm")).toBeNull();
  });
});

describe("the track of a given", () => {
  test("it runs over the range in the given's own unit, by the step that the range says", () => {
    expect(track({ formula: "11 deg", unit: "deg", range: ["0 deg", "20 deg", "0.5 deg"] })).toEqual({
      from: 0,
      to: 20,
      step: 0.5,
      decimals: 1,
      unit: "deg",
      fraction: null,
    });
    expect(track({ formula: "4.8 cm", unit: "mm", range: ["360 mm", "0.6 m"] })).toMatchObject({ to: 600, unit: "mm" });
  });

  test("without a step it goes by about a two-hundredth of the range, rounded to 1, 2 or 5", () => {
    expect(track({ formula: "480 mm", range: ["360 mm", "600 mm"] })).toMatchObject({ step: 2, decimals: 0 });
    expect(track({ formula: "0.6", range: ["0.3", "0.9"] })).toMatchObject({ step: 0.005, decimals: 3 });
    expect(track({ formula: "1 m", range: ["0 m", "200 m"] })).toMatchObject({ step: 1 });
  });

  test("there is none without a range; without a literal there is one to sweep over, but none to drag", () => {
    expect(trackOf(stepOf({ formula: "11 deg" }))).toBeNull();
    const computed = stepOf({ formula: "2 * 5 deg", unit: "deg", range: ["0 deg", "20 deg"] });
    expect(trackOf(computed)).toBeNull();
    expect(rangeTrackOf(computed)).toMatchObject({ from: 0, to: 20 });
  });
});

describe("the formula of a position", () => {
  test("it is rounded to the step's decimals, kept within the range, and has the unit", () => {
    const degrees = track({ formula: "11 deg", unit: "deg", range: ["0 deg", "20 deg", "0.5 deg"] });
    expect(formulaAt(degrees, 11.500000000000002)).toBe("11.5 deg");
    expect(formulaAt(degrees, 12)).toBe("12 deg");
    expect(formulaAt(degrees, 33)).toBe("20 deg");
    expect(formulaAt(track({ formula: "25%", unit: "%", range: ["10%", "40%"] }), 12.2)).toBe("12.2%");
    expect(formulaAt(track({ formula: "0.6", range: ["0.3", "0.9", "0.05"] }), 0.45000000000000007)).toBe("0.45");
  });

  test("inches that are shown as shop fractions are written so", () => {
    const inches = track({ formula: "3/32 in", unit: "in", fraction: 32, range: ["0 in", "2 in"] });
    expect(inches.step).toBe(1 / 32);
    expect(formulaAt(inches, 1.40625)).toBe("1 13/32 in");
    expect(formulaAt(inches, 0.25)).toBe("1/4 in");
    expect(formulaAt(inches, 2)).toBe("2 in");
  });

  test("position and value in SI are each other's reverse, also on a scale with an offset", () => {
    const warm = track({ formula: "15 °C", unit: "°C", range: ["-10 °C", "40 °C"] });
    expect(warm).toMatchObject({ from: -10, to: 40 });
    expect(valueAt(warm, 15)).toBeCloseTo(288.15, 9);
    expect(positionOf(warm, 288.15)).toBe(15);
  });
});

describe("positions over a track", () => {
  const over = (range: readonly string[], count: number) =>
    positionsOver(track({ formula: "8 deg", unit: "deg", range }), count);

  test("they stand on steps, both ends included, and are no more than asked for", () => {
    expect(over(["0 deg", "20 deg", "0.5 deg"], 41)).toHaveLength(41);
    expect(over(["0 deg", "20 deg", "5 deg"], 41)).toEqual([0, 5, 10, 15, 20]);
    const many = over(["0 deg", "20 deg", "0.1 deg"], 41);
    expect(many.length).toBeLessThanOrEqual(41);
    expect([many[0], many.at(-1)]).toEqual([0, 20]);
  });

  test("a range that its step does not divide still ends at its end", () => {
    expect(over(["1 deg", "10 deg", "4 deg"], 41)).toEqual([1, 5, 9, 10]);
  });
});
