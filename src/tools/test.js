import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ensureBrowser } from "./browser.js";
import { root } from "./place.js";
import { summarise } from "./summary.js";

/** @param {string} line */
const say = (line) => console.log(`Spanwise: ${line}`);

try {
  process.env.SPANWISE_BROWSER = await ensureBrowser(say);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}
say(`the browser tests use ${process.env.SPANWISE_BROWSER}`);

const scratch = mkdtempSync(join(tmpdir(), "spanwise-test-"));
const report = join(scratch, "report.json");
const steps = [
  step("types", "checking types …", ["typescript", "bin/tsc", "--noEmit"]),
  step("lint", "checking format and lint …", [
    "@biomejs/biome",
    "bin/biome",
    "ci",
    ...(process.stdout.isTTY ? [] : ["--colors=off"]),
  ]),
  step("tests", "running the tests …", [
    "vitest",
    "vitest.mjs",
    "run",
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${report}`,
    ...process.argv.slice(2),
  ]),
];

const { line } = summarise(readReport(report), steps);
rmSync(scratch, { recursive: true });
for (const { name, ok } of steps) if (!ok) say(`failed: ${name}`);
// .ci/run repeats the line as the very last one.
if (process.env.SPANWISE_SUMMARY) writeFileSync(process.env.SPANWISE_SUMMARY, `${line}\n`);
say(line);
process.exit(steps.every((each) => each.ok) ? 0 : 1);

/**
 * @param {string} name
 * @param {string} told
 * @param {string[]} command a package, its program, and arguments
 */
function step(name, told, [from = "", program = "", ...args]) {
  say(told);
  const path = join(root, "node_modules", from, program);
  const { status } = spawnSync(process.execPath, [path, ...args], { cwd: root, stdio: "inherit" });
  return { name, ok: status === 0 };
}

/** @param {string} path */
function readReport(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return undefined;
  }
}
