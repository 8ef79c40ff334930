/** Names of cells and of the parameters of function cells: what they may be, and how a function cell's name is read. */
import { freeFall, units } from "../library/units.ts";

/** Words of the formula language. */
export const keywords: ReadonlySet<string> = new Set(["if", "then", "else", "and", "or", "not", "true", "false"]);

/** The constants a formula can name, in SI with the unit that is told. */
export const constants: ReadonlyMap<string, { readonly value: number; readonly unit: string }> = new Map([
  ["pi", { value: Math.PI, unit: "1" }],
  ["gravity", { value: freeFall, unit: "m/s^2" }],
]);

/** Words with a meaning of their own in the engine below the cells. */
const engineWords: ReadonlySet<string> = new Set(["invalidation", "visibility"]);

/** A letter, then letters, digits, underscores. */
export const isName = (text: string): boolean => /^[A-Za-z][A-Za-z0-9_]*$/.test(text);

/** A name as it is typed made one that can stand: blanks and hyphens inside it become underscores; no more is mended. */
export const tidyName = (typed: string): string => typed.trim().replaceAll(/(?<=\w)[\s-]+(?=\w)/g, "_");

/** What a reserved word is, in words that fit "X is …", or null where the word is free. */
export function reservedAs(word: string, functions: { has(name: string): boolean }): string | null {
  if (keywords.has(word)) return "a word of the formula language";
  if (constants.has(word)) return "a constant";
  if (units.has(word)) return "a unit";
  if (functions.has(word)) return "a function";
  return engineWords.has(word) ? "a reserved word" : null;
}

/** A cell's name taken apart: `lift(v, cl)` is the name `lift` with two parameters; `eda` has none (null). */
export interface Signature {
  readonly name: string;
  readonly parameters: readonly string[] | null;
}

/** Reads a cell's name as written; words that are no names are left for the caller to judge. */
export function readSignature(written: string): Signature {
  const match = /^([^()]*)\(([^()]*)\)\s*$/.exec(written);
  if (!match) return { name: written.trim(), parameters: null };
  return {
    name: (match[1] ?? "").trim(),
    parameters: (match[2] ?? "").split(",").map((parameter) => parameter.trim()),
  };
}
