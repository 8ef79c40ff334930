import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { root } from "../../src/tools/place.js";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "spanwise-install-"));
  for (const name of ["install.js", "freshness.js", "place.js"]) {
    cpSync(join(root, "src", "tools", name), join(folder, "src", "tools", name));
  }
  // One package, taken from a folder beside it, so that the test needs no registry.
  const few = { name: "few", version: "1.0.0", type: "module", dependencies: { part: "file:part" } };
  const part = { name: "part", version: "1.0.0" };
  const packages = { "": few, "node_modules/part": { resolved: "part", link: true }, part: { version: "1.0.0" } };
  mkdirSync(join(folder, "part"));
  writeFileSync(join(folder, "package.json"), JSON.stringify(few));
  writeFileSync(join(folder, "part", "package.json"), JSON.stringify(part));
  writeFileSync(join(folder, "package-lock.json"), JSON.stringify({ ...few, lockfileVersion: 3, packages }));
});
afterEach(() => rmSync(folder, { recursive: true }));

function install() {
  return spawnSync(process.execPath, [join(folder, "src", "tools", "install.js")], { encoding: "utf8" });
}

test("packages are installed when they are missing, once, and nothing is printed on standard output", () => {
  const first = install();
  expect(first.stderr).toContain("installing the packages");
  expect(first).toMatchObject({ status: 0, stdout: "" });
  expect(existsSync(join(folder, "node_modules", ".package-lock.json"))).toBe(true);
  expect(install()).toMatchObject({ status: 0, stdout: "", stderr: "" });
});

test("packages are installed anew when package-lock.json is newer than they are", () => {
  install();
  const later = new Date(Date.now() + 5_000);
  utimesSync(join(folder, "package-lock.json"), later, later);
  expect(install().stderr).toContain("installing the packages");
});

test("a failed install says what to do and ends in failure", () => {
  writeFileSync(join(folder, "package-lock.json"), "not a lock file");
  const { status, stdout, stderr } = install();
  expect(stderr).toContain("the packages could not be installed");
  expect(stderr).toContain("Try again");
  expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
});

test("a node_modules that is a link to another folder is left alone", () => {
  mkdirSync(join(folder, "elsewhere"));
  writeFileSync(join(folder, "elsewhere", "kept"), "");
  symlinkSync(join(folder, "elsewhere"), join(folder, "node_modules"), "junction");
  const { status, stderr } = install();
  expect(status).toBe(1);
  expect(stderr).toContain("node_modules is a link");
  expect(existsSync(join(folder, "elsewhere", "kept"))).toBe(true);
});
