import fc from "fast-check";
import { expect, test } from "vitest";
import { joinBecause, splitBecause } from "../../src/views/because.ts";

test("a text without an empty line is all reason", () => {
  expect(splitBecause("a flat wing has no V")).toEqual({ reason: "a flat wing has no V", difference: "" });
  expect(splitBecause("")).toEqual({ reason: "", difference: "" });
});

test("a difference without a reason is kept as one", () => {
  const because = joinBecause({ reason: " ", difference: "I forgot the tips " });
  expect(splitBecause(because)).toEqual({ reason: "", difference: "I forgot the tips" });
});

test("what is put together comes apart again, whatever was typed", () => {
  const text = fc.string({ unit: fc.constantFrom("a", " ", "\n", "é", ".") });
  fc.assert(
    fc.property(text, text, (reason, difference) => {
      const once = joinBecause({ reason, difference });
      const parts = splitBecause(once);
      expect(parts.difference).toBe(difference.trim());
      expect(joinBecause(parts)).toBe(once);
    }),
    { seed: 7 },
  );
});
