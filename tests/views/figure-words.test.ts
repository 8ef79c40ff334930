import { expect, test } from "vitest";
import { sheetTitle } from "../../src/views/figure-words.ts";

test("a sheet whose title is left out, empty or all blanks is called by what it has", () => {
  const sheet = { id: "a1", kind: "sheet", of: "blanks" } as const;
  expect(sheetTitle({ ...sheet, title: "Wing blanks" })).toBe("Wing blanks");
  for (const untitled of [sheet, { ...sheet, title: "" }, { ...sheet, title: "  " }])
    expect(sheetTitle(untitled)).toBe("Sheet of blanks");
});
