import { expect, test } from "vitest";
import { table } from "../../src/tools/table.js";

test("columns are as wide as their widest entry, and no line ends in blanks", () => {
  const rows = [
    ["figure", "goal"],
    ["size of it", "2"],
    ["x", ""],
  ];
  expect(table(rows)).toBe("figure      goal\n----------  ----\nsize of it  2\nx");
});
