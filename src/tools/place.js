import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder that holds package.json, wherever the command was given. */
export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

/** Where built helpers are kept between runs; safe to delete at any time. */
export const cache = join(root, "node_modules", ".cache", "spanwise");
