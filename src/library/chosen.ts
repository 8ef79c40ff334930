import type { Refuse } from "./spec.ts";
import { nearest } from "./units.ts";

/**
 * What a text out of a closed set stands for; letter case and blanks at its ends do not count. Refuses any other text,
 * with the nearest of the set and the whole of it.
 */
export function chosen<T>(text: string, from: Readonly<Record<string, T>>, parameter: string, refuse: Refuse): T {
  const names = Object.keys(from);
  const asked = text.trim().toLowerCase();
  const name = names.find((each) => each.toLowerCase() === asked);
  if (name !== undefined) return from[name] as T;
  const near = nearest(asked, names) ?? sharesAWord(asked, names);
  const all = names.map((each) => `"${each}"`).join(", ");
  return refuse(
    parameter,
    `"${text}" is not among ${all}.${near ? ` Did you mean "${near}"?` : " Choose one of them."}`,
  );
}

/** The first name that has a word of the text in it: "balsa" is near to "light balsa". */
function sharesAWord(text: string, names: readonly string[]): string | null {
  const words = text.split(/[\s,-]+/).filter((word) => word.length > 2);
  const common = (name: string) => words.filter((word) => name.includes(word)).length;
  const most = Math.max(0, ...names.map(common));
  return most > 0 ? (names.find((name) => common(name) === most) ?? null) : null;
}
