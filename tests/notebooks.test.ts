import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { readNotebook, writeNotebook } from "../src/cells/notebook-file.ts";
import { root } from "../src/tools/place.js";

const folder = join(root, "notebooks");
const names = readdirSync(folder);

test("the folder of notebooks holds notebooks only", () => {
  expect(names.filter((name) => !name.endsWith(".json"))).toEqual([]);
});

describe.each(names)("%s", (name) => {
  const text = readFileSync(join(folder, name), "utf8");

  test("reads, and is written back byte for byte", () => {
    expect(writeNotebook(readNotebook(text))).toBe(text);
  });
});
