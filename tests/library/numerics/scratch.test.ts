import { expect, test } from "vitest";
import { scratch } from "../../../src/library/numerics/scratch.ts";

test("room to work in is used again, and grows where more is asked for", () => {
  const room = scratch();
  const first = room(4);
  expect(first.length).toBeGreaterThanOrEqual(4);
  expect(room(3)).toBe(first);
  expect(room(100).length).toBeGreaterThanOrEqual(100);
  expect(scratch()(4)).not.toBe(room(4));
});
