import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Bench } from "./bench.ts";

const goal = 200;

/** The entry script and everything it imports statically, each compressed by itself as a server would. */
const scriptSize: Bench = async ({ root }) => {
  const page = readFileSync(join(root, "dist", "index.html"), "utf8");
  // The bundler lists the entry as the page's script and its static imports as preloads.
  const tags = page.match(/<script\b[^>]*\bsrc="[^"]+"|<link\b[^>]*\brel="modulepreload"[^>]*>/g) ?? [];
  const files = tags.map((tag) => tag.match(/(?:src|href)="([^"]+)"/)?.[1] ?? "");
  const bytes = files.map((file) => gzipSync(readFileSync(join(root, "dist", file)), { level: 9 }).length);
  const kilobytes = bytes.reduce((sum, each) => sum + each, 0) / 1000;
  return [
    {
      figure: "script to load before the page can be used, compressed",
      measured: `${kilobytes.toFixed(1)} kB in ${files.length} ${files.length === 1 ? "file" : "files"}`,
      goal: `at most ${goal} kB`,
      ratio: `${(kilobytes / goal).toFixed(2)} of the goal`,
    },
  ];
};

export default scriptSize;
