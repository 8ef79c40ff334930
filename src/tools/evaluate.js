import { pathToFileURL } from "node:url";
import { bundle } from "./bundle.js";

// The program itself, with its options, output and exit codes, is src/evaluate.ts.
await import(pathToFileURL(await bundle("src/evaluate.ts", { packages: "inside" })).href);
