import type { Source } from "../spec.ts";

/** The source of functions that every school book has. */
export const elementary: readonly Source[] = [{ text: "Elementary mathematics", mark: "derived" }];
