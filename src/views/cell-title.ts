import type { Cell } from "../cells/index.ts";
import { figureTitle, sheetTitle } from "./figure-words.ts";
import { words } from "./words.ts";

/** By what a cell is known among others: its name, its title or its first words; its kind where it has none of these. */
export function cellTitle(cell: Cell): string {
  return clipped(titleOf(cell).trim(), 60) || words.kindNames[cell.kind].toLowerCase();
}

/** Prose without the signs of its markup, its lines one below the other. */
export const plainProse = (text: string): string =>
  text
    .replaceAll(/^\s*(#{1,6}|>|[-*+]|\d+\.)\s+/gm, "")
    .replaceAll(/[*`]/g, "")
    .replaceAll(/\n+/g, "\n")
    .trim();

/** A text of at most so many letters, cut between two words. */
export const clipped = (text: string, most: number): string =>
  text.length <= most ? text : `${text.slice(0, most).replace(/\s+\S*$/, "")} …`;

function titleOf(cell: Cell): string {
  switch (cell.kind) {
    case "note":
      return plainProse(cell.text).split("\n", 1)[0] ?? "";
    case "decision":
      return cell.question;
    case "question":
      return cell.prompt || words.question(cell.about);
    case "drawing":
    case "chart":
      return figureTitle(cell);
    case "sheet":
      return sheetTitle(cell);
    default:
      return cell.name;
  }
}
