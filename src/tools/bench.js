import { fork, spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { root } from "./place.js";
import { table } from "./table.js";

/** @typedef {import("../../tests/bench/bench.ts").Row} Row */

const folder = join(root, "tests", "bench");
const wanted = process.argv.slice(2);
const files = readdirSync(folder)
  .filter((name) => name.endsWith(".bench.ts"))
  .filter((name) => wanted.length === 0 || wanted.some((part) => name.includes(part)))
  .sort();

const build = spawnSync(process.execPath, [join(root, "src", "tools", "build.js"), "--if-stale"], { stdio: "inherit" });
if (build.status !== 0) process.exit(1);

/** @type {Row[]} */
const rows = [];
let failed = files.length === 0;
for (const file of files) {
  console.log(`Spanwise: measuring ${file.replace(".bench.ts", "").replaceAll("-", " ")} …`);
  try {
    rows.push(...(await measure(join("tests", "bench", file))));
  } catch (error) {
    failed = true;
    console.error(error instanceof Error ? error.message : error);
  }
}
const head = { figure: "figure", measured: "measured", goal: "goal", ratio: "ratio" };
if (files.length === 0) console.error(`No file of tests/bench is named like ${wanted.join(" or ")}.`);
else console.log(`\n${table([head, ...rows].map((row) => [row.figure, row.measured, row.goal, row.ratio]))}`);
process.exit(failed ? 1 : 0);

/**
 * Runs one file in a process of its own, so that no figure depends on what was measured before it.
 * @param {string} file
 * @returns {Promise<Row[]>}
 */
function measure(file) {
  return new Promise((resolve, reject) => {
    const child = fork(join(root, "src", "tools", "bench-one.js"), [file], { execArgv: ["--expose-gc"] });
    /** @type {Row[] | undefined} */
    let answer;
    child.on("message", (message) => {
      answer = /** @type {Row[]} */ (message);
    });
    child.on("error", reject);
    child.on("exit", (code) => {
      if (code === 0 && answer !== undefined) resolve(answer);
      else reject(new Error(`${file} ended with exit code ${code} and no figures`));
    });
  });
}
