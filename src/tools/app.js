import { readFileSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { bundle } from "./bundle.js";
import { isStale, lastChange, writtenAt } from "./freshness.js";
import { root } from "./place.js";
import { pagePolicy } from "./policy.js";

/** The built page: static files that work under any path. */
export const built = join(root, "dist", "index.html");

const sources = [
  "src",
  "notebooks",
  "index.html",
  "functions.html",
  "vite.config.ts",
  "package.json",
  "package-lock.json",
];

/**
 * Whether the app has to be built before it can be shown.
 * @returns {boolean}
 */
export function needsBuild() {
  return isStale(writtenAt(built), lastChange(sources.map((path) => join(root, path))));
}

/** Builds the app into dist. Dated to when it began: a source saved meanwhile still counts as newer. */
export async function buildApp() {
  const started = new Date();
  // Test runners set NODE_ENV to "test", which would pick the development builds of packages.
  process.env.NODE_ENV = "production";
  const { build } = await import("vite");
  await build({ root, logLevel: "warn" });
  await fillManual();
  utimesSync(built, started, started);
}

/** Writes what the specs of the functions say into the manual page, which the build has left empty. */
async function fillManual() {
  const { manualHtml } = await import(pathToFileURL(await bundle("src/manual.ts", { packages: "outside" })).href);
  const page = join(root, "dist", "functions.html");
  writeFileSync(page, manualHtml(readFileSync(page, "utf8")));
}

/**
 * Serves dist on this machine only, under the page's own policy; takes the next free port when the wanted one is taken.
 * @param {{port: number, base?: string}} options the path it stands under, `/` unless told
 * @returns {Promise<{url: string, port: number, close: () => Promise<void>}>} close also ends connections still open
 */
export async function serveApp({ port, base = "/" }) {
  const { preview } = await import("vite");
  const policy = `${pagePolicy(readFileSync(built, "utf8"))}; frame-ancestors 'none'`;
  const server = await preview({
    root,
    base,
    appType: "mpa",
    logLevel: "error",
    preview: {
      host: "127.0.0.1",
      port,
      strictPort: false,
      open: false,
      headers: {
        "Content-Security-Policy": policy,
        "X-Content-Type-Options": "nosniff",
        "Referrer-Policy": "no-referrer",
      },
    },
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === "string") throw new Error(`got ${address} where a port was expected`);
  return {
    url: `http://127.0.0.1:${address.port}${base}`,
    port: address.port,
    close: () => server.close(),
  };
}
