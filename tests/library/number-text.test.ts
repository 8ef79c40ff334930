import { expect, test } from "vitest";
import { numberText } from "../../src/library/number-text.ts";

test.each([
  [0.4724, "mm", "472 mm"],
  [0.04724, "mm", "47.2 mm"],
  [1.2346, "mm", "1235 mm"],
  [-0.0805, "mm", "−80.5 mm"],
  [0, "g", "0 g"],
  [-0, "g", "0 g"],
  [0.0169, "g", "16.9 g"],
  [Math.PI / 18, "deg", "10 deg"],
  [0.03628, "1", "0.0363"],
  [0.1763, "%", "17.6%"],
  [9999, "mm", "9999000 mm"],
  [-157990677, "m", "−1.58e8 m"],
  [1e300, "m", "1.00e300 m"],
  [-8.7155e-305, "mm", "−8.72e−302 mm"],
])("%f in %s is told as %s", (value, unit, text) => {
  expect(numberText(value, unit)).toBe(text);
});
