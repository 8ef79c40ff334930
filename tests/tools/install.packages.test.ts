import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { root } from "../../src/tools/place.js";

interface Lock {
  readonly packages: Readonly<Record<string, { readonly version?: string; readonly resolved?: string }>>;
}

const manifest = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
const lockText = readFileSync(join(root, "package-lock.json"), "utf8");
const lock: Lock = JSON.parse(lockText);

test("package-lock.json keeps no download address, so that any registry serves", () => {
  const addressed = Object.entries(lock.packages).filter(([, entry]) => entry.resolved !== undefined);
  expect(addressed.map(([name]) => name)).toEqual([]);
});

test("the reactive engine is pinned to the version whose inside we build on", () => {
  expect(manifest.dependencies["@observablehq/runtime"]).toBe("6.0.1");
  expect(lock.packages["node_modules/@observablehq/runtime"]?.version).toBe("6.0.1");
});

test("every command installs what is missing before it runs", () => {
  const scripts: Record<string, string> = manifest.scripts;
  const commands = Object.keys(scripts).filter((name) => scripts[name] !== "node src/tools/install.js");
  expect(commands).toContain("start");
  expect(commands.filter((name) => scripts[`pre${name}`] !== "node src/tools/install.js")).toEqual([]);
});

test("package-lock.json holds every package that package.json asks for", () => {
  const wanted = { ...manifest.dependencies, ...manifest.devDependencies };
  const missing = Object.keys(wanted).filter((name) => lock.packages[`node_modules/${name}`] === undefined);
  expect(missing).toEqual([]);
});
