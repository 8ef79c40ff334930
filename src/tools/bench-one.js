// Started by bench.js: measures one file of tests/bench and sends its rows back.
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { serveApp } from "./app.js";
import { browserFlags, ensureBrowser } from "./browser.js";
import { bundle } from "./bundle.js";
import { root } from "./place.js";

const source = process.argv[2] ?? "";
/** @type {(() => Promise<void>)[]} */
const closers = [];

/** @type {import("../../tests/bench/bench.ts").BenchContext} */
const context = {
  root,
  bundle: (name) => bundle(join("tests", "bench", name), { packages: "outside", alsoFrom: ["tests/bench"] }),
  async openApp() {
    const { chromium } = await import("playwright-core");
    const executablePath = await ensureBrowser((line) => console.error(`Spanwise: ${line}`));
    const app = await serveApp({ port: 4473 });
    closers.push(app.close);
    const browser = await chromium.launch({ executablePath, args: [...browserFlags, "--enable-precise-memory-info"] });
    closers.push(() => browser.close());
    return { browser, url: app.url };
  },
};

try {
  const made = await bundle(source, { packages: "outside", alsoFrom: ["tests/bench"] });
  const { default: bench } = await import(pathToFileURL(made).href);
  const rows = await bench(context);
  process.send?.(rows);
} finally {
  for (const close of closers.reverse()) await close();
}
process.disconnect?.();
