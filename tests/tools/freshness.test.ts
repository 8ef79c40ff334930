import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { isStale, lastChange, writtenAt } from "../../src/tools/freshness.js";

const folder = mkdtempSync(join(tmpdir(), "spanwise-freshness-"));
afterAll(() => rmSync(folder, { recursive: true }));

test("what is not there is stale, whatever it is made from", () => {
  expect(isStale(undefined, 5)).toBe(true);
  expect(isStale(undefined, undefined)).toBe(true);
});

test("what is older than its source is stale; of equal age or newer, it is fresh", () => {
  expect(isStale(4, 5)).toBe(true);
  expect(isStale(5, 5)).toBe(false);
  expect(isStale(6, 5)).toBe(false);
});

test("what has no source is fresh once it is there", () => {
  expect(isStale(5, undefined)).toBe(false);
});

test("the last change is that of the newest file at any depth, or of a folder that lost one", () => {
  const deep = join(folder, "a", "b");
  mkdirSync(deep, { recursive: true });
  writeFileSync(join(deep, "new.ts"), "");
  writeFileSync(join(folder, "old.ts"), "");
  for (const [path, second] of [
    [join(deep, "new.ts"), 30],
    [join(folder, "old.ts"), 10],
    [deep, 20],
    [join(folder, "a"), 12],
    [folder, 11],
  ] as const) {
    utimesSync(path, second, second);
  }
  expect(lastChange([folder])).toBe(30_000);
  rmSync(join(deep, "new.ts"));
  utimesSync(deep, 40, 40);
  expect(lastChange([folder])).toBe(40_000);
});

test("files that do not exist count for nothing", () => {
  expect(writtenAt(join(folder, "missing"))).toBeUndefined();
  expect(lastChange([join(folder, "missing")])).toBeUndefined();
});
