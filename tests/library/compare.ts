import { expect } from "vitest";

/**
 * Holds a value to an expected one: numbers to a relative tolerance (of 1 where the expected number is smaller than
 * the tolerance can tell), lists element by element, records by the fields that are expected.
 */
export function expectClose(actual: unknown, expected: unknown, tolerance: number, place = "result"): void {
  if (typeof expected === "number") {
    expect(typeof actual, place).toBe("number");
    const off = Math.abs((actual as number) - expected);
    expect(off, `${place}: got ${actual}, expected ${expected}`).toBeLessThanOrEqual(
      tolerance * Math.abs(expected) + 1e-15,
    );
  } else if (Array.isArray(expected)) {
    expect(actual, place).toHaveLength(expected.length);
    expected.forEach((each, index) => {
      expectClose((actual as unknown[])[index], each, tolerance, `${place}[${index + 1}]`);
    });
  } else if (typeof expected === "object" && expected !== null) {
    for (const [field, each] of Object.entries(expected)) {
      expectClose((actual as Record<string, unknown>)[field], each, tolerance, `${place}.${field}`);
    }
  } else {
    expect(actual, place).toBe(expected);
  }
}
