import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "./place.js";

/**
 * Places where a browser that can be driven (Chromium, Chrome, Edge) may stand, best first.
 * @param {{platform: string, env: Record<string, string | undefined>}} machine
 * @returns {string[]} only SPANWISE_BROWSER when that is set: who names one means that one
 */
export function browserPlaces({ platform, env }) {
  if (env.SPANWISE_BROWSER) return [env.SPANWISE_BROWSER];
  if (platform === "win32") {
    const folders = [env.PROGRAMFILES, env["PROGRAMFILES(X86)"], env.LOCALAPPDATA].filter(
      (folder) => folder !== undefined,
    );
    const programs = ["Chromium", "Google\\Chrome", "Microsoft\\Edge"].map((name) => `${name}\\Application\\`);
    const files = ["chrome.exe", "chrome.exe", "msedge.exe"];
    return programs.flatMap((program, i) => folders.map((folder) => `${folder}\\${program}${files[i]}`));
  }
  if (platform === "darwin") {
    const folders = ["/Applications", `${env.HOME}/Applications`];
    const names = ["Chromium", "Google Chrome", "Microsoft Edge"];
    return names.flatMap((name) => folders.map((folder) => `${folder}/${name}.app/Contents/MacOS/${name}`));
  }
  const names = [
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
    "microsoft-edge",
    "microsoft-edge-stable",
  ];
  const folders = (env.PATH ?? "").split(":").filter((folder) => folder !== "");
  return names.flatMap((name) => folders.map((folder) => `${folder}/${name}`));
}

/**
 * The first browser of a machine that is there and works.
 * @param {{platform: string, env: Record<string, string | undefined>}} machine
 * @param {(path: string) => boolean} works says whether a browser stands there and starts
 * @returns {string | undefined}
 */
export function findBrowser(machine, works) {
  return browserPlaces(machine).find(works);
}

/**
 * A browser for the tests: one that is installed, else one that is installed now.
 * @param {(line: string) => void} say told in plain words what is being done
 * @returns {Promise<string>} its path
 * @throws {Error} with what to do, when there is none and none can be installed
 */
export async function ensureBrowser(say) {
  const machine = { platform: process.platform, env: process.env };
  const found = findBrowser(machine, works);
  if (found !== undefined) return found;
  if (process.env.SPANWISE_BROWSER) {
    throw new Error(`SPANWISE_BROWSER says ${process.env.SPANWISE_BROWSER}, but no browser starts there.`);
  }
  const installed = fromSystem(machine, say) ?? (await fromPackage(say));
  if (installed !== undefined) return installed;
  throw new Error(`No browser was found for the tests that need one, and none could be installed.
Install Chromium, Chrome or Edge, or set SPANWISE_BROWSER to the path of one, and try again.`);
}

/**
 * On Debian as root: the system's own package, which brings every library it needs.
 * @param {{platform: string, env: Record<string, string | undefined>}} machine
 * @param {(line: string) => void} say
 */
function fromSystem(machine, say) {
  if (process.platform !== "linux" || process.getuid?.() !== 0 || !existsSync("/etc/debian_version")) return undefined;
  say("no browser found; installing Debian's Chromium (once) …");
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  for (const command of [["update"], ["install", "--yes", "--no-install-recommends", "chromium"]]) {
    if (spawnSync("apt-get", ["-qq", ...command], { env, stdio: ["ignore", 2, 2] }).status !== 0) return undefined;
  }
  return findBrowser(machine, works);
}

// The last one that runs on Node 20.
const packaged = "@sparticuz/chromium@147.0.0";

/**
 * On any Linux: a Chromium that an npm package carries, in a folder of its own, so that `npm ci` stays light.
 * @param {(line: string) => void} say
 */
async function fromPackage(say) {
  if (process.platform !== "linux" || process.arch !== "x64") return undefined;
  const folder = join(root, "node_modules", ".cache", "spanwise-browser");
  const entry = join(folder, "node_modules", "@sparticuz", "chromium", "build", "esm", "index.js");
  if (!existsSync(entry)) {
    say("no browser found; installing one from the npm registry (once) …");
    const npm = process.env.npm_execpath;
    const command = ["install", "--prefix", folder, "--no-save", packaged];
    const run = npm
      ? spawnSync(process.execPath, [npm, ...command], { cwd: root, stdio: ["ignore", 2, 2] })
      : spawnSync("npm", command, { cwd: root, stdio: ["ignore", 2, 2] });
    if (run.status !== 0 || !existsSync(entry)) return undefined;
  }
  const { default: chromium } = await import(pathToFileURL(entry).href);
  const path = await chromium.executablePath();
  return works(path) ? path : undefined;
}

/**
 * Whether a browser stands there and starts. Asked for its version only on Linux, where a name on the path may be a
 * mere pointer to another package; elsewhere asking would open a window.
 * @param {string} path
 */
function works(path) {
  if (!existsSync(path)) return false;
  return process.platform !== "linux" || spawnSync(path, ["--version"], { timeout: 30_000 }).status === 0;
}

/** How the browser is started: no sandbox (tests run as root in places), and no calls to the outside. */
export const browserFlags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
