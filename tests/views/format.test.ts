import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { list, number, record, type Shape, table, text } from "../../src/library/spec.ts";
import { formatNumber, formatValue, joinUnit } from "../../src/views/format.ts";

const degrees = (count: number) => (count * Math.PI) / 180;
const shown = (value: number, unit: string, options = {}) => joinUnit(formatNumber(value, unit, options));
const length = number("mm", "a length");
const angle = number("deg", "an angle");
const share = number("%", "a share");
const yesNo: Shape = { kind: "boolean" };

describe("a number", () => {
  it("is told in its unit with four significant figures, the unit apart", () => {
    expect(formatNumber(degrees(11.6284), "deg")).toEqual({ number: "11.63", unit: "deg" });
    expect(formatNumber(0.4713, "mm")).toEqual({ number: "471.3", unit: "mm" });
  });
  it("loses trailing zeros and the noise of floats", () => {
    expect(shown(degrees(11), "deg")).toBe("11 deg");
    expect(shown(0.1 + 0.2, "1")).toBe("0.3");
    expect(shown(0.0999999999, "mm")).toBe("100 mm");
  });
  it("keeps every digit before the point", () => {
    expect(shown(101325, "Pa")).toBe("101325 Pa");
    expect(shown(12345.6, "m")).toBe("12346 m");
  });
  it("has no exponent from 0.0001 up to 10 million", () => {
    expect(shown(0.00012342, "kg")).toBe("0.0001234 kg");
    expect(shown(9_999_999, "")).toBe("9999999");
    expect(shown(1.2342e-7, "kg")).toBe("1.234e-7 kg");
    expect(shown(-3.3e9, "Pa")).toBe("−3.3e9 Pa");
    expect(shown(1e7, "")).toBe("1e7");
  });
  it("carries a true minus sign and no minus before zero", () => {
    expect(shown(-0.02, "mm")).toBe("−20 mm");
    expect(shown(-0, "mm")).toBe("0 mm");
  });
  it("stands tight before % and °, and alone where there is no dimension", () => {
    expect(shown(0.0312, "%")).toBe("3.12%");
    expect(shown(degrees(8), "°")).toBe("8°");
    expect(shown(1.5, "1")).toBe("1.5");
    expect(shown(1.5, "")).toBe("1.5");
  });
  it("minds the zero point of °C and °F", () => {
    expect(shown(288.15, "°C")).toBe("15 °C");
    expect(shown(255.37222222222, "°F")).toBe("0 °F");
    expect(shown(268.15, "°C")).toBe("−5 °C");
  });
  it("takes composed units and a wanted number of figures", () => {
    expect(shown(1.225, "g/m^3")).toBe("1225 g/m^3");
    expect(shown(degrees(10), "deg", { figures: 2 })).toBe("10 deg");
    expect(shown(0.47134, "m", { figures: 2 })).toBe("0.47 m");
  });
  it("says so in words where it is not finite", () => {
    expect(shown(Number.NaN, "mm")).toBe("no number mm");
    expect(shown(Number.NEGATIVE_INFINITY, "")).toBe("−∞");
  });
  it("refuses a unit that is not on the list", () => {
    expect(() => formatNumber(1, "furlong")).toThrow(/got the unit "furlong"/);
  });
  it("reads back as the value to four figures, whatever the value", () => {
    fc.assert(
      fc.property(fc.double({ min: -1e12, max: 1e12, noNaN: true }), (value) => {
        const read = Number(formatNumber(value, "1").number.replace("−", "-"));
        expect(Math.abs(read - value)).toBeLessThanOrEqual(Math.abs(value) * 5.001e-4);
      }),
      { seed: 7 },
    );
  });
});

describe("shop fractions", () => {
  const inches = (value: number, fraction = 64) => shown(value * 0.0254, "in", { fraction });
  it("are told in lowest terms, exact where the value is", () => {
    expect(inches(1.375)).toBe("1 3/8 in");
    expect(inches(3 / 32)).toBe("3/32 in");
    expect(inches(2)).toBe("2 in");
    expect(inches(0)).toBe("0 in");
  });
  it("say where they are rounded", () => {
    expect(inches(1.38, 8)).toBe("≈ 1 3/8 in");
    expect(inches(0.999, 16)).toBe("≈ 1 in");
    expect(inches(-0.001, 16)).toBe("≈ 0 in");
  });
  it("carry the sign before the whole", () => expect(inches(-1.375)).toBe("−1 3/8 in"));
  it("leave other units in decimals", () => expect(shown(0.0381, "mm", { fraction: 64 })).toBe("38.1 mm"));
});

describe("a value", () => {
  it("is told in the unit of its shape where no unit is declared, never in a guessed one", () => {
    expect(formatValue(0.4713, number("mm", "span"))).toBe("471.3 mm");
    expect(formatValue(0.4713, number("m", "span"))).toBe("0.4713 m");
    expect(formatValue(0.2, number("rad", "cant"))).toBe("0.2 rad");
    expect(formatValue(0.031, number("1", "share"))).toBe("0.031");
    expect(formatValue(2, { kind: "number", dimension: [0.5, 1, -1, 0, 0], unit: "kg^0.5 m/s" })).toBe("2 kg^0.5 m/s");
  });
  it("tells texts as they are and truth in words", () => {
    expect(formatValue("balsa", text("wood"))).toBe("balsa");
    expect(formatValue(true, yesNo)).toBe("yes");
    expect(formatValue(false, yesNo)).toBe("no");
  });
  it("gives a list its unit once", () => {
    expect(formatValue([3, 10, 21].map(degrees), list(angle, "cants"), "deg")).toBe("[3, 10, 21] deg");
    expect(formatValue([0.25, 0.3], list(share, "shares"), "%")).toBe("[25, 30]%");
    expect(formatValue([0.034925], list(length, "widths"), "in", 8)).toBe("[1 3/8] in");
    expect(formatValue([], list(length, "widths"), "mm")).toBe("empty list");
    expect(formatValue([true, false], list(yesNo, "answers"))).toBe("[yes, no]");
  });
  it("cuts a list of more than eight short and says how many there are", () => {
    const eight = Array.from({ length: 8 }, (_, index) => index);
    expect(formatValue(eight, list(number("1", "counts"), "counts"))).toBe("[0, 1, 2, 3, 4, 5, 6, 7]");
    expect(formatValue([...eight, 8], list(length, "l"), "m")).toBe("[0, 1, 2, 3, 4, 5, …] m, 9 in all");
  });
  it("tells lists of lists with their units inside", () => {
    expect(formatValue([[0.001], [0.002]], list(list(length, "row"), "rows"), "mm")).toBe("[[1] mm, [2] mm]");
  });
  it("tells a table by its rows and a record by its own line", () => {
    const panels = table("panels", { length, break: angle });
    expect(formatValue({ length: [0.1, 0.2, 0.3], break: [0, 0, 0] }, panels)).toBe("3 rows");
    expect(formatValue({ length: [0.1], break: [0] }, panels)).toBe("1 row");
    const wing = record("wing", "a wing", { span: length }, ({ span }) => `${span * 1000} mm span`);
    expect(formatValue({ span: 0.472 }, wing)).toBe("472 mm span");
    expect(formatValue({ a: 1 }, { kind: "record", type: null, fields: { a: length } })).toBe("fields a");
  });
});
