import { spawnSync } from "node:child_process";
import { utimesSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { bundle } from "../../src/tools/bundle.js";
import { writtenAt } from "../../src/tools/freshness.js";
import { root } from "../../src/tools/place.js";

const source = "tests/tools/program.ts";
const make = () => bundle(source, { packages: "inside", alsoFrom: ["tests/tools/program.ts"] });

test("a bundled program is told its arguments, prints only its own output and ends with its own exit code", async () => {
  const made = await make();
  const { status, stdout, stderr } = spawnSync(process.execPath, [made, "plover.json", "--json"], { encoding: "utf8" });
  expect({ status, stdout, stderr }).toEqual({ status: 7, stdout: "plover.json  --json\n", stderr: "" });
});

test("a bundle is kept while no source changes, and made anew when one does", async () => {
  const first = writtenAt(await make());
  expect(writtenAt(await make())).toBe(first);
  const later = new Date(Date.now() + 1_000);
  utimesSync(join(root, source), later, later);
  const second = writtenAt(await make());
  utimesSync(join(root, source), new Date(), new Date());
  expect(second).toBeGreaterThan(first ?? Number.POSITIVE_INFINITY);
});
