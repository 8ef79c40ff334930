import { expect, it } from "vitest";
import { countInWords, listInWords } from "../../../src/views/drawings/words.ts";

it("counts are words up to twelve, then figures", () => {
  expect([0, 1, 3, 12, 13].map(countInWords)).toEqual(["no", "one", "three", "twelve", "13"]);
});
it("lists end in and", () => {
  expect(listInWords([])).toBe("");
  expect(listInWords(["3"])).toBe("3");
  expect(listInWords(["3", "10", "21"])).toBe("3, 10 and 21");
});
