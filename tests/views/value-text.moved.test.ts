import { expect, test } from "vitest";
import type { Result } from "../../src/cells/index.ts";
import { movedText } from "../../src/views/value-text.ts";

const degree = Math.PI / 180;
const angle = (value: number, unit = "deg"): Result => ({
  ok: true,
  value: value * degree,
  shape: { kind: "number", dimension: [0, 0, 0, 0, 1], unit } as never,
});
const number = (value: number, unit: string): Result => ({
  ok: true,
  value,
  shape: { kind: "number", dimension: [], unit } as never,
});

test("a number tells how far it moved in its unit and in per cent", () => {
  expect(movedText(angle(11.6), angle(10.8))).toBe("+0.8 deg, +7.4%");
  expect(movedText(angle(9), angle(11.25))).toBe("−2.25 deg, −20%");
  expect(movedText(number(-3, "1"), number(-2, "1"))).toBe("−1, −50%");
});

test("no share is told from nothing, of a share, and on a scale with a zero of its own", () => {
  expect(movedText(number(0.031, "%"), number(0.027, "%"))).toBe("+0.4%");
  expect(movedText(number(2, "1"), number(0, "1"))).toBe("+2");
  expect(movedText(number(298.15, "°C"), number(293.15, "°C"))).toBe("+5 °C");
});

test("what is no number tells what it was, and what is as before tells nothing", () => {
  const text = (value: string): Result => ({ ok: true, value, shape: { kind: "text" } as never });
  expect(movedText(text("balsa"), text("spruce"))).toBe("was spruce");
  expect(movedText(text("balsa"), text("balsa"))).toBeNull();
  expect(movedText(angle(9), angle(9))).toBeNull();
  expect(movedText(undefined, angle(9))).toBeNull();
});
