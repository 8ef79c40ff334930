import { expect, test } from "vitest";
import { partFigure, partText } from "../../../src/views/drawings/dimension-text.ts";

const mm = { unit: "mm" };

test("a part is told to the decimals that give its whole four figures", () => {
  expect(partFigure(0.0055, 0.239, mm)).toBe("5.5");
  expect(partText(0.04091, 0.239, mm)).toBe("40.9 mm");
});

test("lengths beyond any workshop are told by a few figures and an exponent", () => {
  expect(partFigure(8.1343797892e7, 9e7, mm)).toBe("8.134e10");
});
