import { expect, test } from "vitest";
import { blankPairs } from "../../../src/library/build/blank-pairs.ts";
import { call } from "../call.ts";

const pair = (blank: string[], panel: number[]) =>
  call(blankPairs, { blanks: { blank, panel, mass: blank.map((_, index) => 0.002 + index * 1e-4) } });

test("blanks that cannot be told apart, or have no other side, are refused with what to do", () => {
  expect(() => pair(["a", "a"], [1, 1])).toThrow(/Two blanks are called "a".*name of its own/);
  expect(() => pair(["a", "b", "c"], [1, 1, 2])).toThrow(/Panel 2 has one blank. Cut and weigh one/);
  expect(() => pair(["a", "b"], [1.5, 1.5])).toThrow(/Panel 1.5 is no whole number/);
  expect(() => pair([], [])).toThrow(/No blank is weighed/);
  expect(() => pair(["a", "b"], [1, 1])).not.toThrow();
});
