// Runs before every other command (npm's pre-scripts), so it may import nothing but Node itself.
// It prints on standard error only: `npm run --silent evaluate` keeps standard output for its own result.
import { spawnSync } from "node:child_process";
import { lstatSync, utimesSync } from "node:fs";
import { join } from "node:path";
import { isStale, writtenAt } from "./freshness.js";
import { root } from "./place.js";

const wanted = join(root, "package-lock.json");
const installed = join(root, "node_modules", ".package-lock.json");

if (isStale(writtenAt(installed), writtenAt(wanted))) {
  if (lstatSync(join(root, "node_modules"), { throwIfNoEntry: false })?.isSymbolicLink()) {
    console.error(`Spanwise: packages are missing, but node_modules is a link to another folder, which an install would
empty first. Run "npm ci" where the link leads, or remove the link, and try again.`);
    process.exit(1);
  }
  console.error("Spanwise: installing the packages it needs (once, about a minute) …");
  // npm hands its own address to the scripts it runs; outside npm the plain command is found on the path.
  const npm = process.env.npm_execpath;
  const run = { cwd: root, stdio: ["ignore", 2, 2], shell: npm === undefined && process.platform === "win32" };
  const { status, error } = npm
    ? spawnSync(process.execPath, [npm, "ci"], /** @type {any} */ (run))
    : spawnSync("npm", ["ci"], /** @type {any} */ (run));
  if (status !== 0) {
    console.error(`
Spanwise: the packages could not be installed${error ? ` (${error.message})` : ""}.
The lines above say why. It needs Node 20.19 or later, npm, and a way to the npm registry.
Try again with the same command when that is mended.`);
    process.exit(1);
  }
  utimesSync(installed, new Date(), new Date());
}
