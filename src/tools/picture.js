// Takes the pictures that README.md shows, of the built app as a person first sees it.
import { spawnSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { serveApp } from "./app.js";
import { browserFlags, ensureBrowser } from "./browser.js";
import { root } from "./place.js";

/** @param {string} line */
const say = (line) => console.log(`Spanwise: ${line}`);

const folder = join(root, "src", "views", "pictures");
mkdirSync(folder, { recursive: true });
const build = spawnSync(process.execPath, [join(root, "src", "tools", "build.js"), "--if-stale"], { stdio: "inherit" });
if (build.status !== 0) process.exit(1);

const app = await serveApp({ port: 4173 });
const browser = await chromium.launch({ executablePath: await ensureBrowser(say), args: browserFlags });
for (const colorScheme of /** @type {const} */ (["light", "dark"])) {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, colorScheme });
  await page.goto(app.url, { waitUntil: "networkidle" });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  const path = join(folder, `app-${colorScheme}.png`);
  await page.screenshot({ path, animations: "disabled" });
  say(`took ${path}`);
}
await browser.close();
await app.close();
