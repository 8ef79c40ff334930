import type { Trial } from "../../cells/index.ts";
import { words } from "./words.ts";

/** "tip_break 7 deg, panels[2].length 120": what a trial sets, the first few of it. */
export function settingsText(set: Trial["set"]): string {
  const changes = Object.entries(set);
  const told = changes.slice(0, 6).map(([target, text]) => words.settings(target, text));
  return told.join(", ") + (changes.length > told.length ? " …" : "");
}
