import { expect, test } from "vitest";
import { inPdfLetters } from "../../../src/views/sheets/pdf-letters.ts";

test("what every reader's fonts have stays as it is", () => {
  const words = "Flügel, aile d’été, ½ × 3° – “Žižka” Œuf 5 €";
  expect(inPdfLetters(words)).toBe(words);
});

test("letters of other alphabets in Latin script stay readable, arrows and signs are spelled", () => {
  expect(inPdfLetters("Łódź, węgiel, Đorđe, ığdır, Győr")).toBe("Lódz, wegiel, Dorde, igdir, Gyor");
  expect(inPdfLetters("← front, −2 mm → ≤ 5")).toBe("<- front, -2 mm -> <= 5");
});

test("what no such font can show is a question mark, one for each letter", () => {
  expect(inPdfLetters("крыло 🛩")).toBe("????? ?");
});
