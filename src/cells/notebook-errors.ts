/** Why a text is no notebook that can be opened: the error, its place, and every sentence in which it is told. */
import { fileFormat } from "./notebook-schema.ts";

/** The one error of reading and writing a notebook file. Its message names the place and the remedy. */
export class NotebookError extends Error {
  constructor(
    /** `cells[4].rows[2][1]`, counted from 0; `line 3, column 14` where the text is no JSON; empty for the whole file. */
    readonly place: string,
    message: string,
  ) {
    super(message);
    this.name = "NotebookError";
  }
}

/** The way from the whole file to a value in it: keys of objects, positions in lists. */
export type Path = readonly (string | number)[];

/** The path as it is told: `cells[4].rows[2][1]`, `trials[0].set["panels[2].break"]`; empty for the whole file. */
export function placeOf(path: Path): string {
  return path
    .map((step) => (typeof step === "number" ? `[${step}]` : isWord(step) ? `.${step}` : `[${JSON.stringify(step)}]`))
    .join("")
    .replace(/^\./, "");
}

/** A value of JSON in words, with its article. */
export function kindOf(value: unknown): string {
  if (value === null) return "null";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object") return "an object";
  return typeof value === "string" ? "text" : typeof value === "number" ? "a number" : "true or false";
}

/** A short piece of a text as it can stand in a sentence: on one line, cut to `most` characters. */
export function excerpt(text: string, most = 40): string {
  // Letters of two code units stay whole, and nothing that would break or hide the line is shown.
  const letters = [...text.slice(0, 2 * most + 2)];
  const shown = letters.length > most ? `${letters.slice(0, most - 1).join("")}…` : letters.join("");
  return shown.replace(/[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/gu, "·");
}

const isWord = (key: string): boolean => /^[A-Za-z_]\w*$/.test(key);
const maybe = (nearest: string | null): string => (nearest === null ? "" : ` Did you mean “${nearest}”?`);
const quoted = (text: unknown): string =>
  typeof text === "string" ? `“${excerpt(text)}”` : typeof text === "number" ? String(text) : kindOf(text);
const wanted: Readonly<Record<string, string>> = {
  string: "text in double quotes",
  null: "null",
  boolean: "true or false",
  array: "a list in square brackets",
  object: "an object in braces",
  integer: "a whole number without quotes",
  number: "a number without quotes",
};
const blank: Readonly<Record<string, string>> = {
  string: '"…"',
  null: "null",
  boolean: "false",
  array: "[]",
  object: "{}",
};

export const messages = {
  // The file as a whole
  tooLarge: (length: number, limit: number) =>
    `This file is too large: it has ${count(length)} characters, and a notebook at most ${count(limit)}.`,
  tooLargeToWrite: (length: number, limit: number) =>
    `This notebook is too large to save: its file would have ${count(length)} characters, at most ${count(limit)} can be ` +
    "opened again. Split it into two.",
  tooMuchToWrite: (most: number) =>
    `This notebook has too much in it to be opened again: at most ${count(most)} entries. Split it into two.`,
  empty: "This file is empty. Choose a file that holds a notebook.",
  noNotebook: (near: string) =>
    `This file is no notebook: a notebook begins with a brace {, and this begins with “${near}”. Choose another file.`,
  noFormat: (found: unknown) =>
    `This file is no notebook: ${found === undefined ? 'it has no key "format"' : `its "format" is ${quoted(found)}`}, ` +
    `where a notebook has "${fileFormat}". Choose another file.`,
  noVersion: (current: number) => `The notebook does not say its version. Add "version": ${current}.`,
  wrongVersion: (found: unknown, current: number) =>
    `The version is ${quoted(found)}, but a whole number from 1 on, without quotes, is needed here. ` +
    `Write "version": ${current}.`,
  later: (version: number, current: number) =>
    `This notebook was made by a later Spanwise, version ${version}; this one reads up to ${current}. ` +
    "Open it with a newer Spanwise.",
  notMigrated: (from: number, to: number, why: string) =>
    `This notebook of version ${from} cannot be brought up to version ${to}: ${why}. ` +
    "Open it with the Spanwise that made it and save it again.",

  // The text as JSON: each is preceded by line and column, and followed by what is near
  valueMissing: "a value is missing here",
  comma: (close: string) => `a comma or ${close} is missing here`,
  commaBeforeEnd: (close: string) => `the comma before ${close} is one too many. Take it out`,
  colon: "a colon is missing here between the key and its value",
  key: "a key in double quotes is missing here",
  singleQuotes: "text stands between straight double quotes",
  comment: "a notebook has no comments. Take this one out",
  openText: 'this text is never closed. End it with a "',
  breakInText: 'a text stands on one line. Write \\n for a new line in it, or end it with a "',
  controlInText: "a tab or another control character cannot stand in a text. Put a blank in its place",
  escape: 'after a \\ in a text stands one of " \\ / b f n r t, or u with four digits. Write \\\\ for a \\ itself',
  number: "this is no number that can stand here. Write it as 12, -0.5 or 1.5e-3, or between double quotes",
  word: "outside quotes there are only true, false, null and numbers. Put text between double quotes",
  endsEarly: (opened: string, line: number) =>
    `the file ends before the ${opened} of line ${line} is closed. Part of it may be missing; take a whole copy`,
  afterEnd: "the notebook has ended before this. Take out what follows",
  tooDeep: (limit: number) => `more than ${limit} brackets stand within each other here. No notebook goes that deep`,
  tooMuch: (most: number) =>
    `more than ${count(most)} entries stand before this, too many for one notebook. Split it into several`,
  broken: (line: number, column: number, what: string, near: string) =>
    `This file is broken at line ${line}, column ${column}${near && `, near “${near}”`}: ${what}.`,
  keyTwice: (key: string, line: number) =>
    `The key “${excerpt(key)}” stands twice (again in line ${line}). Keep one of the two.`,

  // What stands in it: each is preceded by the place
  unknownKind: (kind: unknown, nearest: string | null, all: readonly string[]) =>
    `There is no kind ${quoted(kind)}.${maybe(nearest)} A cell is one of ${all.join(", ")}.`,
  noKind: (all: readonly string[]) => `The cell does not say its kind. Add "kind" with one of ${all.join(", ")}.`,
  unknownKey: (key: string, nearest: string | null, all: readonly string[]) =>
    `The key “${excerpt(key)}” is not known here.${maybe(nearest)} The keys are ${all.join(", ")}.`,
  forbiddenKey: (key: string) => `The key “${excerpt(key)}” cannot stand here. Take it out.`,
  missingKey: (key: string, types: readonly string[]) =>
    `The key “${key}” is missing. Add "${key}": ${blank[types.at(-1) ?? ""] ?? "…"}.`,
  wrongType: (found: unknown, types: readonly string[]) =>
    `This is ${kindOf(found)}, but ${types.map((type) => wanted[type] ?? type).join(" or ")} is needed here.` +
    `${typeof found === "number" && types.includes("string") ? ` Write "${found}".` : ""}`,
  notAmong: (found: unknown, allowed: readonly unknown[]) =>
    `This is ${quoted(found)}, but one of ${allowed.join(", ")} is needed here.`,
  tooFew: (least: number) => `This list is too short: it has at least ${least} ${least === 1 ? "entry" : "entries"}.`,
  tooMany: (most: number) => `This list is too long: it has at most ${most} entries.`,
  outOfLimits: (least: number, most: number) => `This number must be from ${count(least)} to ${count(most)}.`,
  tooShort: "This text is empty. Write something here.",
  tooLong: (most: number) => `This text is too long: it has at most ${most} characters.`,
  idTwice: (id: string, first: string) =>
    `The id “${excerpt(id)}” is already that of ${first}. Give one of the two another.`,
  notOnBoard: (id: string) =>
    `“${excerpt(id)}” is the id of no drawing, chart or study of this notebook, and nothing else stands on the board.`,
  boardTwice: (id: string) => `“${excerpt(id)}” is on the board already. Take it out here.`,
  rowLength: (entries: number, columns: readonly string[]) =>
    `This row has ${entries} ${entries === 1 ? "entry" : "entries"}, but the table has ${columns.length} ` +
    `${columns.length === 1 ? "column" : "columns"} (${excerpt(columns.join(", "), 80)}). ` +
    `${entries < columns.length ? "Add the missing ones." : "Take out those too many."}`,
  unfit: (what: string) => `This does not fit what a notebook holds (${what}).`,
  at: (place: string, of: string | null, what: string) =>
    place === "" ? what : `${place}${of === null ? "" : ` (${of})`}: ${what}`,
  inCell: (kind: string, title: string) => `${kind} “${excerpt(title)}”`,
} as const;

/** 10000000 as 10 000 000, so that its size can be seen. */
function count(number: number): string {
  return String(number).replace(/\B(?=(\d{3})+$)/g, " ");
}
