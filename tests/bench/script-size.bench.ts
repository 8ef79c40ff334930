import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Bench } from "./bench.ts";

const goal = 200;

/**
 * The entry script and everything it imports statically, each compressed by itself as a server would; and all scripts
 * that a browser has loaded once the first slider of the demo can be moved: the demo itself and what reads prose, too.
 */
const scriptSize: Bench = async ({ root, openApp }) => {
  const page = readFileSync(join(root, "dist", "index.html"), "utf8");
  const weigh = (files: readonly string[]): number => {
    const bytes = files.map((file) => gzipSync(readFileSync(join(root, "dist", file)), { level: 9 }).length);
    return bytes.reduce((sum, each) => sum + each, 0) / 1000;
  };
  // The bundler lists the entry as the page's script and its static imports as preloads.
  const tags = page.match(/<script\b[^>]*\bsrc="[^"]+"|<link\b[^>]*\brel="modulepreload"[^>]*>/g) ?? [];
  const files = tags.map((tag) => tag.match(/(?:src|href)="([^"]+)"/)?.[1] ?? "");
  const kilobytes = weigh(files);
  const loaded = await loadedScripts(openApp);
  return [
    {
      figure: "script to load before the page can be used, compressed",
      measured: `${kilobytes.toFixed(1)} kB in ${files.length} ${files.length === 1 ? "file" : "files"}`,
      goal: `at most ${goal} kB`,
      ratio: `${(kilobytes / goal).toFixed(2)} of the goal`,
    },
    {
      figure: "scripts loaded once the demo's first slider stands there, compressed",
      measured: `${weigh(loaded).toFixed(1)} kB in ${loaded.length} files`,
      goal: "none of its own",
      ratio: `${(weigh(loaded) / kilobytes).toFixed(2)} times that before`,
    },
  ];
};

async function loadedScripts(openApp: Parameters<Bench>[0]["openApp"]): Promise<readonly string[]> {
  const { browser, url } = await openApp();
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(url);
  const addresses = await page.evaluate(async () => {
    while (!document.querySelector("input[type=range]")) await new Promise(requestAnimationFrame);
    return performance.getEntriesByType("resource").map(({ name }) => name);
  });
  return addresses.filter((address) => address.endsWith(".js")).map((address) => address.slice(url.length));
}

export default scriptSize;
