import { expect, test } from "vitest";
import { when } from "../../../src/views/keeping/when.ts";

const now = new Date(2026, 4, 20, 15, 30, 0).getTime();
const minutes = 60_000;

test.each([
  [now, "just now"],
  [now - 59_000, "just now"],
  [now - minutes, "1 min ago"],
  [now - 59 * minutes, "59 min ago"],
  [now - 60 * minutes, "today at 14:30"],
  [now - 16 * 60 * minutes, "on 19 May 2026, 23:30"],
])("a time is told by the minute within the hour, else by day and time", (at, told) => {
  expect(when(at, now)).toBe(told);
});

test("a time ahead, as after the clock was set back, is just now", () => {
  expect(when(now + 5 * minutes, now)).toBe("just now");
});
