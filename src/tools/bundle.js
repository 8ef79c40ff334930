import { mkdirSync, readdirSync, renameSync, rmSync, utimesSync } from "node:fs";
import { basename, join } from "node:path";
import { isStale, lastChange, writtenAt } from "./freshness.js";
import { cache, root } from "./place.js";

/**
 * Bundles a TypeScript program for Node by the same bundler and plugins as the app, unless the one kept is newer than
 * every source.
 * @param {string} source the program, relative to the project's folder
 * @param {{packages: "inside" | "outside", alsoFrom?: readonly string[]}} options whether packages go into the bundle
 *   (starts quicker) or are imported when it runs; further folders it is made from, besides src
 * @returns {Promise<string>} the path of the bundle
 */
export async function bundle(source, { packages, alsoFrom = [] }) {
  const name = basename(source).replace(/\.ts$/, ".js");
  const made = join(cache, name);
  const from = ["src", "notebooks", "vite.config.ts", "package.json", "package-lock.json", ...alsoFrom];
  if (isStale(writtenAt(made), lastChange(from.map((path) => join(root, path))))) await make(source, name, packages);
  return made;
}

/**
 * @param {string} source
 * @param {string} name
 * @param {"inside" | "outside"} packages
 */
async function make(source, name, packages) {
  const started = new Date();
  const { build } = await import("vite");
  const draft = join(cache, `${name}.${process.pid}`);
  await build({
    root,
    logLevel: "warn",
    // What makes PDF files reads its fonts from its own folder.
    ssr: packages === "inside" ? { noExternal: true, external: ["pdfkit"] } : {},
    build: {
      ssr: join(root, source),
      outDir: draft,
      emptyOutDir: true,
      copyPublicDir: false,
      minify: false,
      rolldownOptions: {
        output: { entryFileNames: name, assetFileNames: "[name]-[hash][extname]", codeSplitting: false },
      },
    },
  });
  // Dated to when the build began, so that a source saved meanwhile still counts as newer; moved into place in one
  // step, so that two runs at once never see half a file.
  utimesSync(join(draft, name), started, started);
  mkdirSync(cache, { recursive: true });
  const besides = readdirSync(draft).filter((file) => file !== name);
  for (const file of [...besides, name]) renameSync(join(draft, file), join(cache, file));
  rmSync(draft, { recursive: true });
}
