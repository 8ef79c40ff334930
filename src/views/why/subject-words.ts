/** What is asked about, in words: its title, its kind and its value. */
import type { Cell, DerivedCell, GivenCell, Result, Step, Subject } from "../../cells/index.ts";
import { figureTitle, sheetTitle } from "../figure-words.ts";
import type { Telling } from "../value-text.ts";
import { words } from "../words.ts";

/** The name of a cell; what stands for it where it has none. */
export function stepTitle({ name, cell }: Pick<Step, "name" | "cell">): string {
  if (name) return name;
  switch (cell.kind) {
    case "note":
      return noteTitle(cell.text);
    case "question":
      return words.question(cell.about);
    case "drawing":
    case "chart":
      return figureTitle(cell);
    case "sheet":
      return sheetTitle(cell);
    default:
      return kindWord(cell);
  }
}

/** The title of a cell, or of an entry of it. */
export function subjectTitle(step: Step, { entry }: Subject): string {
  const { cell } = step;
  if (!entry || cell.kind !== "table") return stepTitle(step);
  return words.why.entry(stepTitle(step), entry.row + 1, cell.columns[entry.column]?.name ?? "");
}

export const subjectKind = ({ cell }: Step, { entry }: Subject): string =>
  entry ? words.why.tableEntry : kindWord(cell);

/** The kind of a cell as a word within a sentence. */
export const kindWord = ({ kind }: Cell): string => words.kindNames[kind].toLowerCase();

export const sameSubject = (a: Subject, b: Subject): boolean =>
  a.id === b.id && a.entry?.row === b.entry?.row && a.entry?.column === b.entry?.column;

/** How the values of a cell are told. */
export const tellingOf = (cell: Cell): Telling =>
  cell.kind === "given" || cell.kind === "derived" ? telling(cell) : {};

/** The reason of a cell; undefined where it can have none, empty where none is written. */
export const reasonOf = (cell: Cell): string | undefined =>
  cell.kind === "given" || cell.kind === "derived" || cell.kind === "table" || cell.kind === "check"
    ? (cell.reason ?? "")
    : undefined;

export type Ok = Extract<Result, { readonly ok: true }>;

const telling = ({ unit, fraction }: GivenCell | DerivedCell): Telling => ({ unit, fraction });

/** The first words of a note, without what marks them up. */
function noteTitle(text: string): string {
  const line =
    text
      .replaceAll(/[#*_>`]/g, "")
      .trim()
      .split("\n")[0] ?? "";
  const cut = line.length > 40 ? `${line.slice(0, line.lastIndexOf(" ", 40)).trimEnd()} …` : line;
  return cut === "" ? words.note : `${words.note} “${cut}”`;
}
